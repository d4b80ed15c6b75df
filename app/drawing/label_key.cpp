#include "app/drawing/label_room.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <algorithm>
#include <cmath>

/// What is said of names that have no good place on the drawing: a letter with a key, or where they are in
/// words. No name is lost.
namespace siphonwright::drawing {

namespace {

/// A name that stands at a place that costs more is better said by a letter.
constexpr double dear_place = 12;
/// In the end view, where all has been named before, a key of many rows helps less.
constexpr double dear_end_place = 20;
/// In the view; and beside it, where there is room for it.
constexpr std::size_t most_keyed = 11;
constexpr std::size_t most_keyed_beside = 33;
/// A text as short as this is no longer than its letter.
constexpr qsizetype short_text = 4;

/// a to z, or to m beside an end view, which has the others; then aa, ab ... Without those that look like
/// figures.
QString letterOf(std::size_t row, const Style& style)
{
    const QLatin1String letters = style.view.isEnd()       ? QLatin1String("npqrstuvwxyz")
                                  : style.page->end_beside ? QLatin1String("abcdefghjkm")
                                                           : QLatin1String("abcdefghjkmnpqrstuvwxyz");
    const auto count = std::size_t(letters.size());
    const QString letter(letters[qsizetype(row % count)]);
    return row < count ? letter : letters[qsizetype(row / count) - 1] + letter;
}

/// In words.
QString placeOf(const Led& led, const Style& style)
{
    return led.where.isEmpty() ? tr("%1 over the datum").arg(inWords(-led.to.y(), Unit::mm, style.units))
                               : led.where;
}

QString rowThere(const QString& name, const Led& led, const Style& style)
{
    return QStringLiteral("%1: %2").arg(name, placeOf(led, style));
}

QString rowOf(const QString& letter, const QString& name)
{
    return letter + QStringLiteral("  ") + name;
}

/// As much of a text as has room.
QString cutTo(double width_mm, QString text, double lettering_mm)
{
    const QChar ellipsis(0x2026);
    if (textWidth(text, lettering_mm) <= width_mm)
        return text;
    while (!text.isEmpty() && textWidth(text + ellipsis, lettering_mm) > width_mm)
        text.chop(1);
    return text + ellipsis;
}

} // namespace

std::size_t Ink::placesInKey() const
{
    const KeyRoom& key = style.page->key;
    const double columns = std::floor(key.box.width() / paper(key.column_mm) + 1e-6);
    const double rows = std::floor(key.box.height() / paper(key_row * style.lettering_mm) + 1e-6);
    return std::size_t(std::max(1.0, columns) * rows);
}

/// Its baseline's start.
QPointF Ink::placeInKey(std::size_t row) const
{
    const KeyRoom& key = style.page->key;
    const double height = paper(key_row * style.lettering_mm);
    const auto rows = std::size_t(key.box.height() / height + 1e-6);
    return key.box.topLeft() + QPointF(double(row / rows) * paper(key.column_mm),
                                       double(row % rows) * height + paper(1.3 * style.lettering_mm));
}

void Ink::addToKey(const std::vector<std::size_t>& names, const QRectF& box, int columns)
{
    const std::size_t rows = (names.size() + std::size_t(columns) - 1) / std::size_t(columns);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const QString letter = letterOf(key_.size(), style);
        const QPointF at(box.left() + double(i / rows) * box.width() / columns,
                         box.top() + paper(style.lettering_mm * (1.3 + key_row * double(i % rows))));
        const bool beside = !style.page->key.box.isNull();
        key_.push_back(
            {names[i], beside ? placeInKey(key_.size()) : at, letter, waiting_[names[i]].text, key_blocks_});
        waiting_[names[i]].text = letter;
        for (Spot& spot : waiting_[names[i]].spots) // a letter that is turned reads as another
            spot.angle_deg = 0;
    }
}

/// One block, as narrow as it goes in; or in the room beside the view.
bool Ink::placeKey(const std::vector<std::size_t>& names)
{
    if (!style.page->key.box.isNull()) {
        if (key_.size() + names.size() > placesInKey())
            return false;
        addToKey(names, {}, 1);
        return true;
    }
    if (key_blocks_ > 0) // rows here and there read as names of what is there
        return false;
    double width_mm = 0;
    for (const std::size_t i : names) {
        const Waiting& one = waiting_[i];
        const QString said = one.led && one.led->hidden ? rowThere(one.text, *one.led, style) : one.text;
        width_mm = std::max(width_mm, textWidth(rowOf(QStringLiteral("m"), said), style.lettering_mm) + 2);
    }
    constexpr int most_columns = 3;
    const LabelRoom room(*this, {});
    for (int columns = 1; columns <= std::min(most_columns, int(names.size())); ++columns) {
        const double rows = std::ceil(double(names.size()) / columns);
        const QRectF box =
            room.freeBox(QSizeF(paper(width_mm * columns), paper(key_row * style.lettering_mm * rows)));
        if (box.isNull())
            continue;
        reserveText(box);
        addToKey(names, box, columns);
        ++key_blocks_;
        return true;
    }
    return false;
}

