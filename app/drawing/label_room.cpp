#include "app/drawing/label_room.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace siphonwright::drawing {

namespace {

// Of a line's box, as multiples of the capitals' height over and under the baseline.
constexpr double over_baseline = 1.15;
constexpr double under_baseline = 0.32;

/// Room kept round a text, mm of the device.
constexpr double beside_mm = 0.5;
constexpr double over_and_under_mm = 0.25;

// What a place costs: own choice.
constexpr double over_line = 2;
constexpr double over_hatching = 0.6;
constexpr double over_hose = 40;
constexpr double led_there = 3;
constexpr double per_led_mm = 0.12;
constexpr double long_led_mm = 15; ///< a longer line is hard to follow
constexpr double per_long_led_mm = 0.3;
// Of a leader line, for each thing that it crosses; on the screen, where there is no time, hoses alone.
constexpr double leader_over_hose = 0.8;
constexpr double leader_over_line = 0.4;
constexpr double leader_over_part = 2.5;
constexpr double leader_over_hose_on_page = 1.5;
constexpr double leader_along_line = 15;
constexpr double leader_over_other_hose = 8;
constexpr double level_leader = 3; // it reads as a height
constexpr double level_leader_mm = 8;

/// A label on a leader line stands at one of these distances, mm of the device.
constexpr std::array led_mm = {4.0, 7.0, 10.0, 14.0, 19.0, 25.0, 32.0, 40.0, 50.0};
constexpr int directions = 24;
/// Where there is none, anywhere in steps of so much, on a line so much longer at most.
constexpr double grid_mm = 5;
constexpr double longer_mm = 40;
/// A leader keeps so far off what else has a name, and a text without one off what it is not of.
constexpr double off_points_mm = 0.9;
/// A line shorter than this is not seen beside the text.
constexpr double least_led_mm = 1.5;

// On a page, mm of the device: more room beside a text, so that two do not read as one; how near a text
// without a line stands to the outline of what it is of; how far within that a line ends.
constexpr double apart_mm = 0.5;
constexpr double rows_apart_mm = 0.2;  // or two names read as lines of one
constexpr double short_apart_mm = 1.8; // a letter, an item's number: they read on to what stands beside
constexpr double by_outline_mm = 2.2;
constexpr double letter_by_outline_mm = 0.8;
constexpr double letter_share = 0.55; // of the same for a name
constexpr double into_outline_mm = 2.5;
constexpr double by_another_mm = 1.2;
/// A text in what it is of, which is large, keeps so far off what else has a name.
constexpr double off_points_within_mm = 1.5;
constexpr double letter_off_points_within_mm = 4;

/// Where a line from outside ends in an outline: a little within, on the way to its middle.
QPointF endWithin(const QPolygonF& area, QPointF from, QPointF middle, double into)
{
    const QLineF way(middle, from);
    double outermost = 0;
    for (qsizetype i = 0; i < area.size(); ++i) {
        QPointF at;
        if (way.intersects(QLineF(area[i], area[(i + 1) % area.size()]), &at) == QLineF::BoundedIntersection)
            outermost = std::max(outermost, QLineF(middle, at).length());
    }
    const double length = way.length();
    return length > 0 ? way.pointAt(std::max(0.0, outermost - into) / length) : middle;
}

constexpr double pi = 3.14159265358979323846;

LabelBox boxOf(const QRectF& area)
{
    return {{area.center().x(), area.center().y()}, area.width() / 2, area.height() / 2, 0};
}

QPointF nearestIn(const QRectF& box, QPointF point)
{
    return {std::clamp(point.x(), box.left(), box.right()), std::clamp(point.y(), box.top(), box.bottom())};
}

double distanceTo(const LabelBox& box, QPointF point)
{
    const double c = std::cos(box.angle_rad);
    const double s = std::sin(box.angle_rad);
    const double x = point.x() - box.centre.x;
    const double y = point.y() - box.centre.z;
    return std::hypot(std::max(0.0, std::abs(x * c + y * s) - box.half_along),
                      std::max(0.0, std::abs(y * c - x * s) - box.half_across));
}

double distanceTo(const LabelLeader& line, QPointF point)
{
    const QPointF from(line.from.x, line.from.z);
    const QPointF way = QPointF(line.to.x, line.to.z) - from;
    const double length2 = QPointF::dotProduct(way, way);
    const double along =
        length2 > 0 ? std::clamp(QPointF::dotProduct(point - from, way) / length2, 0.0, 1.0) : 0;
    const QPointF off = point - from - way * along;
    return std::hypot(off.x(), off.y());
}

/// Does a leader run along a level or upright line, so that one cannot tell which is which?
bool runsAlong(const LabelLeader& leader, const QRectF& line, double near_by)
{
    constexpr double long_for_its_width = 6;
    constexpr double tangent_of_10_degrees = 0.176;
    const bool level = line.width() > long_for_its_width * line.height();
    if (!level && line.height() <= long_for_its_width * line.width())
        return false;
    const double x = std::abs(leader.to.x - leader.from.x);
    const double y = std::abs(leader.to.z - leader.from.z);
    return (level ? y < tangent_of_10_degrees * x : x < tangent_of_10_degrees * y) &&
           crosses(leader, boxOf(line.adjusted(-near_by, -near_by, near_by, near_by)));
}

} // namespace

