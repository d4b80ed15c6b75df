#pragma once

#include "app/demonstration/demonstration.h"
#include "app/document/document.h"

#include <QObject>
#include <QTimer>

namespace siphonwright::demonstration {

/// Plays a demonstration of the open drawing: clock, speed, and where it stands. An edit while it plays makes
/// it anew and goes on from the same place.
class Player : public QObject {
    Q_OBJECT
public:
    explicit Player(const Document& document, QObject* parent = nullptr);

    const Demonstration& demonstration() const { return demonstration_; }
    /// Null if there is nothing to show.
    const Moment* moment() const;
    std::size_t index() const { return index_; }

    /// Compute, and stand at the start.
    void begin();
    void end();
    bool active() const { return active_; }
    bool playing() const { return playing_; }
    void setPlaying(bool on);
    /// How much faster than the truth the energised phase is shown, 1 to 600.
    void setSpeed(double times);
    double speed() const { return speed_; }

    /// Whether the engine is run and topped up before the heater is switched on.
    void setEngineRuns(bool on);
    bool engineRuns() const { return engine_runs_; }

    void goTo(std::size_t index);
    /// One moment on or back; several minutes of the energised phase.
    void step(int direction);
    void toEvent(int direction);
    void toStart() { goTo(0); }
    /// Let time pass; what the timer does.
    void advance(double seconds);

Q_SIGNALS:
    void moved();  ///< another moment is shown
    void remade(); ///< the moments are others
    void playingChanged();
    void activeChanged();

private:
    void remake();
    double holdOf(std::size_t index) const;

    const Document& document_;
    Demonstration demonstration_;
    std::size_t index_ = 0;
    double passed_s_ = 0; ///< in the moment that is shown
    Vec3 shown_up_;       ///< plumb that it was computed for
    double speed_ = 600;
    bool engine_runs_ = true;
    bool active_ = false;
    bool playing_ = false;
    QTimer clock_;
    QTimer soon_; ///< edits of one drag are followed a few times a second
};

} // namespace siphonwright::demonstration
