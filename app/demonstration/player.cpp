#include "app/demonstration/player.h"

#include <QElapsedTimer>

#include <algorithm>

namespace siphonwright::demonstration {

namespace {

constexpr int tick_ms = 33;
constexpr int remake_ms = 40;
constexpr double event_hold_s = 1.6; ///< long enough to read a line
constexpr std::size_t energised_step = 15;

} // namespace

Player::Player(const Document& document, QObject* parent) : QObject(parent), document_(document)
{
    clock_.setInterval(tick_ms);
    clock_.setTimerType(Qt::PreciseTimer);
    connect(&clock_, &QTimer::timeout, this, [this] { advance(tick_ms / 1000.0); });
    soon_.setInterval(remake_ms);
    soon_.setSingleShot(true);
    connect(&soon_, &QTimer::timeout, this, &Player::remake);
    connect(&document_, &Document::changed, this, [this] {
        if (active_ && !soon_.isActive())
            soon_.start();
    });
    connect(&document_, &Document::analysed, this, [this] {
        // Another grade; a proof alone changes nothing that is shown.
        if (active_ && !soon_.isActive() && document_.analysis().layout.plumb.up() != shown_up_)
            soon_.start();
    });
}

const Moment* Player::moment() const
{
    return index_ < demonstration_.moments.size() ? &demonstration_.moments[index_] : nullptr;
}

void Player::begin()
{
    active_ = true;
    index_ = 0;
    demonstration_ = {};
    remake();
    Q_EMIT activeChanged();
}

void Player::end()
{
    setPlaying(false);
    soon_.stop();
    active_ = false;
    demonstration_ = {};
    index_ = 0;
    Q_EMIT activeChanged();
}

void Player::remake()
{
    const bool had_moments = !demonstration_.moments.empty();
    const Place place = demonstration_.placeOf(index_);
    shown_up_ = document_.analysis().layout.plumb.up();
    QElapsedTimer took;
    took.start();
    demonstration_ = demonstrate(document_.sketch(), document_.analysis().layout, engine_runs_);
    // A drag stays fluid: at least as long as this took is left for everything else.
    soon_.setInterval(std::clamp(2 * int(took.elapsed()), remake_ms, 500));
    index_ = had_moments ? demonstration_.momentAt(place) : 0;
    passed_s_ = 0;
    if (demonstration_.moments.empty())
        setPlaying(false);
    Q_EMIT remade();
    Q_EMIT moved();
}

void Player::setPlaying(bool on)
{
    const bool can = on && active_ && !demonstration_.moments.empty();
    if (can == playing_)
        return;
    if (can && index_ + 1 >= demonstration_.moments.size())
        goTo(0);
    playing_ = can;
    if (playing_)
        clock_.start();
    else
        clock_.stop();
    Q_EMIT playingChanged();
}

void Player::setSpeed(double times)
{
    speed_ = std::clamp(times, 1.0, 600.0);
}

void Player::setEngineRuns(bool on)
{
    if (on == engine_runs_)
        return;
    engine_runs_ = on;
    if (active_)
        remake();
}

void Player::goTo(std::size_t index)
{
    if (demonstration_.moments.empty())
        return;
    index_ = std::min(index, demonstration_.moments.size() - 1);
    passed_s_ = 0;
    Q_EMIT moved();
}

void Player::step(int direction)
{
    const Moment* now = moment();
    if (!now)
        return;
    setPlaying(false);
    const std::size_t by = now->phase == PhaseKind::energised ? energised_step : 1;
    if (direction > 0)
        goTo(index_ + by);
    else
        goTo(index_ > by ? index_ - by : 0);
}

void Player::toEvent(int direction)
{
    goTo(direction > 0 ? demonstration_.nextEvent(index_) : demonstration_.previousEvent(index_));
}

double Player::holdOf(std::size_t index) const
{
    const Phase& phase = demonstration_.phases[demonstration_.phaseAt(index)];
    if (phase.kind == PhaseKind::energised)
        return phase.hold_s / speed_;
    return demonstration_.moments[index].event ? std::max(phase.hold_s, event_hold_s) : phase.hold_s;
}

void Player::advance(double seconds)
{
    if (demonstration_.moments.empty())
        return;
    const std::size_t before = index_;
    passed_s_ += seconds;
    while (index_ + 1 < demonstration_.moments.size() && passed_s_ >= holdOf(index_)) {
        passed_s_ -= holdOf(index_);
        ++index_;
    }
    if (index_ != before)
        Q_EMIT moved();
    if (index_ + 1 >= demonstration_.moments.size())
        setPlaying(false);
}

} // namespace siphonwright::demonstration