QRectF around(const LabelBox& box)
{
    const double c = std::abs(std::cos(box.angle_rad));
    const double s = std::abs(std::sin(box.angle_rad));
    const double w = box.half_along * c + box.half_across * s;
    const double h = box.half_along * s + box.half_across * c;
    return {box.centre.x - w, box.centre.z - h, 2 * w, 2 * h};
}

LabelRoom::LabelRoom(const Ink& ink, Named named)
    : ink_(ink),
      named_(std::move(named)),
      any_thin_(ink.room_.lines.hasThin() || (ink.under_ && ink.under_->lines.hasThin())),
      any_broad_(ink.room_.lines.hasBroad() || (ink.under_ && ink.under_->lines.hasBroad()))
{}

LabelBox LabelRoom::boxFor(const Spot& spot, double width) const
{
    const double h = ink_.paper(ink_.style.lettering_mm);
    const double along = spot.anchor == Anchor::left     ? width / 2
                         : spot.anchor == Anchor::centre ? 0
                                                         : -width / 2;
    const double down = h * (under_baseline - over_baseline) / 2;
    const double a = spot.angle_deg * pi / 180;
    return {{spot.at.x() + along * std::cos(a) - down * std::sin(a),
             spot.at.y() + along * std::sin(a) + down * std::cos(a)},
            width / 2 + ink_.paper(beside_mm),
            h * (under_baseline + over_baseline) / 2 + ink_.paper(over_and_under_mm),
            a};
}

std::optional<LabelPlace> LabelRoom::placeAt(const LabelBox& text, double cost, const std::optional<Led>& led,
                                             TextKind kind) const
{
    LabelBox box = text;
    if (ink_.style.page) {
        box.half_along += ink_.paper(kind.brief ? short_apart_mm : apart_mm);
        box.half_across += ink_.paper(rows_apart_mm);
    }
    const QRectF outer = around(box);
    if (!ink_.visible.contains(outer))
        return std::nullopt;
    const auto hides = [&](const LineField::Area& one) {
        return meet(one.area, outer) && overlap(boxOf(one.area), box);
    };
    if (ink_.near(&Ink::Room::taken, outer, hides))
        return std::nullopt;
    LabelPlace place{box, std::nullopt, cost};
    bool thin = false;
    bool broad = false;
    ink_.near(&Ink::Room::lines, outer, [&](const LineField::Area& line) {
        if (!(line.broad ? broad : thin) && hides(line))
            (line.broad ? broad : thin) = true;
        return (thin || !any_thin_) && (broad || !any_broad_);
    });
    if (broad && ink_.style.page)
        return std::nullopt;
    constexpr double gap_in_a_line = 2; // on paper, which keeps it
    constexpr double gap_across = 6;
    if (thin && ink_.across_.near(outer, hides))
        place.cost += gap_across;
    place.cost += (thin ? over_line : 0) + (broad ? over_hose : 0) +
                  (thin && ink_.style.page ? gap_in_a_line : 0) +
                  (ink_.onHatching(outer) ? over_hatching : 0);
    kind.over_lines = thin;
    if (led && !addLeader(place, *led, around(text), kind))
        return std::nullopt;
    return place;
}

