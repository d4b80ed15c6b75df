#pragma once

#include "core/analysis/analysis.h"
#include "core/proposing/layout_price.h"
#include "core/sketch/sketch.h"

#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

/// Whole layouts that break no rule: where the heater hangs, which ports, how both hoses run, their bore,
/// valves and clips.
namespace siphonwright {

/// A box, mm, in which the centre of the heater's body may be.
struct HangingSpace {
    Vec3 least;
    Vec3 most;
    friend bool operator==(const HangingSpace&, const HangingSpace&) = default;
};

/// Where a heater usually hangs, to start from: under the jacket and up to 200 mm past its ends, out to 450
/// mm beside it, on the side on which it is drawn, down to the ground (or 800 mm under the jacket). Own
/// choice. Without an engine 300 x 200 x 200 mm either way round the heater.
HangingSpace spaceUnder(const Sketch& sketch, const Id& heater);

/// What layouts are ranked by, the best first.
enum class RankBy {
    balance, ///< length, price and flow in one figure: Proposal::key
    length,  ///< least hose
    flow,    ///< most flow
    price    ///< least price; those with the fewest kinds of part that are not priced first, hose last of all
};

struct ProposeProgress {
    std::size_t tried = 0; ///< places of the heater, with ports and bore, at which hoses were laid
    std::size_t of = 0;    ///< may grow when a finer search follows
    std::size_t found = 0; ///< proposals so far
};

struct ProposeOptions {
    Id heater;                         ///< empty: the sketch's first
    std::optional<HangingSpace> space; ///< nothing: the heater stays where it is and as it is turned
    /// Bores to choose from, mm; empty: 15.875 to 25.4 mm (5/8 in to 1 in), and what the hoses are drawn
    /// with.
    std::vector<double> stock_bores_mm;
    std::size_t how_many = 3;
    /// What a metre of hose weighs in the ranking, per bore: 1 for 3/4 in, in proportion to the bore
    /// otherwise (own choice; list prices rise about so).
    double price_weight_per_mm_bore = 1 / 19.05;
    RankBy rank_by = RankBy::balance;
    std::function<void(const ProposeProgress&)> progress; ///< told on its way; may be empty
};

/// Place in the ranking: the less the better.
struct Rank {
    std::size_t unknown = 0; ///< how much of what it is ranked by is not known
    double value = 0;
    friend auto operator<=>(const Rank&, const Rank&) = default; // NOLINT(modernize-use-nullptr)
};

/// One layout, and how good it is.
struct Proposal {
    Sketch sketch; ///< whole: putting it in the place of the drawn one is one edit
    Id heater;
    Vec3 heater_at;
    double turned_deg = 0; ///< from how the heater was turned
    Id supply_port;
    Id return_port;
    double bore_mm = 0;
    double length_mm = 0; ///< of both hoses, developed
    double supply_mm = 0;
    double return_mm = 0;
    double flow_kg_per_s = 0;
    double flow_l_per_min = 0;
    LayoutPrice price;
    /// RankBy::balance, the least first: metres of hose x price weight / square root of the flow in l/min
    /// (own choice: twice the flow is worth 41 % more hose).
    double key = 0;
    Rank rank; ///< by what was asked for
    /// No stop and no caution on any grade of the envelope. Others are proposed only where there is none
    /// such.
    bool sound_over_envelope = false;
    std::optional<SoundGrades> sound;
    std::vector<SagMargin> sag;        ///< of both hoses
    std::vector<Margin> to_spare;      ///< of the rules on how it is laid that measured something
    std::vector<NotJudged> not_judged; ///< of the same rules: what holds nobody knows
    std::size_t advices = 0;           ///< findings of advice that it has
    std::size_t clips = 0;             ///< on both hoses
    Message text;                      ///< "1080 mm of hose of 19.1 mm bore, 0.81 l/min."
    Message margins;                   ///< on what grades it is sound, how far its hoses may sag
    std::vector<Message>
        changes; ///< besides the routes: "Move Tank heater 120 mm to the left.", "Turn the elbow ..."

    std::optional<double> leastSag_mm() const; ///< nothing: more than droop_limit_mm
    /// The least length in `to_spare`; nothing where no rule measured one.
    const Margin* leastToSpare() const;
};

/// A rule that removed the last candidates.
struct RuleInWay {
    std::string rule;
    PartRef part;            ///< the area in the way; else the hose, port or heater meant
    std::size_t removed = 0; ///< candidates that it removed, of those that came so far
    Message text;
    friend bool operator==(const RuleInWay&, const RuleInWay&) = default;
};

struct Proposals {
    std::vector<Proposal> best_first;
    std::vector<RuleInWay> in_conflict; ///< where there is no proposal: who came farthest fell to these
    /// Stops and cautions that no layout of this heater mends, such as a coolant that freezes, or another
    /// heater's hoses: they stay.
    std::vector<Finding> beside;
    std::string missing;    ///< what has to be entered before anything can be proposed; empty: nothing
    std::size_t places = 0; ///< of the heater, with ports and bore, that were tried
    bool stopped = false;
};

/// Layouts without a stop and without a caution, over the grades of the sketch's envelope, as prove() judges
/// them but for what no layout mends (`beside`).
///
/// Places of the heater in a grid over its space and turned by quarters, with every pair of ports and every
/// bore, are taken by what straight hoses there promise for the ranking. For each, single hoses (see
/// routes.h) are asked the rules that concern them alone; pairs of sound ones are analysed, the best of them
/// filled, warmed up and tilted. Round the best places the grid is halved once. Where the short list of ways
/// gives nothing, the best places are searched with a fine one. Ports with a role are kept; spare ones are
/// taken only where no pair with roles keeps the rules on ports. Gives what it has (nothing, mostly) when
/// stopped.
Proposals propose(const Sketch& sketch, const ProposeOptions& options = {}, const std::stop_token& stop = {});

/// Rules that no layout mends.
bool beyondLayout(const std::string& rule);

} // namespace siphonwright
