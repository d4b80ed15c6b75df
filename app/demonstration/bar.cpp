#include "app/demonstration/bar.h"

#include "app/demonstration/scrub_bar.h"
#include "app/demonstration/votes.h"
#include "app/drawing/look.h"
#include "app/language/in_words.h"
#include "app/panels/wrapped_row.h"

#include <QApplication>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace siphonwright::demonstration {

namespace {

constexpr int speeds[] = {1, 10, 60, 120, 300, 600};

UnitSystem unitsOf(const Sketch& sketch)
{
    return sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
}

} // namespace

DemonstrationBar::DemonstrationBar(Player& player, const Document& document, QWidget* parent)
    : QWidget(parent),
      player_(player),
      document_(document),
      scrub_(new ScrubBar(this)),
      speed_(new QComboBox(this)),
      clock_(new QLabel(this)),
      words_(new QLabel(this)),
      votes_(new Votes(this))
{
    setObjectName(QStringLiteral("demonstration-bar"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 4, 10, 4);
    column->setSpacing(3);
    buildLine();
    buildControls();
    column->addWidget(votes_);
    votes_->hide();
    connect(&player_, &Player::remade, this, &DemonstrationBar::remade);
    connect(&player_, &Player::moved, this, &DemonstrationBar::moved);
    connect(&player_, &Player::playingChanged, this,
            [this] { play_->setText(player_.playing() ? tr("Pause") : tr("Play")); });
    connect(scrub_, &QAbstractSlider::valueChanged, this, [this](int moment) {
        if (std::size_t(moment) != player_.index())
            player_.goTo(std::size_t(moment));
    });
    connect(votes_, &Votes::revealing, this, [this] { setFindingsHidden(false); });
    for (QWidget* widget : findChildren<QWidget*>())
        takeKeysOf(*widget);
    takeKeysOf(*this);
    setFocusProxy(scrub_);
    setLarge(false);
}

QToolButton* DemonstrationBar::addButton(QLayout& row, const QString& text, const char* id,
                                         const QString& tip)
{
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setToolTip(tip);
    button->setObjectName(QString::fromLatin1(id));
    button->setFocusPolicy(Qt::TabFocus);
    row.addWidget(button);
    return button;
}

void DemonstrationBar::buildLine()
{
    words_->setObjectName(QStringLiteral("demonstration-words"));
    words_->setWordWrap(true);
    words_->setAccessibleName(tr("What is happening now"));
    clock_->setObjectName(QStringLiteral("demonstration-clock"));
    clock_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    auto* row = new QHBoxLayout;
    row->addWidget(words_, 1);
    row->addWidget(clock_);
    row->addSpacing(6);
    auto* full = addButton(*row, tr("Full screen"), "demo-full", tr("Large, for the back of the room (F11)"));
    auto* leave = addButton(*row, tr("Leave"), "demo-leave", tr("End the demonstration (Escape)"));
    connect(full, &QToolButton::clicked, this, &DemonstrationBar::fullScreenWanted);
    connect(leave, &QToolButton::clicked, this, &DemonstrationBar::leaveWanted);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

void DemonstrationBar::buildControls()
{
    auto* row = new panels::WrappedRow;
    row->setSpacing(4);
    auto* start = addButton(*row, tr("Start again"), "demo-start", tr("Back to the start (Home)"));
    auto* back = addButton(*row, QStringLiteral("◂"), "demo-back", tr("One step back (Left)"));
    play_ = addButton(*row, tr("Play"), "demo-play-button", tr("Play or pause (Space)"));
    play_->setMinimumWidth(64);
    auto* forward = addButton(*row, QStringLiteral("▸"), "demo-forward", tr("One step on (Right)"));
    back->setAccessibleName(tr("One step back"));
    forward->setAccessibleName(tr("One step on"));
    scrub_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    row->addWidget(scrub_);
    for (const int times : speeds)
        speed_->addItem(tr("%1×").arg(times), times);
    speed_->setCurrentIndex(speed_->count() - 1);
    speed_->setAccessibleName(tr("Speed with the heater on"));
    speed_->setToolTip(tr("How much faster than the truth it goes with the heater on"));
    speed_->setFocusPolicy(Qt::TabFocus);
    row->addWidget(speed_);
    auto* engine =
        addButton(*row, tr("Engine run"), "demo-engine",
                  tr("Run the engine and top up before the heater is switched on, or leave it out"));
    engine->setCheckable(true);
    engine->setChecked(player_.engineRuns());
    connect(engine, &QToolButton::toggled, &player_, &Player::setEngineRuns);
    hide_ = addButton(*row, tr("Hide findings"), "demo-hide", tr("Let the class guess first (H)"));
    hide_->setCheckable(true);
    ask_ = addButton(*row, tr("Ask"), "demo-ask-button", tr("Count hands, then reveal"));
    ask_->setCheckable(true);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
    connect(start, &QToolButton::clicked, &player_, &Player::toStart);
    connect(back, &QToolButton::clicked, this, [this] { player_.step(-1); });
    connect(forward, &QToolButton::clicked, this, [this] { player_.step(1); });
    connect(play_, &QToolButton::clicked, this, [this] { player_.setPlaying(!player_.playing()); });
    connect(speed_, &QComboBox::currentIndexChanged, this,
            [this] { player_.setSpeed(speed_->currentData().toDouble()); });
    connect(hide_, &QToolButton::toggled, this, &DemonstrationBar::findingsHiddenChanged);
    connect(ask_, &QToolButton::toggled, votes_, &QWidget::setVisible);
}

void DemonstrationBar::takeKeysOf(QWidget& widget)
{
    widget.installEventFilter(this);
}

bool DemonstrationBar::findingsHidden() const
{
    return hide_->isChecked();
}

void DemonstrationBar::setFindingsHidden(bool on)
{
    hide_->setChecked(on);
}

void DemonstrationBar::ask(bool on)
{
    if (on && !ask_->isChecked())
        votes_->startAgain();
    ask_->setChecked(on);
}

void DemonstrationBar::setLarge(bool on)
{
    large_ = on;
    setSizes();
}

/// Large is to be read from the back of a room; larger still where all text is.
void DemonstrationBar::setSizes()
{
    const double scale = drawing::textScale(font());
    const auto px = [&](int usual, int large) {
        return static_cast<int>(std::lround(std::max(usual * scale, large_ ? double(large) : 0.0)));
    };
    setStyleSheet(QStringLiteral("QLabel#demonstration-words { font-size: %1px; font-weight: 600; }"
                                 "QLabel#demonstration-clock { font-size: %1px; }"
                                 "QToolButton, QComboBox, QAbstractSlider { font-size: %2px; }"
                                 "QFrame#votes QLabel, QFrame#votes QToolButton, QFrame#votes QPushButton "
                                 "{ font-size: %3px; }")
                      .arg(px(17, 30))
                      .arg(px(drawing::usual_text_px, 17))
                      .arg(px(drawing::usual_text_px, 24)));
    // Lines stay free, so that the drawing does not jump with the words, under a pointer that drags it.
    words_->ensurePolished();
    words_->setMinimumHeight((large_ ? 3 : 2) * QFontMetrics(words_->font()).lineSpacing());
}

void DemonstrationBar::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange && sized_for_px_ != font().pixelSize()) {
        sized_for_px_ = font().pixelSize();
        setSizes();
    }
}