bool LabelRoom::hidesLines(const LabelBox& box) const
{
    const QRectF outer = around(box);
    return ink_.onHatching(outer) || ink_.near(&Ink::Room::lines, outer, [&](const LineField::Area& line) {
        return meet(line.area, outer) && overlap(boxOf(line.area), box);
    });
}

std::vector<Spot> LabelRoom::spotsRound(const Led& led, double width) const
{
    const double h = ink_.paper(ink_.style.lettering_mm);
    std::vector<Spot> spots;
    for (const double far : led_mm)
        for (int i = 0; i < directions; ++i) {
            const double a = 2 * pi * i / directions;
            const QPointF way(std::cos(a), std::sin(a));
            const QPointF at = led.to + way * (led.beside + ink_.paper(far));
            const double across = std::abs(way.x()) < 0.3 ? 0 : way.x() > 0 ? width / 2 : -width / 2;
            spots.push_back({at + QPointF(across, h * (1 + way.y()) / 2), Anchor::centre, 0});
        }
    return spots;
}

std::vector<Spot> LabelRoom::spotsFurther(const Led& led, double width) const
{
    const double h = ink_.paper(ink_.style.lettering_mm);
    const double row = h * (over_baseline + under_baseline) + 2 * ink_.paper(over_and_under_mm);
    const double step = ink_.paper(grid_mm);
    std::vector<std::pair<double, Spot>> found;
    for (double y = ink_.visible.top() + row; y < ink_.visible.bottom(); y += row)
        for (double x = ink_.visible.left() + width / 2; x + width / 2 < ink_.visible.right(); x += step) {
            const double beside = std::max(0.0, std::abs(x - led.to.x()) - width / 2);
            const double far = std::hypot(beside, y - led.to.y());
            if (far < ink_.paper(led_mm.back() + longer_mm))
                found.push_back({far, {{x, y}, Anchor::centre, 0}});
        }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Spot> spots;
    for (const auto& [far, spot] : found)
        spots.push_back(spot);
    return spots;
}

QRectF LabelRoom::freeBox(const QSizeF& size) const
{
    const double step = ink_.paper(grid_mm / 2);
    const double air = ink_.paper(2.5); // or it reads on to what stands beside
    for (double y = ink_.visible.bottom() - size.height() - air; y > ink_.visible.top(); y -= step)
        for (double x = ink_.visible.left() + air; x + size.width() < ink_.visible.right(); x += step)
            if (const QRectF box(QPointF(x, y), size);
                ink_.isFree(box.adjusted(-air, -air, air, air), true) && !ink_.onHatching(box))
                return box;
    return {};
}

QRectF LabelRoom::boxOverLines(const QSizeF& size) const
{
    const double step = ink_.paper(grid_mm / 2);
    QRectF best;
    double least = HUGE_VAL;
    const auto hides_hose = [&](const QRectF& box) {
        return any_broad_ && ink_.near(&Ink::Room::lines, box, [&](const LineField::Area& line) {
            return line.broad && meet(line.area, box);
        });
    };
    for (double y = ink_.visible.top(); y + size.height() < ink_.visible.bottom(); y += step)
        for (double x = ink_.visible.left(); x + size.width() < ink_.visible.right(); x += step) {
            const QRectF box(QPointF(x, y), size);
            if (!ink_.isFree(box, false) || hides_hose(box))
                continue;
            if (const double covered = ink_.covered_mm2(box); covered < least) {
                least = covered;
                best = box;
            }
        }
    return best;
}

