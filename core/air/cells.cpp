#include "core/air/cells.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

/// Heights within this are level.
constexpr double level_mm = 1e-6;
constexpr double least_cell_mm = 0.5;
/// Bores that differ by less are one.
constexpr double same_bore_mm = 1e-9;

/// Where a hose is cut.
struct Cut {
    double s = 0;
    ThroatKind kind = ThroatKind::crest;
    bool shut = false;
    std::size_t valve = 0;
};

double levelPart(Vec3 direction, Vec3 up)
{
    return length(cross(up, direction));
}

/// A place between which and the next the centreline rises, falls or is level throughout.
struct Turn {
    double s = 0;
    double z_mm = 0;
};

std::vector<Turn> turnsOf(const Centreline& line, Vec3 up)
{
    std::vector<Turn> turns;
    for (const Piece& piece : line.pieces()) {
        turns.push_back({piece.s, dot(piece.start, up)});
        if (piece.radius_mm <= 0)
            continue;
        // Level where u cos a + n sin a = 0.
        double a = std::atan2(-dot(piece.u, up), dot(piece.n, up));
        if (a < 0)
            a += std::numbers::pi;
        const double t = a * piece.radius_mm;
        if (t > 0 && t < piece.length_mm)
            turns.push_back({piece.s + t, dot(piece.at(t), up)});
    }
    turns.push_back({line.length(), dot(line.at(line.length()), up)});
    return turns;
}

void addTurns(const Path& path, Vec3 up, std::vector<Cut>& cuts)
{
    const std::vector<Turn> turns = turnsOf(path.line, up);
    double last_sense = 0;
    std::size_t last_end = 0; // where the last rise or fall ended
    std::size_t from = 0;
    for (std::size_t i = 1; i < turns.size(); ++i) {
        const double change = turns[i].z_mm - turns[from].z_mm;
        if (std::abs(change) <= level_mm)
            continue;
        const double sense = change > 0 ? 1 : -1;
        if (last_sense * sense < 0)
            cuts.push_back({(turns[last_end].s + turns[i - 1].s) / 2,
                            sense < 0 ? ThroatKind::crest : ThroatKind::hollow, false, 0});
        last_sense = sense;
        last_end = i;
        from = i;
    }
}

void addReducers(const Path& path, std::vector<Cut>& cuts)
{
    for (std::size_t i = 1; i < path.bores.size(); ++i) {
        if (std::abs(path.bores[i].bore_mm - path.bores[i - 1].bore_mm) > same_bore_mm)
            cuts.push_back({path.bores[i].from_mm, ThroatKind::reducer, false, 0});
    }
}

/// Valves stay, then turns, then reducers.
int rank(ThroatKind kind)
{
    return kind == ThroatKind::valve ? 0 : kind == ThroatKind::reducer ? 2 : 1;
}

std::vector<Cut> cutsOf(const Path& path, Vec3 up, const std::vector<LoopValve>& valves, LoopPart part)
{
    std::vector<Cut> cuts;
    addTurns(path, up, cuts);
    addReducers(path, cuts);
    const double end = path.line.length();
    for (std::size_t i = 0; i < valves.size(); ++i) {
        // A valve at the very end leaves a cell to its opening.
        if (valves[i].on == part)
            cuts.push_back({std::clamp(valves[i].along_mm, std::min(2 * least_cell_mm, end / 2),
                                       std::max(end - 2 * least_cell_mm, end / 2)),
                            ThroatKind::valve, !valves[i].open, i});
    }
    std::stable_sort(cuts.begin(), cuts.end(),
                     [](const Cut& a, const Cut& b) { return rank(a.kind) < rank(b.kind); });
    std::vector<Cut> kept;
    for (const Cut& cut : cuts) {
        const bool near_end = cut.s < least_cell_mm || cut.s > end - least_cell_mm;
        const bool near_other = std::any_of(kept.begin(), kept.end(), [&](const Cut& other) {
            return std::abs(other.s - cut.s) < least_cell_mm;
        });
        if (!near_end && !near_other)
            kept.push_back(cut);
    }
    std::sort(kept.begin(), kept.end(), [](const Cut& a, const Cut& b) { return a.s < b.s; });
    return kept;
}

/// Lays the cells of the loops one after the other.
class Cutter {
public:
    Cutter(FillNetwork& network, const Plumb& plumb, LevelTables& tables)
        : network_(network), tables_(tables), up_(plumb.up())
    {}

