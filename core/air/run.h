#pragma once

#include "core/air/modes.h"
#include "core/air/step.h"

#include <cmath>
#include <functional>
#include <utility>
#include <vector>

namespace siphonwright {

/// Something that a person would see happen while a loop is filled.
enum class FillEventKind {
    spills,          ///< coolant begins to run over the throat's floor
    stops_spilling,  ///< it runs no more
    seals,           ///< coolant closes the throat: gas no longer passes
    opens,           ///< the throat lets gas pass again
    bubbles,         ///< gas begins to bubble through the throat
    stops_bubbling,  ///< it bubbles no more
    bleed_closes,    ///< coolant has reached a bleed
    element_covered, ///< coolant has reached the element's top
    valve_opened,
    vacuum_released
};

struct FillEvent {
    FillEventKind kind = FillEventKind::spills;
    /// Where: index into the network's throats, which know their place; for a bleed or an element into those.
    std::size_t throat = 0;
    bool to_right = true; ///< direction of spilling or bubbling
    double level_mm = 0;  ///< in the jacket, when it happened
    double poured_ml = 0;
    std::size_t order = 0; ///< how many happened before it in its run
};

enum class RunEnd { limit, goal, failed };

/// Carries a state on by small quasi-static steps from one change of modes to the next.
///
/// Each step is solved for fixed modes. A margin that is used up is located along the push (secant with
/// halvings, to 1e-7 mm or 1e-12 of the whole) and its throat's mode changed there; a flow of the wrong sign
/// changes its mode at the step's start. At one place along the push a throat returns to a mode it left there
/// only if another throat has changed since; otherwise 2e-7 of the whole is stepped over and looked at again.
/// Gas that rises into lower pressure takes more room there than it leaves, and where the liquid that it
/// lifts runs back onto it more follows: no step then has a solution, and gas surges in one go until one has.
/// Never endless: changes, steps and the effort for them are counted.
class FillRun {
public:
    using Goal = std::function<double(const FillState&)>; ///< over zero until it is reached

    FillRun(const FillNetwork& network, FillState state);

    /// From 0 to `limit` of the push, whose natural size is `scale` (steps are at most scale / parts).
    /// `goal_marks`: one of which is reached when the goal is. They make it quicker to find.
    RunEnd run(const Push& push, double limit, double scale, const Goal& goal = {},
               const std::vector<Mark>& goal_marks = {});

    /// One step that was taken, in one set of modes: all between its ends can be had from it.
    struct Step {
        FillState start;
        Push push;
        double amount = 0;
        std::size_t events = 0; ///< recorded before it
    };
    /// Keeps every step from now on; null: none.
    void keepSteps(std::vector<Step>* steps) { steps_ = steps; }

    /// Sets a throat's mode by hand.
    void setMode(std::size_t throat, ThroatState mode);

    FillState& state() { return state_; }
    const FillState& state() const { return state_; }
    std::vector<FillEvent>& events() { return events_; }
    const std::vector<char>& covered() const { return covered_; }
    void record(FillEventKind kind, std::size_t place, bool to_right = true);
    /// How far the last run came along its push.
    double reached() const { return at_; }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    static constexpr double same_place = 1e-9; ///< along the push, of its scale
    struct Change {
        std::size_t throat = 0;
        ThroatState left;
    };
    struct Trial {
        double amount = 0;
        std::size_t used_up = none; ///< margin that ends there
        double at_most = 0;         ///< over zero: to be looked at again, so far at most
    };
    struct Ahead {
        double amount = HUGE_VAL;
        std::size_t margin = none;
        Mark mark; ///< without a cell: no level uses the margin up

        void take(double other_amount, std::size_t other_margin, const Mark& other_mark);
    };
    enum class Rates { unknown, known, none };

    void prepare();
    bool solve(double amount);
    bool isSpent() const;
    Ahead lookAhead();
    double amountTo(const Mark& mark, double margin) const;
    double marginAhead(std::size_t i, const Mark& mark) const;
    bool goesTo(const Mark& mark) const;
    CellState glanceAtCell(std::size_t i) const;
    double amountToNone(double margin, double glanced_margin) const;
    double amountToGoal();
    double amountAtValve(const Mark& mark) const;
    bool turnsOnTheWay();
    bool runsBackLater() const;
    bool turnsAtOnce();
    Trial advance(double most);
    double trySolve(double amount);
    void marginsOf(const FillState& state, std::vector<double>& margins) const;
    bool broken(const std::vector<double>& margins) const;
    double apart(const Mark& mark, const CellState& left, const CellState& right) const;
    bool isPast(const Mark& mark) const;
    const Mark* markPast(std::size_t margin) const;
    Trial solveForFirst(double amount);
    Trial locate(double amount);
    std::size_t leastOf(const std::vector<double>& margins) const;
    enum class Turn { none, changed, blocked };
    Turn turnFlows(double amount);
    bool guarded(std::size_t throat, ThroatState next) const;
    void change(std::size_t throat, ThroatState next);
    template <typename Look>
    bool tryWith(std::size_t throat, ThroatState mode, Look isRight);
    bool allRun(Mode mode) const;
    bool canStopAlone(std::size_t weir);
    void stopOtherWeirs(std::size_t throat);
    bool stepOver();
    bool endWithoutRoom();
    bool giveWay();
    bool surge();
    bool surge(std::size_t throat);
    void commit(double amount);
    bool useUp(std::size_t margin);
    void recordChange(std::size_t throat, ThroatState from, ThroatState to);

    const FillNetwork& network_;
    FillState state_;
    FillState trial_;
    Joined joined_;
    Stepper stepper_;
    std::vector<FillEvent> events_;
    std::vector<char> covered_;
    std::vector<Step>* steps_ = nullptr;

    Push push_;
    const Goal* goal_ = nullptr;
    const std::vector<Mark>* goal_marks_ = nullptr;
    double limit_ = 0;
    double scale_ = 1;
    double at_ = 0;
    double last_change_at_ = 0;
    double last_over_at_ = 0;
    double last_surge_at_ = 0;
    int turns_ = 0;
    std::size_t newest_ = none;
    bool joined_known_ = false;
    Rates rates_ = Rates::unknown;
    std::vector<ThroatState> throats_before_;
    std::vector<Mark> marks_;
    std::vector<double> flow_rates_; ///< through the throats at the start of a step
    FillState glanced_;
    std::vector<Change> changes_; ///< at the present place along the push
    std::vector<double> margins_before_;
    std::vector<double> margins_low_;
    std::vector<double> margins_high_;
    std::vector<double> margins_now_;
};

} // namespace siphonwright
