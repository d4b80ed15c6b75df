#include "app/panels/fix_bar.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace siphonwright::panels {

FixBar::FixBar(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      words_(new QLabel(this)),
      button_(new QPushButton(tr("Fix it"), this)),
      worker_(
          [](Job job, const Worker<Job, Answer>::Tell& tell, const std::stop_token& stop) {
              std::optional<Fix> fix = fixFor(job.sketch, job.analysis, job.finding, stop);
              tell({std::move(job.finding), std::move(fix)});
          },
          [this] { Q_EMIT ready(); })
{
    words_->setObjectName(QStringLiteral("fix-words"));
    words_->setWordWrap(true);
    button_->setObjectName(QStringLiteral("fix-button"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 2, 0, 2);
    row->addWidget(words_, 1);
    row->addWidget(button_);
    hide();
    connect(this, &FixBar::ready, this, &FixBar::takeAnswer, Qt::QueuedConnection);
    connect(button_, &QPushButton::clicked, this, &FixBar::apply);
    connect(&document_, &Document::changed, this, &FixBar::look);
    connect(&document_, &Document::analysed, this, &FixBar::look);
}

void FixBar::setFinding(int finding)
{
    if (finding == finding_)
        return;
    finding_ = finding;
    look();
}

/// Looked for once the proof is in: before it a cure could be found that the proof does not bear out.
void FixBar::look()
{
    const std::vector<Finding>& all = document_.analysis().findings;
    const bool is_finding = finding_ >= 0 && static_cast<std::size_t>(finding_) < all.size();
    if (!is_finding || !curable(all[static_cast<std::size_t>(finding_)].rule).on_drawing) {
        hide();
        asked_.reset();
        fix_.reset();
        return;
    }
    const Finding& finding = all[static_cast<std::size_t>(finding_)];
    if (!document_.proofIsCurrent() || !document_.proof()->graded) {
        asked_.reset();
        fix_.reset();
        button_->setEnabled(false);
        return;
    }
    if (asked_ && *asked_ == finding)
        return;
    asked_ = finding;
    fix_.reset();
    words_->setText(tr("Looking for a fix…"));
    button_->setEnabled(false);
    show();
    worker_.ask({document_.sketch(), document_.analysis(), finding});
}

void FixBar::takeAnswer()
{
    std::optional<Answer> answer = worker_.take();
    if (!answer || !asked_ || answer->finding != *asked_)
        return;
    fix_ = std::move(answer->fix);
    button_->setEnabled(fix_.has_value());
    words_->setText(fix_ ? inWords(fix_->text, unitsOf(document_.sketch()))
                         : tr("No small change of the drawing cures this by itself."));
    button_->setToolTip(fix_ ? tr("Proven by analysing the changed drawing. One undo takes it back.")
                             : QString());
    button_->setAccessibleDescription(words_->text());
}

void FixBar::apply()
{
    if (!fix_)
        return;
    const QString what = tr("Fix: %1").arg(inWords(fix_->text, unitsOf(document_.sketch())));
    document_.apply(what, [changed = std::move(fix_->sketch)](Sketch& sketch) { sketch = changed; });
}

} // namespace siphonwright::panels