    void lay(const FillLoop& loop, std::size_t index)
    {
        loop_ = index;
        const std::size_t first = network_.cells.size();
        const Centreline& supply = loop.supply.line;
        const Centreline& back = loop.return_hose.line;
        addOpening(loop.supply_port, supply.at(0), LoopPart::supply, 0, 0, first);
        addHose(loop, LoopPart::supply);
        addOpening(loop.inlet, supply.at(supply.length()), LoopPart::supply, supply.length(), last(),
                   last() + 1);
        addChamber(loop);
        addOpening(loop.outlet, back.at(0), LoopPart::return_hose, 0, last(), last() + 1);
        addHose(loop, LoopPart::return_hose);
        addOpening(loop.return_port, back.at(back.length()), LoopPart::return_hose, back.length(), last(), 0);
        for (std::size_t i = 0; i < loop.bleeds.size(); ++i)
            addBleed(loop, i, first);
    }

private:
    std::size_t last() const { return network_.cells.size() - 1; }

    void addCell(LoopPart part, const std::vector<MonotonePart>& parts, double from_mm, double to_mm)
    {
        Cell cell;
        cell.loop = loop_;
        cell.part = part;
        cell.from_mm = from_mm;
        cell.to_mm = to_mm;
        cell.volume = tables_.of(parts, from_mm, to_mm);
        cell.floor_mm = cell.volume.floor();
        cell.top_mm = cell.volume.top();
        cell.capacity_ml = cell.volume.capacity();
        for (const MonotonePart& stretch : parts) {
            const double a = std::max(from_mm, stretch.from_mm);
            const double b = std::min(to_mm, stretch.to_mm);
            if (!(b > a))
                continue;
            for (const double s : {a, (a + b) / 2, b})
                cell.steepest = std::max(cell.steepest, std::min(1.0, std::abs(stretch.stretch.slope(s))));
            cell.widest_bore_mm = std::max(cell.widest_bore_mm, 2 * stretch.stretch.half_bore_mm);
        }
        network_.hoses_and_chambers_ml += cell.capacity_ml;
        network_.cells.push_back(std::move(cell));
    }

    Throat throatAt(ThroatKind kind, LoopPart part, double along_mm, double z_mm, double reach_mm) const
    {
        Throat throat;
        throat.kind = kind;
        throat.loop = loop_;
        throat.part = part;
        throat.along_mm = along_mm;
        throat.floor_mm = z_mm - reach_mm;
        throat.crown_mm = z_mm + reach_mm;
        return throat;
    }

    void addOpening(const LoopOpening& opening, Vec3 at, LoopPart part, double along_mm, std::size_t left,
                    std::size_t right)
    {
        const Vec3 axis = unit(opening.axis);
        const double k = length(axis) > 0 ? levelPart(axis, up_) : 1;
        Throat throat = throatAt(ThroatKind::opening, part, along_mm, dot(at, up_), opening.bore_mm / 2 * k);
        throat.bore_mm = opening.bore_mm;
        throat.left = left;
        throat.right = right;
        network_.throats.push_back(throat);
    }

    void addHose(const FillLoop& loop, LoopPart part)
    {
        const Path& path = part == LoopPart::supply ? loop.supply : loop.return_hose;
        const auto parts = monotonePartsOf(stretchesOf(path, up_, TightBends::ignored));
        double from = 0;
        for (const Cut& cut : cutsOf(path, up_, loop.valves, part)) {
            addCell(part, parts, from, cut.s);
            const bool turn = cut.kind == ThroatKind::crest || cut.kind == ThroatKind::hollow;
            const double k = turn ? 1 : levelPart(path.line.tangent(cut.s), up_);
            Throat throat =
                throatAt(cut.kind, part, cut.s, dot(path.line.at(cut.s), up_), path.boreAt(cut.s) / 2 * k);
            throat.bore_mm = path.boreAt(cut.s);
            throat.left = last();
            throat.right = last() + 1;
            throat.starts_shut = cut.shut;
            throat.valve = cut.valve;
            network_.throats.push_back(throat);
            from = cut.s;
        }
        addCell(part, parts, from, path.line.length());
    }

    void addChamber(const FillLoop& loop)
    {
        // A chamber is a length of wide bore: its discs lie square to its axis.
        Path body;
        body.line = Centreline({{loop.chamber.bottom, 0}, {loop.chamber.top, 0}});
        body.bores = {{0, body.line.length(), loop.chamber.bore_mm}};
        const auto parts = monotonePartsOf(stretchesOf(body, up_, TightBends::ignored));
        addCell(LoopPart::chamber, parts, 0, body.line.length());
        if (loop.element_top_mm)
            network_.elements.push_back({last(), *loop.element_top_mm});
    }

