#include "app/drawing/between.h"
#include "app/drawing/ink.h"
#include "app/drawing/text.h"

#include "core/layout/place_labels.h"

#include <algorithm>
#include <array>
#include <cmath>

/// Where labels stand: all that wait are placed together.
namespace siphonwright::drawing {

namespace {

// Of a line's box, as multiples of the capitals' height over and under the baseline.
constexpr double over_baseline = 1.15;
constexpr double under_baseline = 0.32;

/// Room kept round a text, mm of the device.
constexpr double beside_mm = 0.5;
constexpr double over_and_under_mm = 0.25;

// What a place costs: own choice. The order in which places are wished for counts least.
constexpr double per_choice = 0.02;
constexpr std::size_t most_choices = 300;
constexpr double over_line = 2;
constexpr double over_hatching = 0.6;
constexpr double over_hose = 40;
constexpr double led_there = 3;
constexpr double per_led_mm = 0.12;
constexpr double leader_over_hose = 0.8;
constexpr double last_resort = 10;
// Of not being written: air that stays comes before names, names before what is only in the way.
constexpr double without_first = 3e6;
constexpr double without = 1e6;
constexpr double without_grey = 3e5;
constexpr double long_led_mm = 15; ///< a longer line is hard to follow
constexpr double per_long_led_mm = 0.3;

/// A label on a leader line stands at one of these distances, mm of the device.
constexpr std::array led_mm = {4.0, 7.0, 10.0, 14.0, 19.0, 25.0, 32.0, 40.0, 50.0};
constexpr int directions = 24;
/// Where there is none, anywhere in steps of so much, on a line so much longer at most.
constexpr double step_mm = 5;
constexpr double longer_mm = 40;

constexpr double radians = 3.14159265358979323846 / 180;

LabelBox boxOf(const QRectF& area)
{
    return {{area.center().x(), area.center().y()}, area.width() / 2, area.height() / 2, 0};
}

QRectF around(const LabelBox& box)
{
    const double c = std::abs(std::cos(box.angle_rad));
    const double s = std::abs(std::sin(box.angle_rad));
    const double w = box.half_along * c + box.half_across * s;
    const double h = box.half_along * s + box.half_across * c;
    return {box.centre.x - w, box.centre.z - h, 2 * w, 2 * h};
}

} // namespace

/// The room that is left for labels, and what a place in it costs.
class LabelRoom {
public:
    explicit LabelRoom(const Ink& ink)
        : ink_(ink),
          any_thin_(ink.room_.lines.hasThin() || (ink.under_ && ink.under_->lines.hasThin())),
          any_broad_(ink.room_.lines.hasBroad() || (ink.under_ && ink.under_->lines.hasBroad()))
    {}

    LabelBox boxFor(const Spot& spot, double width) const
    {
        const double h = ink_.paper(ink_.style.lettering_mm);
        const double along = spot.anchor == Anchor::left     ? width / 2
                             : spot.anchor == Anchor::centre ? 0
                                                             : -width / 2;
        const double down = h * (under_baseline - over_baseline) / 2;
        const double a = spot.angle_deg * radians;
        return {{spot.at.x() + along * std::cos(a) - down * std::sin(a),
                 spot.at.y() + along * std::sin(a) + down * std::cos(a)},
                width / 2 + ink_.paper(beside_mm),
                h * (under_baseline + over_baseline) / 2 + ink_.paper(over_and_under_mm),
                a};
    }

    /// Nothing: it would hide what must be seen or read, or is out of sight.
    std::optional<LabelPlace> placeAt(const LabelBox& box, double cost, const std::optional<Led>& led) const
    {
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
        place.cost +=
            (thin ? over_line : 0) + (broad ? over_hose : 0) + (ink_.onHatching(outer) ? over_hatching : 0);
        if (led && !addLeader(place, *led, outer))
            return std::nullopt;
        return place;
    }