/// Does a text need no line to what it is of? One that stands over other lines outside that reads as theirs.
bool LabelRoom::standsBy(const QRectF& outer, const Led& led, double far, TextKind kind) const
{
    if (!ink_.style.page)
        return far <= led.beside;
    if (led.area.isEmpty()) {
        const bool hose = led.large;
        return kind.letter ? !hose && far <= letter_share * led.beside
                           : far <= led.beside && (hose || !kind.over_lines);
    }
    if (led.area.intersects(QPolygonF(outer))) // where a letter would be of anything
        return !kind.letter && !kind.over_lines;
    const double by = ink_.paper(kind.letter ? letter_by_outline_mm : by_outline_mm);
    return !kind.over_lines && led.area.intersects(QPolygonF(outer.adjusted(-by, -by, by, by)));
}

/// Where a line from a text ends in what it is of: where that is seen.
QPointF LabelRoom::endOf(const Led& led, QPointF from) const
{
    if (led.area.isEmpty() || !ink_.style.page)
        return led.to;
    const QPointF end = endWithin(led.area, from, led.to, ink_.paper(into_outline_mm));
    const auto far = [&](QPointF at) { return QLineF(from, at).length(); };
    if (led.seen.empty() || (ink_.seenAt(led.area, end) && far(end) >= ink_.paper(least_led_mm)))
        return end;
    QPointF best = end;
    double least = HUGE_VAL;
    for (const QPointF at : led.seen)
        if (const double length = far(at); length >= ink_.paper(least_led_mm) && length < least) {
            least = length;
            best = at;
        }
    return best;
}

bool LabelRoom::addLeader(LabelPlace& place, const Led& led, const QRectF& outer, TextKind kind) const
{
    const QPointF nearest = nearestIn(outer, led.to);
    const double far = std::hypot(led.to.x() - nearest.x(), led.to.y() - nearest.y());
    const bool on_page = ink_.style.page != nullptr;
    const bool by_it = standsBy(outer, led, far, kind);
    const bool unclear =
        on_page && by_it && (namesAnother(place.box, led, kind.letter) || standsByAnother(outer, led));
    if (by_it && !unclear)
        return true;
    if (unclear && ((led.large && led.area.isEmpty()) || far < ink_.paper(least_led_mm)))
        return false;
    const QPointF end = endOf(led, nearest);
    const QPointF from = nearestIn(outer, end);
    if (on_page && QLineF(from, end).length() < ink_.paper(least_led_mm))
        return false;
    const LabelLeader leader{{from.x(), from.y()}, {end.x(), end.y()}};
    const QRectF along = QRectF(from, end).normalized();
    if (ink_.near(&Ink::Room::texts, along,
                  [&](const LineField::Area& text) { return crosses(leader, boxOf(text.area)); }))
        return false;
    if (on_page && misleads(leader))
        return false;
    place.cost += crossingCost(leader, led);
    const double length_mm =
        (on_page ? QLineF(from, end).length() : std::max(0.0, far - (unclear ? 0 : led.beside))) *
        ink_.style.scale;
    place.cost +=
        led_there + per_led_mm * length_mm + per_long_led_mm * std::max(0.0, length_mm - long_led_mm);
    place.leader = leader;
    return true;
}

/// Is something else that has a name nearer to a text than what it is of?
bool LabelRoom::namesAnother(const LabelBox& box, const Led& led, bool letter) const
{
    const double same = ink_.paper(off_points_mm);
    const double within = ink_.paper(letter ? letter_off_points_within_mm : off_points_within_mm);
    const double own = led.large ? within : distanceTo(box, led.to) + ink_.paper(0.4);
    return std::any_of(named_.points.begin(), named_.points.end(), [&](QPointF point) {
        const QPointF off = point - led.to;
        return std::hypot(off.x(), off.y()) > same && distanceTo(box, point) < std::max(own, same);
    });
}