    void addBleed(const FillLoop& loop, std::size_t index, std::size_t first)
    {
        const LoopBleed& bleed = loop.bleeds[index];
        const Path& path = bleed.on == LoopPart::supply ? loop.supply : loop.return_hose;
        const double along = std::clamp(bleed.along_mm, 0.0, path.line.length());
        const double crown =
            dot(path.line.at(along), up_) + path.boreAt(along) / 2 * levelPart(path.line.tangent(along), up_);
        for (std::size_t i = first; i < network_.cells.size(); ++i) {
            const Cell& cell = network_.cells[i];
            // A bleed on a crest, or within half a bore of it, serves both limbs.
            const double reach = path.boreAt(along) / 2;
            if (cell.part == bleed.on && along >= cell.from_mm - reach && along <= cell.to_mm + reach)
                network_.bleeds.push_back({i, std::min(crown, cell.top_mm), bleed.open, loop_, index});
        }
    }

    FillNetwork& network_;
    LevelTables& tables_;
    Vec3 up_;
    std::size_t loop_ = 0;
};

bool isBore(double bore_mm)
{
    return std::isfinite(bore_mm) && bore_mm > 0.1 && bore_mm < 1e5;
}

std::string problemIn(const FillLoop& loop)
{
    for (const Path* path : {&loop.supply, &loop.return_hose}) {
        if (!(path->line.length() >= 2 * least_cell_mm))
            return "a hose has no length";
        if (path->bores.empty() || !std::all_of(path->bores.begin(), path->bores.end(),
                                                [](const BoreSpan& span) { return isBore(span.bore_mm); }))
            return "a hose has no bore";
    }
    for (const LoopOpening* opening : {&loop.supply_port, &loop.inlet, &loop.outlet, &loop.return_port}) {
        if (!isBore(opening->bore_mm) || !std::isfinite(length(opening->axis)))
            return "an opening has no bore";
    }
    const double chamber_mm = distance(loop.chamber.bottom, loop.chamber.top);
    if (!isBore(loop.chamber.bore_mm) || !(std::isfinite(chamber_mm) && chamber_mm > least_cell_mm))
        return "a chamber has no volume";
    for (const LoopValve& valve : loop.valves) {
        if (!std::isfinite(valve.along_mm))
            return "a valve has no place";
    }
    for (const LoopBleed& bleed : loop.bleeds) {
        if (!std::isfinite(bleed.along_mm))
            return "a bleed has no place";
    }
    if (loop.element_top_mm && !std::isfinite(*loop.element_top_mm))
        return "the element has no height";
    return {};
}

std::string problemIn(const std::vector<JacketVolume>& jacket)
{
    if (jacket.size() < 2)
        return "the jacket's volume needs two levels";
    for (std::size_t i = 0; i < jacket.size(); ++i) {
        const bool rises = i == 0 || (jacket[i].level_mm - jacket[i - 1].level_mm > 1e-6 &&
                                      jacket[i].volume_ml - jacket[i - 1].volume_ml > 1e-6);
        if (!std::isfinite(jacket[i].level_mm) || !std::isfinite(jacket[i].volume_ml) || !rises)
            return "the jacket's volume must rise with its level";
    }
    return {};
}

} // namespace

FillNetwork cutIntoCells(const std::vector<FillLoop>& loops, const std::vector<JacketVolume>& jacket,
                         const Plumb& plumb, LevelTables* kept)
{
    FillNetwork network;
    network.problem = problemIn(jacket);
    for (const FillLoop& loop : loops) {
        if (network.problem.empty())
            network.problem = problemIn(loop);
    }
    if (!network.problem.empty())
        return network;

    std::vector<double> levels;
    std::vector<double> volumes;
    for (const JacketVolume& point : jacket) {
        levels.push_back(point.level_mm);
        volumes.push_back(point.volume_ml);
    }
    Cell reservoir;
    reservoir.volume = LevelTable(levels, volumes);
    reservoir.floor_mm = -1e12;
    reservoir.top_mm = 1e12;
    network.cells.push_back(reservoir);

    LevelTables none_kept;
    Cutter cutter(network, plumb, kept ? *kept : none_kept);
    for (std::size_t i = 0; i < loops.size(); ++i)
        cutter.lay(loops[i], i);
    for (Throat& throat : network.throats) {
        const Cell& left = network.cells[throat.left];
        const Cell& right = network.cells[throat.right];
        throat.floor_mm = std::max({throat.floor_mm, left.floor_mm, right.floor_mm});
        throat.crown_mm = std::min({throat.crown_mm, left.top_mm, right.top_mm});
        throat.crown_mm = std::max(throat.crown_mm, throat.floor_mm);
    }
    return network;
}

} // namespace siphonwright