QString DemonstrationBar::words() const
{
    return words_->text();
}

bool DemonstrationBar::isOurs(const QKeyEvent& event) const
{
    if (!player_.active() ||
        (event.modifiers() & ~Qt::KeyboardModifiers(Qt::KeypadModifier)) != Qt::NoModifier)
        return false;
    switch (event.key()) {
    case Qt::Key_Space:
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Home:
    case Qt::Key_H:
        return true;
    case Qt::Key_Escape:
        // A drag that is under way is cancelled first.
        return QApplication::mouseButtons() == Qt::NoButton;
    default:
        return false;
    }
}

bool DemonstrationBar::act(const QKeyEvent& event)
{
    if (!isOurs(event))
        return false;
    switch (event.key()) {
    case Qt::Key_Space:
        if (!event.isAutoRepeat())
            player_.setPlaying(!player_.playing());
        break;
    case Qt::Key_Left:
        player_.step(-1);
        break;
    case Qt::Key_Right:
        player_.step(1);
        break;
    case Qt::Key_PageUp:
        player_.toEvent(-1);
        break;
    case Qt::Key_PageDown:
        player_.toEvent(1);
        break;
    case Qt::Key_Home:
        player_.toStart();
        break;
    case Qt::Key_H:
        setFindingsHidden(!findingsHidden());
        break;
    default:
        Q_EMIT leaveWanted();
        break;
    }
    return true;
}

bool DemonstrationBar::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && isOurs(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    if (event->type() == QEvent::KeyPress && act(*static_cast<QKeyEvent*>(event)))
        return true;
    // The release of a key that was taken must not reach the canvas either.
    if (event->type() == QEvent::KeyRelease && isOurs(*static_cast<QKeyEvent*>(event)))
        return true;
    return QWidget::eventFilter(watched, event);
}

void DemonstrationBar::keyPressEvent(QKeyEvent* event)
{
    if (!act(*event))
        QWidget::keyPressEvent(event);
}

void DemonstrationBar::remade()
{
    const QSignalBlocker quiet(scrub_);
    scrub_->show(&player_.demonstration());
    votes_->setAnswer(wordsOf(player_.demonstration().verdict, unitsOf(document_.sketch())));
}

void DemonstrationBar::moved()
{
    const QSignalBlocker quiet(scrub_);
    scrub_->setValue(int(player_.index()));
    scrub_->update();
    const Moment* moment = player_.moment();
    const QString missing = inWords(player_.demonstration().missing);
    if (!moment) {
        words_->setText(tr("Nothing to show yet: %1.").arg(missing));
        clock_->clear();
        return;
    }
    const bool last = player_.index() + 1 == player_.demonstration().moments.size();
    QString words = wordsOf(*moment, unitsOf(document_.sketch()));
    if (last && !missing.isEmpty())
        words += QLatin1Char(' ') + tr("The heater cannot be switched on yet: %1.").arg(missing);
    // A figure stays on one line with its unit.
    words_->setText(words.replace(QStringLiteral(" °"), QStringLiteral("\u00a0°")));
    clock_->setText(clockOf(*moment));
}

} // namespace siphonwright::demonstration
