#include "app/demonstration/beside.h"

#include "app/language/in_words.h"

#include <QFileInfo>
#include <QLabel>
#include <QVBoxLayout>

#include <utility>

namespace siphonwright::demonstration {

Beside::Beside(const Player& player, QWidget* parent)
    : QWidget(parent),
      player_(player),
      view_(new ElevationView(document_, selection_, this)),
      name_(new QLabel(this)),
      words_(new QLabel(this)),
      verdict_(new QLabel(this))
{
    setObjectName(QStringLiteral("beside"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    name_->setProperty("role", QStringLiteral("title"));
    name_->setMargin(4);
    words_->setWordWrap(true);
    words_->setMargin(6);
    words_->setObjectName(QStringLiteral("beside-words"));
    words_->setMinimumHeight(3 * fontMetrics().lineSpacing());
    column->addWidget(name_);
    column->addWidget(view_, 1);
    column->addWidget(words_);
    verdict_->setObjectName(QStringLiteral("beside-verdict"));
    verdict_->setAccessibleName(tr("Whether the drawing beside circulates"));
    verdict_->setProperty("role", QStringLiteral("title"));
    verdict_->setWordWrap(true);
    verdict_->setMargin(6);
    column->addWidget(verdict_);
    view_->setAttribute(Qt::WA_TransparentForMouseEvents);
    view_->setFocusPolicy(Qt::NoFocus);
    setFindingsShown(false);
    view_->setAccessibleName(tr("The drawing beside"));
    connect(&player_, &Player::moved, this, &Beside::follow);
    connect(&player_, &Player::remade, this, [this] {
        if (player_.engineRuns() != engine_runs_)
            remake();
    });
}

void Beside::take(SketchFile file)
{
    document_.take(std::move(file));
    document_.startProving();
    remake();
    const QString title = QString::fromStdString(document_.sketch().sheet.supplementary_title);
    name_->setText(title.isEmpty() ? QFileInfo(document_.path()).completeBaseName() : title);
    view_->zoomToFit();
    follow();
}

void Beside::remake()
{
    engine_runs_ = player_.engineRuns();
    demonstration_ = demonstrate(document_.sketch(), document_.analysis().layout, engine_runs_);
    const UnitSystem units =
        document_.sketch().units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    verdict_->setText(wordsOf(demonstration_.verdict, units));
}

void Beside::setFindingsShown(bool shown)
{
    view_->setFindingsShown(shown);
    verdict_->setVisible(shown);
    QMetaObject::invokeMethod(view_, &ElevationView::zoomToFit, Qt::QueuedConnection);
}

const Moment* Beside::moment() const
{
    return index_ < demonstration_.moments.size() ? &demonstration_.moments[index_] : nullptr;
}

void Beside::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    QMetaObject::invokeMethod(view_, &ElevationView::zoomToFit, Qt::QueuedConnection);
}

void Beside::follow()
{
    index_ = demonstration_.momentAt(player_.demonstration().placeOf(player_.index()));
    const Moment* now = moment();
    view_->setContents(now ? std::make_shared<const drawing::Contents>(now->contents) : nullptr);
    const UnitSystem units =
        document_.sketch().units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    words_->setText(now ? wordsOf(*now, units)
                        : tr("Nothing to show: %1.").arg(inWords(demonstration_.missing)));
}

} // namespace siphonwright::demonstration
