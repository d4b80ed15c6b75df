#include "tests/geometry/random_hoses.h"
#include "tests/near.h"

#include "core/geometry/profile.h"
#include "core/geometry/relief.h"

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using siphonwright::test::Dice;
using siphonwright::test::hose;
using siphonwright::test::randomCorners;

namespace {

/// Whether two lists tell of the same crests.
bool sameCrests(const std::vector<HighPoint>& a, const std::vector<HighPoint>& b)
{
    if (a.size() != b.size())
        return false;
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (!test::near(a[i].height_mm, b[i].height_mm, 1e-6) ||
            !test::near(a[i].along_mm, b[i].along_mm, 1e-4) ||
            !test::near(a[i].trapped_ml, b[i].trapped_ml, 1e-5) || a[i].within != b[i].within)
            return false;
    }
    return true;
}

bool sameDips(const std::vector<Dip>& a, const std::vector<HighPoint>& b)
{
    if (a.size() != b.size())
        return false;
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (!test::near(a[i].depth_mm, b[i].height_mm, 1e-6) ||
            !test::near(a[i].along_mm, b[i].along_mm, 1e-4) ||
            !test::near(a[i].held_ml, b[i].trapped_ml, 1e-5) || !test::near(a[i].z_mm, -b[i].z_mm, 1e-4) ||
            a[i].within != b[i].within)
            return false;
    }
    return true;
}

std::vector<HighPoint> asCrests(const std::vector<Dip>& dips)
{
    std::vector<HighPoint> crests;
    for (const Dip& dip : dips) {
        HighPoint crest;
        crest.along_mm = dip.along_mm;
        crest.height_mm = dip.depth_mm;
        crest.trapped_ml = dip.held_ml;
        crest.within = dip.within;
        crests.push_back(crest);
    }
    return crests;
}

bool sameProfile(const Profile& a, const Profile& b)
{
    return sameCrests(a.high_points, b.high_points) && sameCrests(asCrests(a.dips), asCrests(b.dips));
}

bool sameStretches(const std::vector<Stretch>& a, const std::vector<Stretch>& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Stretch& one, const Stretch& other) {
        return one.from_mm == other.from_mm && one.to_mm == other.to_mm && one.floor_mm == other.floor_mm &&
               one.cap_mm == other.cap_mm && one.crown(one.from_mm) == other.crown(one.from_mm) &&
               one.crown(one.to_mm) == other.crown(one.to_mm);
    });
}

/// Sections at the ends turned round are those that are found with up reversed.
bool areMirrored(const std::vector<Stretch>& up, const std::vector<Stretch>& down)
{
    return std::equal(up.begin(), up.end(), down.begin(), down.end(),
                      [](const Stretch& one, const Stretch& other) {
                          return one.section(one.from_mm).z_mm == -other.section(one.from_mm).z_mm &&
                                 one.section(one.from_mm).k == other.section(one.from_mm).k &&
                                 one.section(one.to_mm).z_mm == -other.section(one.to_mm).z_mm &&
                                 one.section(one.to_mm).k == other.section(one.to_mm).k;
                      });
}

template <typename Move>
std::vector<Corner> moved(std::vector<Corner> corners, Move move)
{
    for (Corner& corner : corners)
        corner.at = move(corner.at);
    return corners;
}

template <typename Check>
bool forRandomHoses(std::uint64_t seed, Check check)
{
    Dice dice(seed);
    for (int run = 0; run < 300; ++run) {
        const std::vector<Corner> corners = randomCorners(dice);
        if (!check(dice, corners, dice.between(12, 50))) {
            qWarning("hose %d", run);
            return false;
        }
    }
    return true;
}

} // namespace

