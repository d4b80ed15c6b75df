#include "app/panels/grade_strip.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/grade_slider.h"

#include "core/analysis/margin_text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>

#include <algorithm>
#include <cmath>

namespace siphonwright::panels {

namespace {

constexpr double most_along_percent = 15;
constexpr double most_across_percent = 8;

constexpr int spacing_px = 8;

/// Of a row, from what stands in it now: the row's own figure comes when it is laid out the next time.
int leastWidth(const QHBoxLayout& row, const QWidget* without)
{
    int out_px = 0;
    for (int i = 0; i < row.count(); ++i) {
        const QWidget* const one = row.itemAt(i)->widget();
        if (one->isHidden())
            continue;
        out_px += i > 0 ? spacing_px : 0;
        if (one != without)
            out_px += std::max(one->minimumSizeHint().width(), one->minimumWidth());
    }
    return out_px;
}

QString percent(double value)
{
    return inWords(std::abs(value), Unit::percent, UnitSystem::metric);
}

} // namespace

GradeStrip::GradeStrip(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      along_(new GradeSlider(most_along_percent, this)),
      across_(new GradeSlider(most_across_percent, this)),
      stands_(new QLabel(this)),
      level_(new QToolButton(this)),
      sound_(new QLabel(this))
{
    setObjectName(QStringLiteral("grade-strip"));
    along_->setObjectName(QStringLiteral("grade-along"));
    along_->setAccessibleName(tr("Grade lengthways, percent, nose-up to the right"));
    along_->setToolTip(tr("Park the vehicle on a grade: left is nose-down, right is nose-up.\n"
                          "The band is where the job is sound, the thick line is what it is judged over.\n"
                          "Double-click for level."));
    across_->setObjectName(QStringLiteral("grade-across"));
    across_->setAccessibleName(tr("Grade across, percent, right side up to the right"));
    across_->setToolTip(tr("Left is left side up, right is right side up. Double-click for level."));
    across_->setMinimumWidth(90);
    across_->setMaximumWidth(130);
    level_->setText(tr("Back to level"));
    level_->setToolTip(tr("Stand the vehicle on the level again"));
    stands_->setObjectName(QStringLiteral("grade-stands"));
    sound_->setObjectName(QStringLiteral("grade-sound"));
    sound_->setWordWrap(true);
    whole_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    whole_->setContentsMargins(10, 2, 10, 2);
    whole_->setSpacing(8);
    sliders_ = new QBoxLayout(QBoxLayout::LeftToRight);
    sliders_->setSpacing(spacing_px);
    whole_->addLayout(sliders_, 5);
    lengthways_ = new QHBoxLayout;
    lengthways_->addWidget(new QLabel(tr("Parked"), this));
    lengthways_->addWidget(along_, 2);
    crossways_ = new QHBoxLayout;
    crossways_->addWidget(new QLabel(tr("across"), this));
    crossways_->addWidget(across_);
    crossways_->addWidget(stands_);
    crossways_->addWidget(level_);
    for (QHBoxLayout* row : {lengthways_, crossways_})
        row->setSpacing(spacing_px);
    sliders_->addLayout(lengthways_, 1);
    sliders_->addLayout(crossways_);
    whole_->addWidget(sound_, 3);
    connect(along_, &QAbstractSlider::valueChanged, this, &GradeStrip::moved);
    connect(across_, &QAbstractSlider::valueChanged, this, &GradeStrip::moved);
    connect(level_, &QToolButton::clicked, this, [this] { document_.setGrade({}); });
    connect(&document_, &Document::changed, this, &GradeStrip::refresh);
    connect(&document_, &Document::analysed, this, &GradeStrip::refresh);
    refresh();
}

/// Of the arrangement that is narrowest, whichever stands now: a strip that asked for more while the window
/// is being narrowed would widen the window instead.
QSize GradeStrip::minimumSizeHint() const
{
    const QMargins margins = whole_->contentsMargins();
    const int word_px = static_cast<int>(60 * drawing::textScale(font()));
    const int widest_px =
        std::max(leastWidth(*lengthways_, nullptr), leastWidth(*crossways_, stands_) + word_px);
    return {widest_px + margins.left() + margins.right(), QWidget::minimumSizeHint().height()};
}

void GradeStrip::resizeEvent(QResizeEvent* event)
{
    arrange();
    QWidget::resizeEvent(event);
}

void GradeStrip::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::FontChange)
        arrange();
    QWidget::changeEvent(event);
}

void GradeStrip::arrange()
{
    const double scale = drawing::textScale(font());
    const bool under = width() < 720 * scale; // else the verdict has room beside the sliders
    whole_->setDirection(under ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    whole_->setSpacing(under ? 0 : 8);
    const QMargins margins = whole_->contentsMargins();
    const int room_px = width() - margins.left() - margins.right();
    const int across_px =
        leastWidth(*crossways_, stands_) + stands_->fontMetrics().horizontalAdvance(stands_->text()) + 4;
    const bool two_rows = leastWidth(*lengthways_, nullptr) + spacing_px + across_px > room_px;
    sliders_->setDirection(two_rows ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    sliders_->setSpacing(two_rows ? 0 : spacing_px);
    stands_->setWordWrap(across_px > room_px);
}

void GradeStrip::setLook(drawing::Look look)
{
    along_->setLook(look);
    across_->setLook(look);
}

QString GradeStrip::verdict() const
{
    return sound_->text();
}

void GradeStrip::moved()
{
    document_.setGrade({along_->percent(), across_->percent()});
}

void GradeStrip::refresh()
{
    const Grade grade = document_.grade();
    const QSignalBlocker quiet_along(along_);
    const QSignalBlocker quiet_across(across_);
    along_->setValue(static_cast<int>(std::lround(grade.along_percent * 10)));
    across_->setValue(static_cast<int>(std::lround(grade.across_percent * 10)));
    along_->setJudged(document_.sketch().site.envelope_along_percent);
    across_->setJudged(document_.sketch().site.envelope_across_percent);
    QStringList stands;
    if (grade.along_percent != 0)
        stands << (grade.along_percent > 0 ? tr("%1 nose-up") : tr("%1 nose-down"))
                      .arg(percent(grade.along_percent));
    if (grade.across_percent != 0)
        stands << (grade.across_percent > 0 ? tr("%1 right side up") : tr("%1 left side up"))
                      .arg(percent(grade.across_percent));
    stands_->setText(stands.isEmpty() ? tr("on the level") : stands.join(QStringLiteral(", ")));
    level_->setVisible(!stands.isEmpty());
    arrange();
    const std::optional<Proof>& proof = document_.proof();
    const bool drawn =
        proof && proof->graded && !document_.sketch().hoses.empty() && document_.analysis().connected();
    along_->setSound(drawn ? proof->sound : std::nullopt);
    sound_->setText(drawn ? inWords(textOf(proof->sound), unitsOf(document_.sketch())) : QString());
    sound_->setEnabled(document_.proofIsCurrent());
}

} // namespace siphonwright::panels
