#include "core/layout/place_labels.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace siphonwright;

namespace {

LabelPlace at(double x, double z, double cost)
{
    return {LabelBox{{x, z}, 5, 1, 0}, std::nullopt, cost};
}

} // namespace

class TestPlaceLabels : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aLabelTakesItsCheapestPlace()
    {
        const auto chosen = placeLabels({{{at(0, 0, 2), at(0, 10, 1)}}});
        QCOMPARE(*chosen[0], std::size_t{1});
    }

    void theFirstOneMovesWhereTheSecondHasNoOtherPlace()
    {
        // Greedy would leave the second without a place: both want the origin, it has nothing else.
        const auto chosen = placeLabels({{{at(0, 0, 0), at(0, 10, 1)}}, {{at(1, 0, 0)}}});
        QCOMPARE(*chosen[0], std::size_t{1});
        QCOMPARE(*chosen[1], std::size_t{0});
    }

    void whatHasNoRoomIsLeftOut()
    {
        const auto chosen = placeLabels({{{at(0, 0, 0)}}, {{at(1, 0, 0)}}});
        QVERIFY(chosen[0].has_value() != chosen[1].has_value());
    }

    void aLeaderRunsThroughNoOtherLabel()
    {
        LabelPlace led = at(0, 0, 0);
        led.leader = LabelLeader{{5, 0}, {30, 0}};
        LabelPlace round = at(0, 20, 1);
        round.leader = LabelLeader{{5, 20}, {30, 0}};
        const auto chosen = placeLabels({{{led, round}}, {{at(15, 0, 0)}}});
        QCOMPARE(*chosen[0], std::size_t{1});
    }

    void turnedBoxesAreToldApartBetterThanTheirCorners()
    {
        // Two texts at 45 degrees, 3 apart across and 2 high: apart, though their upright boxes overlap.
        constexpr double quarter = 3.14159265358979323846 / 4;
        const double off = 3 / std::sqrt(2);
        const LabelBox a{{0, 0}, 5, 1, quarter};
        QVERIFY(!overlap(a, LabelBox{{-off, off}, 5, 1, quarter}));
        QVERIFY(overlap(a, LabelBox{{-off / 2, off / 2}, 5, 1, quarter}));
    }

    void noTwoOfManyOverlap()
    {
        std::mt19937 random(20'261'126);
        const auto number = [&random](double most) { return double(random() % 1000) * most / 1000; };
        std::vector<LabelWish> wishes;
        for (int i = 0; i < 40; ++i) {
            LabelWish wish;
            const double x = number(60);
            const double z = number(40);
            for (int k = 0; k < 24; ++k)
                wish.places.push_back({LabelBox{{x + number(20) - 10, z + number(20) - 10}, 4, 1, number(1)},
                                       std::nullopt, double(k)});
            wishes.push_back(wish);
        }
        const auto chosen = placeLabels(wishes);
        int placed = 0;
        for (std::size_t i = 0; i < wishes.size(); ++i) {
            placed += chosen[i].has_value();
            for (std::size_t k = 0; k < i; ++k)
                if (chosen[i] && chosen[k])
                    QVERIFY(!overlap(wishes[i].places[*chosen[i]].box, wishes[k].places[*chosen[k]].box));
        }
        QVERIFY(placed > 20);
        QVERIFY(placeLabels(wishes) == chosen);
    }
};

QTEST_MAIN(TestPlaceLabels)
#include "test_place_labels.moc"