class TestProfileInvariance : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsSeenWithUpReversedIsTheSameToTheBitAsFoundByItself()
    {
        int mirrored = 0;
        int tight = 0;
        QVERIFY(forRandomHoses(27, [&](Dice& dice, const std::vector<Corner>& corners, double bore) {
            const Path path = hose(corners, bore);
            const Vec3 up = unit({dice.between(-0.2, 0.2), dice.between(-0.2, 0.2), 1});
            const Relief relief = reliefOf(path, up);
            (relief.mirrored ? mirrored : tight) += 1;
            const std::vector<Stretch> crowns = stretchesOf(path, up, TightBends::limit_crown);
            const std::vector<Stretch> inverts = stretchesOf(path, up * -1, TightBends::limit_crown);
            return sameStretches(relief.up, crowns) && sameStretches(relief.down, inverts) &&
                   (!relief.mirrored || areMirrored(crowns, inverts));
        }));
        QVERIFY(mirrored > 20 && tight > 20);
    }

    void drawnFromTheOtherEndItIsMirrored()
    {
        QVERIFY(forRandomHoses(21, [](Dice&, std::vector<Corner> corners, double bore) {
            const Path path = hose(corners, bore);
            const Profile ahead = profileOf(path, Plumb());
            std::reverse(corners.begin(), corners.end());
            Profile back = profileOf(hose(corners, bore), Plumb());
            std::vector<HighPoint>& crests = back.high_points;
            std::reverse(crests.begin(), crests.end());
            for (HighPoint& crest : crests) {
                crest.along_mm = path.line.length() - crest.along_mm;
                if (crest.within)
                    crest.within = crests.size() - 1 - *crest.within;
            }
            return sameCrests(ahead.high_points, crests) && ahead.dips.size() == back.dips.size();
        }));
    }

    void theDatumDoesNotMatter()
    {
        QVERIFY(forRandomHoses(22, [](Dice& dice, const std::vector<Corner>& corners, double bore) {
            const Vec3 shift = {dice.between(-900, 900), dice.between(-900, 900), dice.between(-900, 900)};
            const auto shifted = moved(corners, [&](Vec3 p) { return p + shift; });
            return sameProfile(profileOf(hose(corners, bore), Plumb()),
                               profileOf(hose(shifted, bore), Plumb()));
        }));
    }

    void turningAboutPlumbDoesNotMatter()
    {
        QVERIFY(forRandomHoses(23, [](Dice& dice, const std::vector<Corner>& corners, double bore) {
            const double a = dice.between(0, 6.28);
            const auto turned = moved(corners, [&](Vec3 p) {
                return Vec3{p.x * std::cos(a) - p.y * std::sin(a), p.x * std::sin(a) + p.y * std::cos(a),
                            p.z};
            });
            return sameProfile(profileOf(hose(corners, bore), Plumb()),
                               profileOf(hose(turned, bore), Plumb()));
        }));
    }

    void aPointInAStraightDoesNotMatter()
    {
        QVERIFY(forRandomHoses(24, [](Dice& dice, const std::vector<Corner>& corners, double bore) {
            auto split = corners;
            const std::size_t i = dice.upTo(corners.size() - 2);
            const double share = dice.between(0.01, 0.99);
            Corner between;
            between.at = corners[i].at + (corners[i + 1].at - corners[i].at) * share;
            between.radius_mm = dice.between(0, 500);
            split.insert(split.begin() + static_cast<std::ptrdiff_t>(i) + 1, between);
            return sameProfile(profileOf(hose(corners, bore), Plumb()),
                               profileOf(hose(split, bore), Plumb()));
        }));
    }

    void upsideDownHighPointsAndDipsChangePlaces()
    {
        QVERIFY(forRandomHoses(25, [](Dice&, const std::vector<Corner>& corners, double bore) {
            const auto turned = moved(corners, [](Vec3 p) { return Vec3{p.x, p.y, -p.z}; });
            const Profile upright = profileOf(hose(corners, bore), Plumb());
            const Profile over = profileOf(hose(turned, bore), Plumb());
            return sameDips(over.dips, upright.high_points) && sameDips(upright.dips, over.high_points);
        }));
    }

    void noCrestIsHigherThanThePathsRange()
    {
        QVERIFY(forRandomHoses(26, [](Dice&, const std::vector<Corner>& corners, double bore) {
            const Path path = hose(corners, bore);
            double lowest = 1e9;
            double highest = -1e9;
            for (int i = 0; i <= 5000; ++i) {
                const double crown = heightsAt(path, Plumb(), path.line.length() * i / 5000).crown_mm;
                lowest = std::min(lowest, crown);
                highest = std::max(highest, crown);
            }
            const Profile profile = profileOf(path, Plumb());
            const auto fits = [&](const HighPoint& p) { return p.height_mm <= highest - lowest + 0.5; };
            return std::all_of(profile.high_points.begin(), profile.high_points.end(), fits);
        }));
    }

    void whatIsOverAndWhatIsUnderALevelIsTheWholeBore()
    {
        QVERIFY(forRandomHoses(27, [](Dice& dice, const std::vector<Corner>& corners, double bore) {
            const Path path = hose(corners, bore);
            const double level = dice.between(-200, 200);
            const double end = path.line.length();
            const double whole = boreVolume(path, 0, end);
            return test::near(boreVolumeOver(path, Plumb(), level, 0, end) +
                                  boreVolumeUnder(path, Plumb(), level, 0, end),
                              whole, 1e-6 * whole);
        }));
    }
};

QTEST_APPLESS_MAIN(TestProfileInvariance)
#include "test_profile_invariance.moc"