/// Does a text by an area stand in another one or close by? What its own lies on is not meant.
bool LabelRoom::standsByAnother(const QRectF& outer, const Led& led) const
{
    const auto sizeOf = [](const QPolygonF& area) {
        const QRectF box = area.boundingRect();
        return box.width() * box.height();
    };
    const double by = ink_.paper(by_another_mm);
    const QPolygonF room(outer.adjusted(-by, -by, by, by));
    return !led.area.isEmpty() &&
           std::any_of(named_.areas.begin(), named_.areas.end(), [&](const QPolygonF& area) {
               const bool under =
                   sizeOf(area) > sizeOf(led.area) && area.containsPoint(led.to, Qt::OddEvenFill);
               return area != led.area && !under && area.intersects(room);
           });
}

/// Does a leader cross another that is already there, or run through what else has a name?
bool LabelRoom::misleads(const LabelLeader& leader) const
{
    const double same = ink_.paper(off_points_mm);
    const auto runs_through = [&](const std::vector<QPointF>& points) {
        return std::any_of(points.begin(), points.end(), [&](QPointF point) {
            const QPointF off = point - QPointF(leader.to.x, leader.to.z);
            return std::hypot(off.x(), off.y()) > same && distanceTo(leader, point) < same;
        });
    };
    return std::any_of(
               ink_.leaders_.begin(), ink_.leaders_.end(),
               [&](const QLineF& other) {
                   return crosses(leader, LabelLeader{{other.x1(), other.y1()}, {other.x2(), other.y2()}});
               }) ||
           runs_through(named_.points) || runs_through(ink_.dots_);
}

/// By a leader to another hose's name: it may be of each.
int LabelRoom::hosesCrossed(const LabelLeader& leader, const ResolvedHose& own) const
{
    const QRectF along =
        QRectF(QPointF(leader.from.x, leader.from.z), QPointF(leader.to.x, leader.to.z)).normalized();
    int crossed = 0;
    for (const ResolvedHose& hose : ink_.analysis.layout.hoses) {
        if (&hose == &own || hose->path.line.empty())
            continue;
        const auto& [line, box] = ink_.seenLine(hose);
        if (box.left() > along.right() || box.right() < along.left() || box.top() > along.bottom() ||
            box.bottom() < along.top())
            continue;
        for (qsizetype i = 0; i + 1 < line.size(); ++i)
            if (crosses(leader,
                        LabelLeader{{line[i].x(), line[i].y()}, {line[i + 1].x(), line[i + 1].y()}})) {
                ++crossed;
                break;
            }
    }
    return crossed;
}

double LabelRoom::crossingCost(const LabelLeader& leader, const Led& led) const
{
    const bool on_page = ink_.style.page != nullptr;
    if (!on_page && !any_broad_)
        return 0;
    const QPointF to(leader.to.x, leader.to.z);
    const double near_by = ink_.paper(off_points_mm);
    const QRectF along = QRectF(QPointF(leader.from.x, leader.from.z), to)
                             .normalized()
                             .adjusted(-near_by, -near_by, near_by, near_by);
    // Counted first, so that the sum is the same however they are looked up.
    int hoses = 0;
    int lines = 0;
    int beside = 0;
    int parts = 0;
    ink_.near(&Ink::Room::lines, along, [&](const LineField::Area& line) {
        if (line.broad)
            hoses += crosses(leader, boxOf(line.area)) ? 1 : 0;
        else if (on_page)
            lines += crosses(leader, boxOf(line.area)) ? 1 : 0;
        beside += on_page && runsAlong(leader, line.area, near_by) ? 1 : 0;
        return false;
    });
    if (on_page)
        ink_.near(&Ink::Room::taken, along, [&](const LineField::Area& part) {
            parts += !part.area.contains(to) && crosses(leader, boxOf(part.area)) ? 1 : 0;
            return false;
        });
    double misread = 0;
    if (on_page && led.hose)
        misread += hosesCrossed(leader, *led.hose) * leader_over_other_hose;
    const double x = std::abs(leader.to.x - leader.from.x);
    if (on_page && x > ink_.paper(level_leader_mm) && std::abs(leader.to.z - leader.from.z) < 0.1 * x)
        misread += level_leader;
    return misread + hoses * (on_page ? leader_over_hose_on_page : leader_over_hose) +
           lines * leader_over_line + beside * leader_along_line + parts * leader_over_part;
}

} // namespace siphonwright::drawing
