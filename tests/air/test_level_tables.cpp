#include "tests/air/random_loops.h"
#include "tests/air/worked_loop.h"
#include "tests/near.h"
#include "tests/random_runs.h"

#include "core/air/purge.h"
#include "core/geometry/profile.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numbers>
#include <vector>

using namespace siphonwright;
using siphonwright::test::Dice;
using siphonwright::test::RandomFill;
using siphonwright::test::randomFill;
using siphonwright::test::runs;

namespace {

/// What somebody does to a drawn loop between two fills; a plumb for a grade that it is looked at on.
void edit(Dice& dice, RandomFill& fill)
{
    test::RandomLoop& loop = fill.loops[dice.upTo(fill.loops.size() - 1)];
    test::RandomRun& run = dice.upTo(1) == 0 ? loop.supply : loop.back;
    switch (dice.upTo(5)) {
    case 0:
        run.bore_mm = dice.between(12, 28);
        break;
    case 1:
        fill.request.plumb = dice.upTo(1) == 0 ? Plumb() : test::randomPlumb(dice);
        break;
    case 2:
        loop.loop.chamber.bore_mm = dice.between(45, 80);
        break;
    default: {
        Corner& corner = run.corners[dice.upTo(run.corners.size() - 1)];
        corner.at.z += dice.between(-40, 40);
        corner.at.x += dice.between(-5, 5);
        break;
    }
    }
}

bool sameState(const FillState& one, const FillState& other)
{
    if (one.cells.size() != other.cells.size() || one.throats != other.throats)
        return false;
    for (std::size_t i = 0; i < one.cells.size(); ++i) {
        const CellState& a = one.cells[i];
        const CellState& b = other.cells[i];
        if (a.level_mm != b.level_mm || a.liquid_ml != b.liquid_ml || a.gas != b.gas ||
            a.pressure_mm != b.pressure_mm || a.head_mm != b.head_mm || a.full != b.full)
            return false;
    }
    return one.poured_ml == other.poured_ml && one.gas_out == other.gas_out;
}

std::size_t cellsOf(const FillRequest& request)
{
    return cutIntoCells(request.loops, request.jacket, request.plumb).cells.size();
}

} // namespace

/// Level tables, and having them again.
class TestLevelTables : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aFillWithKeptTablesIsTheSameToTheLastBit()
    {
        std::size_t again = 0;
        std::size_t made = 0;
        for (int run = 0; run < runs(20, 400); ++run) {
            Dice dice(static_cast<std::uint64_t>(run) + 1);
            RandomFill drawn = randomFill(dice);
            LevelTables kept;
            for (int step = 0; step < 8; ++step) {
                const FillRequest request = drawn.built();
                const FillResult with = fill(request, &kept);
                const FillResult without = fill(request);
                QCOMPARE(with.status, without.status);
                QVERIFY2(sameState(with.end.state, without.end.state), qPrintable(QString::number(run)));
                QCOMPARE(with.events.size(), without.events.size());
                edit(dice, drawn);
            }
            again += kept.again();
            made += kept.made();
        }
        // Were nothing had again, or all made anew, this would test nothing.
        QVERIFY(again > made / 2 && made > again / 10);
    }

    void onlyTheHoseThatIsMovedIsMeasuredAnew()
    {
        Dice dice(11);
        RandomFill drawn = randomFill(dice);
        LevelTables kept;
        const std::size_t all = cellsOf(drawn.built()) - 1; // the jacket has no bore
        fill(drawn.built(), &kept);
        QCOMPARE(kept.made(), all);
        fill(drawn.built(), &kept);
        QCOMPARE(kept.made(), all);
        QCOMPARE(kept.again(), all);

        std::size_t supply = 0;
        for (test::RandomLoop& loop : drawn.loops)
            loop.supply.bore_mm += 1;
        const FillResult wider = fill(drawn.built(), &kept);
        for (const Cell& cell : wider.end.network->cells)
            supply += cell.part == LoopPart::supply ? 1 : 0;
        QVERIFY(supply > 0 && supply < all);
        QCOMPARE(kept.made(), all + supply);
    }

    /// However many are made, those of the last fill are there.
    void theTablesOfTheLastFillAreKept()
    {
        LevelTables kept;
        for (int run = 0; run < 120; ++run) {
            Dice dice(static_cast<std::uint64_t>(run) + 1);
            const FillRequest request = randomFill(dice).built();
            cutIntoCells(request.loops, request.jacket, request.plumb, &kept);
            const std::size_t made = kept.made();
            cutIntoCells(request.loops, request.jacket, request.plumb, &kept);
            QCOMPARE(kept.made(), made);
        }
        QVERIFY(kept.made() > 512);
    }

    /// Against the volumes by disc sections of core/geometry, which look for where an arc passes a level.
    void aTableHoldsWhatTheBoreHoldsUnderALevel()
    {
        int levels = 0;
        int near = 0;
        for (int run = 0; run < runs(60, 400); ++run) {
            Dice dice(static_cast<std::uint64_t>(run) + 1);
            const FillRequest request = randomFill(dice).built();
            const FillNetwork network = cutIntoCells(request.loops, request.jacket, request.plumb);
            for (const Cell& cell : network.cells) {
                if (cell.part != LoopPart::supply && cell.part != LoopPart::return_hose)
                    continue;
                const FillLoop& loop = request.loops[cell.loop];
                const Path& path = cell.part == LoopPart::supply ? loop.supply : loop.return_hose;
                for (int i = 0; i < 4; ++i) {
                    const double level_mm = dice.between(cell.floor_mm, cell.top_mm);
                    const double exact_ml =
                        boreVolumeUnder(path, request.plumb, level_mm, cell.from_mm, cell.to_mm);
                    const double share =
                        std::abs(cell.volume.under(level_mm).liquid_ml - exact_ml) / cell.capacity_ml;
                    VERIFY_NEAR(share, 0, 1e-3);
                    ++levels;
                    near += share < 1e-4 ? 1 : 0;
                }
            }
        }
        QVERIFY2(near * 100 >= levels * 98, qPrintable(QString::number(near)));
    }

    /// A round bore that lies level is half full at its middle, and a cubic through its floor, its top and
    /// its surfaces there is right in the middle, too, though a fiftieth of the whole off at the quarters.
    void aShortLevelHoseIsRightAtItsQuarters()
    {
        FillRequest request = test::workedFill();
        FillLoop& loop = request.loops[0];
        loop.supply = test::hose({{{0, 0, 300}, 0}, {{24, 0, 299.9}, 0}, {{400, 0, 120}, 0}}, 20);
        loop.supply.bores = {{0, 24, 20}, {24, loop.supply.line.length(), 18}};
        const FillNetwork network = cutIntoCells(request.loops, request.jacket, request.plumb);
        const Cell& cell = network.cells[1];
        VERIFY_NEAR(cell.to_mm, 24, 1e-9);
        // Segment of a circle of radius r under a chord r/2 under its middle: r^2 (pi/3 - sqrt(3)/4).
        const double segment_mm2 = 100 * (std::numbers::pi / 3 - std::sqrt(3) / 4);
        const double held_ml = cell.volume.under(299.95 - 5).liquid_ml;
        VERIFY_NEAR(held_ml, segment_mm2 * 24 / 1000, 1e-4 * cell.capacity_ml);
    }
};

QTEST_APPLESS_MAIN(TestLevelTables)
#include "test_level_tables.moc"