    bool hidesLines(const LabelBox& box) const
    {
        const QRectF outer = around(box);
        return ink_.onHatching(outer) ||
               ink_.near(&Ink::Room::lines, outer, [&](const LineField::Area& line) {
                   return meet(line.area, outer) && overlap(boxOf(line.area), box);
               });
    }

    /// Places round what a label is of, on a leader line.
    std::vector<Spot> spotsRound(const Led& led, double width) const
    {
        const double h = ink_.paper(ink_.style.lettering_mm);
        std::vector<Spot> spots;
        for (const double far : led_mm)
            for (int i = 0; i < directions; ++i) {
                const double a = 2 * 3.14159265358979323846 * i / directions;
                const QPointF way(std::cos(a), std::sin(a));
                const QPointF at = led.to + way * (led.beside + ink_.paper(far));
                const double across = std::abs(way.x()) < 0.3 ? 0 : way.x() > 0 ? width / 2 : -width / 2;
                spots.push_back({at + QPointF(across, h * (1 + way.y()) / 2), Anchor::centre, 0});
            }
        return spots;
    }

    /// Places all over the drawing, the nearest first, for what finds none round itself.
    std::vector<Spot> spotsFurther(const Led& led, double width) const
    {
        const double h = ink_.paper(ink_.style.lettering_mm);
        const double row = h * (over_baseline + under_baseline) + 2 * ink_.paper(over_and_under_mm);
        const double step = ink_.paper(step_mm);
        std::vector<std::pair<double, Spot>> found;
        for (double y = ink_.visible.top() + row; y < ink_.visible.bottom(); y += row)
            for (double x = ink_.visible.left() + width / 2; x + width / 2 < ink_.visible.right();
                 x += step) {
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

private:
    bool addLeader(LabelPlace& place, const Led& led, const QRectF& outer) const
    {
        const QPointF from(std::clamp(led.to.x(), outer.left(), outer.right()),
                           std::clamp(led.to.y(), outer.top(), outer.bottom()));
        const double far = std::hypot(led.to.x() - from.x(), led.to.y() - from.y());
        if (far <= led.beside)
            return true;
        const LabelLeader leader{{from.x(), from.y()}, {led.to.x(), led.to.y()}};
        const QRectF along = QRectF(from, led.to).normalized();
        if (ink_.near(&Ink::Room::texts, along,
                      [&](const LineField::Area& text) { return crosses(leader, boxOf(text.area)); }))
            return false;
        int over = 0;
        if (any_broad_)
            ink_.near(&Ink::Room::lines, along, [&](const LineField::Area& line) {
                over += line.broad && crosses(leader, boxOf(line.area)) ? 1 : 0;
                return false;
            });
        for (; over > 0; --over) // one by one, so that the sum is the same however they are looked up
            place.cost += leader_over_hose;
        const double length_mm = (far - led.beside) * ink_.style.scale;
        place.cost +=
            led_there + per_led_mm * length_mm + per_long_led_mm * std::max(0.0, length_mm - long_led_mm);
        place.leader = leader;
        return true;
    }

    const Ink& ink_;
    bool any_thin_; ///< lines there are at all
    bool any_broad_;
};

struct LabelSet {
    LabelWish wish;
    std::vector<Spot> spots; ///< one per place
};

namespace {

/// \param last for a label that otherwise has no place: its line may cross others' lines
void add(LabelSet& set, const LabelRoom& room, const std::vector<Spot>& spots, double width,
         const std::optional<Led>& led, bool last = false)
{
    for (std::size_t i = 0; i < spots.size(); ++i) {
        auto place = room.placeAt(room.boxFor(spots[i], width),
                                  per_choice * double(std::min<std::size_t>(i, most_choices)), led);
        if (!place)
            continue;
        place->may_cross_leaders = last;
        place->cost += last ? last_resort : 0;
        set.wish.places.push_back(*place);
        set.spots.push_back(spots[i]);
    }
}

/// On paper, which is looked at for longer than it takes to draw, several first choices are tried.
std::vector<std::optional<std::size_t>> chosenOf(const std::vector<LabelSet>& sets, bool on_page)
{
    constexpr std::size_t starts_on_page = 12;
    std::vector<LabelWish> wishes;
    for (const LabelSet& set : sets)
        wishes.push_back(set.wish);
    return placeLabels(wishes, on_page ? starts_on_page : 1);
}

} // namespace

void Ink::placeWaiting(std::vector<LabelSet>& sets, std::vector<std::optional<std::size_t>>& chosen) const
{
    const LabelRoom room(*this);
    const auto widthOf = [this](const Waiting& one) {
        return paper(textWidth(one.text, style.lettering_mm));
    };
    sets.clear();
    for (const Waiting& one : waiting_) {
        add(sets.emplace_back(), room, one.spots, widthOf(one), one.led);
        const bool grey = one.colour == palette.keep_clear || one.colour == palette.faint;
        sets.back().wish.left_out = one.first ? without_first : grey ? without_grey : without;
    }
    chosen = chosenOf(sets, style.page != nullptr);
    bool more = false;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const bool well = chosen[i] && !room.hidesLines(sets[i].wish.places[*chosen[i]].box);
        if (well || !waiting_[i].led)
            continue;
        add(sets[i], room, room.spotsRound(*waiting_[i].led, widthOf(waiting_[i])), widthOf(waiting_[i]),
            waiting_[i].led);
        more = true;
    }
    if (more)
        chosen = chosenOf(sets, style.page != nullptr);
    // On the elevation of a page all is named; an end view beside it names what it has room for. Who takes a
    // place may leave another without: that one is helped in turn.
    const int rounds = style.page && !style.view.isEnd() ? 5 : 0;
    std::vector<bool> helped(sets.size());
    for (int round = 0; round < rounds; ++round) {
        more = false;
        for (std::size_t i = 0; i < sets.size(); ++i) {
            if (chosen[i] || !waiting_[i].led || helped[i])
                continue;
            add(sets[i], room, room.spotsFurther(*waiting_[i].led, widthOf(waiting_[i])),
                widthOf(waiting_[i]), waiting_[i].led, true);
            helped[i] = true;
            more = true;
        }
        if (!more)
            break;
        chosen = chosenOf(sets, true);
    }
}

/// A free box of the drawing, from its lower left corner on; null where there is none.
QRectF Ink::freeBox(const QSizeF& size) const
{
    const double step = paper(step_mm / 2);
    for (double y = visible.bottom() - size.height() - paper(1); y > visible.top(); y -= step)
        for (double x = visible.left() + paper(1); x + size.width() < visible.right(); x += step)
            if (const QRectF box(QPointF(x, y), size); isFree(box, true) && !onHatching(box))
                return box;
    return {};
}

/// Names that have no room stand in a key, with a letter each that stands in their place.
bool Ink::moveToKey(const std::vector<std::optional<std::size_t>>& chosen)
{
    constexpr std::size_t letters = 26;
    constexpr double row_share = 1.7;
    std::vector<std::size_t> moved;
    double width = 0;
    for (std::size_t i = 0; i < waiting_.size(); ++i) {
        const bool in_key =
            std::any_of(key_.begin(), key_.end(), [i](const KeyRow& row) { return row.name == i; });
        if (chosen[i] || !waiting_[i].led || waiting_[i].text.isEmpty() || in_key ||
            key_.size() + moved.size() >= letters)
            continue;
        moved.push_back(i);
        width = std::max(width, textWidth(QStringLiteral("m  ") + waiting_[i].text, style.lettering_mm));
    }
    if (moved.empty())
        return false;
    const QRectF box =
        freeBox(QSizeF(paper(width + 1), paper(row_share * style.lettering_mm * double(moved.size()))));
    if (box.isNull())
        return false;
    reserveText(box);
    double baseline = box.top() + paper(1.3 * style.lettering_mm);
    for (const std::size_t i : moved) {
        const QString letter(QLatin1Char(char('a' + key_.size())));
        key_.push_back({i, QPointF(box.left(), baseline), letter + QStringLiteral("  ") + waiting_[i].text});
        baseline += paper(row_share * style.lettering_mm);
        waiting_[i].text = letter;
    }
    return true;
}

void Ink::writeLabels()
{
    if (!style.labels)
        waiting_.clear();
    std::vector<LabelSet> sets;
    std::vector<std::optional<std::size_t>> chosen;
    placeWaiting(sets, chosen);
    constexpr int keys = 2; // the room that one takes may leave another name without
    for (int i = 0; i < keys && style.page && !style.view.isEnd() && moveToKey(chosen); ++i)
        placeWaiting(sets, chosen);
    for (std::size_t i = 0; i < sets.size(); ++i)
        if (chosen[i] && waiting_[i].led)
            leadTo(*waiting_[i].led, around(sets[i].wish.places[*chosen[i]].box), waiting_[i].colour);
    const LabelRoom room(*this);
    for (std::size_t i = 0; i < sets.size(); ++i) {
        if (!chosen[i] || waiting_[i].text.isEmpty())
            continue;
        const LabelBox& box = sets[i].wish.places[*chosen[i]].box;
        write(sets[i].spots[*chosen[i]], waiting_[i].text, waiting_[i].colour, room.hidesLines(box));
        reserveText(around(box));
    }
    for (const KeyRow& row : key_)
        if (chosen[row.name]) // a letter that is nowhere explains nothing
            paintText(painter, style, row.at, row.text, Anchor::left, palette.ink);
    key_.clear();
    waiting_.clear();
}

/// Where there is no place beside the lines, the text takes the ground with it to stay readable; on the
/// screen one along a hose takes no more than its letters need, since it would hide the hose. Over a
/// photograph it always does.
void Ink::write(const Spot& spot, const QString& text, const QColor& colour, bool hides) const
{
    if (hides && spot.angle_deg != 0 && !style.page)
        paintHalo(painter, style, spot.at, text, spot.anchor, groundAt(spot.at), spot.angle_deg);
    if ((hides || style.photo) && (spot.angle_deg == 0 || style.page)) {
        const LabelBox box = LabelRoom(*this).boxFor(spot, paper(textWidth(text, style.lettering_mm)));
        QColor ground = groundAt({box.centre.x, box.centre.z});
        if (!style.page)
            ground.setAlphaF(0.85F);
        painter.save();
        painter.translate(box.centre.x, box.centre.z);
        painter.rotate(spot.angle_deg);
        painter.fillRect(QRectF(-box.half_along, -box.half_across, 2 * box.half_along, 2 * box.half_across),
                         ground);
        painter.restore();
    }
    paintText(painter, style, spot.at, text, spot.anchor, colour, spot.angle_deg);
}

/// As it is seen there: fills that let what is under them through are laid over each other.
QColor Ink::groundAt(QPointF at) const
{
    QColor seen = palette.ground;
    if (!style.fills || style.photo)
        return seen;
    for (const Room* room : {under_.get(), &room_})
        for (std::size_t i = 0; room && i < room->grounds.size(); ++i)
            if (const Ground& ground = room->grounds[i]; ground.area.containsPoint(at, Qt::OddEvenFill))
                seen = between(seen, ground.colour, ground.colour.alphaF());
    return seen;
}

bool Ink::onHatching(const QRectF& area) const
{
    const auto hatched = [&](const Ground& ground) {
        return ground.hatched && ground.area.boundingRect().intersects(area) &&
               ground.area.intersects(QPolygonF(area));
    };
    const auto any = [&](const Room& room) {
        return std::any_of(room.grounds.begin(), room.grounds.end(), hatched);
    };
    return any(room_) || (under_ && any(*under_));
}

QString Ink::numbered(const QString& name, const PartRef& part) const
{
    QStringList numbers;
    if (style.page)
        for (const auto& [of, number] : style.page->items)
            if (of == part)
                numbers << QString::number(number);
    return numbers.isEmpty()
               ? name
               : QStringLiteral("%1 [%2]").arg(name, numbers.join(QStringLiteral(", "))).trimmed();
}

} // namespace siphonwright::drawing