bool Ink::moveToKey(const std::vector<LabelSet>& sets, const std::vector<std::optional<std::size_t>>& chosen)
{
    const double dear_from = style.view.isEnd() ? dear_end_place : dear_place;
    const std::size_t most = style.page->key.box.isNull() ? most_keyed : most_keyed_beside;
    std::vector<std::size_t> names;
    for (std::size_t i = 0; i < waiting_.size() && key_.size() + names.size() < most; ++i) {
        const bool dear = !chosen[i] || (sets[i].wish.places[*chosen[i]].cost > dear_from &&
                                         waiting_[i].text.size() > short_text);
        const bool in_key =
            std::any_of(key_.begin(), key_.end(), [i](const KeyRow& row) { return row.name == i; });
        const std::optional<Led>& led = waiting_[i].led;
        if (dear && !in_key && led && !led->in_place && !waiting_[i].text.isEmpty())
            names.push_back(i);
    }
    // Who has no place at all before who has a poor one.
    std::stable_partition(names.begin(), names.end(), [&](std::size_t i) { return !chosen[i]; });
    bool any = false;
    for (std::size_t count = names.size(); count > 0 && !names.empty();) {
        const auto end = names.begin() + std::ptrdiff_t(std::min(count, names.size()));
        if (placeKey({names.begin(), end})) {
            names.erase(names.begin(), end);
            any = true;
        } else {
            count /= 2; // in a smaller block
        }
    }
    left_dear_ = names.size();
    return any;
}

/// A line of its own; over thin lines where nothing else is free; nothing where there is no room.
std::optional<PlacedName> Ink::apart(const QString& text)
{
    const LabelRoom room(*this, {});
    constexpr double margin_mm = 0.7; // which the ground of a text takes with it
    const QSizeF size(paper(textWidth(text, style.lettering_mm) + 2 * margin_mm),
                      paper(key_row * style.lettering_mm));
    const QRectF clear = room.freeBox(size);
    const QRectF box = clear.isNull() ? room.boxOverLines(size) : clear;
    if (box.isNull())
        return std::nullopt;
    reserveText(box);
    const QPointF at = box.topLeft() + QPointF(paper(margin_mm), paper(1.3 * style.lettering_mm));
    return PlacedName{at, Anchor::left, 0, text, palette.ink, clear.isNull(), std::nullopt};
}

/// Letters in order and without gaps; in each block those whose letter has no place come last.
void Ink::orderKey(const std::vector<std::optional<std::size_t>>& chosen)
{
    const auto has_place = [&](const KeyRow& row) { return chosen[row.name].has_value(); };
    std::size_t letters = 0;
    for (auto begin = key_.begin(); begin != key_.end();) {
        const auto end =
            std::find_if(begin, key_.end(), [&](const KeyRow& row) { return row.block != begin->block; });
        std::vector<QPointF> places;
        for (auto row = begin; row != end; ++row)
            places.push_back(row->at);
        std::stable_partition(begin, end, has_place);
        for (const QPointF place : places) {
            begin->at = place;
            if (has_place(*begin))
                waiting_[begin->name].text = begin->letter = letterOf(letters++, style);
            ++begin;
        }
    }
}

/// A letter that is nowhere explains nothing: then its row says where the name belongs.
void Ink::sayKey(const std::vector<std::optional<std::size_t>>& chosen, PlacedNames& placed)
{
    if (!style.page)
        return;
    const bool beside = !style.page->key.box.isNull();
    constexpr double apart_mm = 2;
    const double room_mm = style.page->key.column_mm - apart_mm;
    const auto widen = [&](const QString& text) {
        placed.row_mm = std::max(placed.row_mm, textWidth(text, style.lettering_mm));
    };
    const auto say = [&](QPointF at, const QString& text) {
        placed.key.push_back(
            {at, Anchor::left, 0, beside ? cutTo(room_mm, text, style.lettering_mm) : text, palette.ink});
    };
    for (const KeyRow& row : key_)
        widen(rowOf(row.letter, row.said));
    for (const Waiting& one : waiting_) // whoever may come into it when it has room
        if (one.led && !one.led->in_place)
            widen(rowOf(QStringLiteral("m"), one.text));
    for (const KeyRow& row : key_)
        if (chosen[row.name])
            say(row.at, rowOf(row.letter, row.said));
    std::size_t rows = key_.size(); // of the key beside the view
    std::size_t unsaid = 0;
    for (std::size_t i = 0; i < waiting_.size(); ++i) {
        const std::optional<Led>& led = waiting_[i].led;
        if (chosen[i] || !led || led->in_place || waiting_[i].text.isEmpty())
            continue;
        const auto row =
            std::find_if(key_.begin(), key_.end(), [i](const KeyRow& one) { return one.name == i; });
        const QString name = row == key_.end() ? waiting_[i].text : row->said;
        const QString there = rowThere(name, *led, style);
        const QString high = QStringLiteral("%1: %2").arg(name, inWords(-led->to.y(), Unit::mm, style.units));
        widen(there);
        if (beside && (row != key_.end() || rows < placesInKey())) {
            const QPointF at = row != key_.end() ? row->at : placeInKey(rows++);
            const bool goes_in = textWidth(there, style.lettering_mm) <= room_mm;
            say(at, goes_in ? there : high);
            continue;
        }
        if (led->hidden && row != key_.end()) {
            say(row->at, there);
            continue;
        }
        if (style.view.isEnd()) // the elevation has said it
            continue;
        ++unsaid;
        std::optional<PlacedName> said = apart(there);
        if (!said)
            said = apart(high);
        if (said)
            placed.names.push_back(*said);
        else if (row != key_.end()) // in its own row: that it is there is better known than not
            say(row->at, name);
    }
    const std::size_t dear = beside ? 0 : left_dear_;
    placed.rows_wanted = unsaid + dear > 0 ? rows + std::max(unsaid, dear) : 0;
    placed.unsaid = unsaid;
}

} // namespace siphonwright::drawing
