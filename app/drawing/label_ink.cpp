#include "app/drawing/between.h"
#include "app/drawing/label_room.h"
#include "app/drawing/text.h"

#include <algorithm>
#include <cmath>

/// Where labels stand: all that wait are placed together.
namespace siphonwright::drawing {

namespace {

// Of a place, beside what it costs itself: the order in which places are wished for counts least.
constexpr double per_choice = 0.02;
constexpr std::size_t most_choices = 300;
/// Whose place costs more looks all over the page for a better one.
constexpr double middling_place = 7;
// Of not being written: air that stays comes before names, names before what is only in the way.
constexpr double without_first = 3e6;
constexpr double without = 1e6;
constexpr double without_grey = 3e5;

struct Label {
    double width = 0;
    const std::optional<Led>& led;
    TextKind kind = {};
};

/// \param most  what a place may cost
void add(LabelSet& set, const LabelRoom& room, const std::vector<Spot>& spots, const Label& label,
         double most = 1e9)
{
    for (std::size_t i = 0; i < spots.size(); ++i) {
        auto place =
            room.placeAt(room.boxFor(spots[i], label.width),
                         per_choice * double(std::min<std::size_t>(i, most_choices)), label.led, label.kind);
        if (!place || place->cost > most)
            continue;
        set.wish.places.push_back(*place);
        set.spots.push_back(spots[i]);
    }
}

// On paper, which is looked at for longer than it takes to draw, several first choices are tried: a few while
// it is found out who needs more places, more in the end.
constexpr std::size_t few_starts = 3;
constexpr std::size_t most_starts = 12;

std::vector<std::optional<std::size_t>> chosenOf(const std::vector<LabelSet>& sets, std::size_t starts)
{
    std::vector<LabelWish> wishes;
    for (const LabelSet& set : sets)
        wishes.push_back(set.wish);
    return placeLabels(wishes, starts);
}

} // namespace

Led ledTo(const Ink& ink, const QPolygonF& outline)
{
    const QRectF box = outline.boundingRect();
    constexpr double beside_mm = 2;
    return {box.center(), std::hypot(box.width(), box.height()) / 2 + ink.paper(beside_mm), true, {}, false,
            outline};
}

Named Ink::named() const
{
    Named named;
    for (const Waiting& one : waiting_) {
        if (!one.led || one.led->in_place || !style.page)
            continue;
        if (one.led->large && !one.led->area.isEmpty())
            named.areas.push_back(one.led->area);
        else
            named.points.push_back(one.led->to);
    }
    return named;
}

void Ink::placeWaiting(std::vector<LabelSet>& sets, std::vector<std::optional<std::size_t>>& chosen) const
{
    const LabelRoom room(*this, named());
    const bool on_page = style.page != nullptr;
    const std::size_t starts = on_page ? few_starts : 1;
    std::vector<Label> labels;
    for (const Waiting& one : waiting_)
        labels.push_back({paper(textWidth(one.text, style.lettering_mm)),
                          one.led,
                          {false, one.text.startsWith(QLatin1Char('[')), false}});
    for (const KeyRow& row : key_)
        labels[row.name].kind.letter = labels[row.name].kind.brief = true;
    sets.clear();
    for (std::size_t i = 0; i < waiting_.size(); ++i) {
        const Waiting& one = waiting_[i];
        sets.emplace_back();
        if (!one.led || !one.led->hidden)
            add(sets.back(), room, one.spots, labels[i]);
        const bool grey = one.colour == palette.keep_clear || one.colour == palette.faint;
        sets.back().wish.left_out = one.first ? without_first : grey ? without_grey : without;
    }
    chosen = chosenOf(sets, starts);
    const auto costOf = [&](std::size_t i) {
        return chosen[i] ? sets[i].wish.places[*chosen[i]].cost : sets[i].wish.left_out;
    };
    bool more = false;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const bool well = chosen[i] && !room.hidesLines(sets[i].wish.places[*chosen[i]].box) &&
                          (!on_page || costOf(i) < middling_place);
        if (well || !waiting_[i].led || waiting_[i].led->in_place || waiting_[i].led->hidden)
            continue;
        add(sets[i], room, room.spotsRound(*waiting_[i].led, labels[i].width), labels[i]);
        more = true;
    }
    if (more)
        chosen = chosenOf(sets, starts);
    // On a page all is named. Who takes a place may leave another without: that one is helped in turn.
    const int rounds = on_page ? 4 : 0;
    std::vector<bool> helped(sets.size());
    for (int round = 0; round < rounds; ++round) {
        more = false;
        for (std::size_t i = 0; i < sets.size(); ++i) {
            if (costOf(i) < middling_place || !waiting_[i].led || waiting_[i].led->in_place ||
                waiting_[i].led->hidden || helped[i])
                continue;
            add(sets[i], room, room.spotsFurther(*waiting_[i].led, labels[i].width), labels[i], costOf(i));
            helped[i] = true;
            more = true;
        }
        if (!more)
            break;
        chosen = chosenOf(sets, starts);
    }
}

PlacedNames Ink::placeLabelsNow()
{
    findSeen();
    std::vector<LabelSet> sets;
    std::vector<std::optional<std::size_t>> chosen;
    placeWaiting(sets, chosen);
    constexpr int keys = 3; // the room that one takes may leave another name without
    for (int i = 0; i < keys && style.page && moveToKey(sets, chosen); ++i)
        placeWaiting(sets, chosen);
    if (style.page)
        chosen = chosenOf(sets, most_starts);
    orderKey(chosen);
    PlacedNames placed;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        if (!chosen[i])
            continue;
        const Spot& spot = sets[i].spots[*chosen[i]];
        placed.names.push_back({spot.at, spot.anchor, spot.angle_deg, waiting_[i].text, waiting_[i].colour});
        const auto& leader = sets[i].wish.places[*chosen[i]].leader;
        if (!leader)
            continue;
        placed.names.back().leader = QLineF(leader->from.x, leader->from.z, leader->to.x, leader->to.z);
        if (style.page)
            reserveLine(QPolygonF({placed.names.back().leader->p1(), placed.names.back().leader->p2()}));
    }
    const LabelRoom room(*this, {});
    std::size_t next = 0;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        if (!chosen[i])
            continue;
        PlacedName& name = placed.names[next++];
        if (name.text.isEmpty())
            continue;
        const LabelBox& box = sets[i].wish.places[*chosen[i]].box;
        name.on_lines = room.hidesLines(box);
        reserveText(around(box));
    }
    sayKey(chosen, placed);
    return placed;
}

void Ink::writeLabels()
{
    if (!style.labels)
        waiting_.clear();
    const PlacedNames* before = style.page ? style.page->names : nullptr;
    placed_ = before ? *before : placeLabelsNow();
    for (const PlacedName& name : placed_.names)
        if (name.leader)
            leadTo(name.leader->p1(), name.leader->p2(), name.colour);
    for (const PlacedName& name : placed_.names)
        if (!name.text.isEmpty())
            write({name.at, name.anchor, name.angle_deg}, name.text, name.colour, name.on_lines);
    for (const PlacedName& row : placed_.key)
        paintText(painter, style, row.at, row.text, row.anchor, row.colour);
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
        const LabelBox box = LabelRoom(*this, {}).boxFor(spot, paper(textWidth(text, style.lettering_mm)));
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
