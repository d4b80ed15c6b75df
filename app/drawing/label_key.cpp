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
constexpr std::size_t most_keyed = 13; // half the letters: the end view has the others
constexpr double row_share = 1.7;      // of the lettering

QString letterOf(std::size_t row, bool is_end)
{
    return QString(QLatin1Char(char((is_end ? 'n' : 'a') + int(row))));
}

/// In words.
QString placeOf(const Led& led, const Style& style)
{
    return led.where.isEmpty() ? tr("%1 over the datum").arg(inWords(-led.to.y(), Unit::mm, style.units))
                               : led.where;
}

} // namespace

void Ink::addToKey(const std::vector<std::size_t>& names, const QRectF& box, int columns)
{
    const std::size_t rows = (names.size() + std::size_t(columns) - 1) / std::size_t(columns);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const QString letter = letterOf(key_.size(), style.view.isEnd());
        const QPointF at(box.left() + double(i / rows) * box.width() / columns,
                         box.top() + paper(style.lettering_mm * (1.3 + row_share * double(i % rows))));
        key_.push_back({names[i], at, letter, waiting_[names[i]].text});
        waiting_[names[i]].text = letter;
    }
}

/// One block, as narrow as it goes in.
bool Ink::placeKey(const std::vector<std::size_t>& names)
{
    double width_mm = 0;
    for (const std::size_t i : names)
        width_mm =
            std::max(width_mm, textWidth(QStringLiteral("m  ") + waiting_[i].text, style.lettering_mm) + 2);
    constexpr int most_columns = 3;
    const LabelRoom room(*this, {});
    for (int columns = 1; columns <= std::min(most_columns, int(names.size())); ++columns) {
        const double rows = std::ceil(double(names.size()) / columns);
        const QRectF box =
            room.freeBox(QSizeF(paper(width_mm * columns), paper(row_share * style.lettering_mm * rows)));
        if (box.isNull())
            continue;
        reserveText(box);
        addToKey(names, box, columns);
        return true;
    }
    return false;
}

bool Ink::moveToKey(const std::vector<LabelSet>& sets, const std::vector<std::optional<std::size_t>>& chosen)
{
    const double most = style.view.isEnd() ? dear_end_place : dear_place;
    std::vector<std::size_t> names;
    for (std::size_t i = 0; i < waiting_.size() && key_.size() + names.size() < most_keyed; ++i) {
        const bool dear = !chosen[i] || sets[i].wish.places[*chosen[i]].cost > most;
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
    return any;
}

/// A line of its own; over thin lines where nothing else is free. \return whether there was room
bool Ink::writeApart(const QString& text)
{
    const LabelRoom room(*this, {});
    constexpr double margin_mm = 0.7; // which the ground of a text takes with it
    const QSizeF size(paper(textWidth(text, style.lettering_mm) + 2 * margin_mm),
                      paper(row_share * style.lettering_mm));
    const QRectF clear = room.freeBox(size);
    const QRectF box = clear.isNull() ? room.boxOverLines(size) : clear;
    if (box.isNull())
        return false;
    reserveText(box);
    const QPointF at = box.topLeft() + QPointF(paper(margin_mm), paper(1.3 * style.lettering_mm));
    write({at, Anchor::left, 0}, text, palette.ink, clear.isNull());
    return true;
}

/// A letter that is nowhere explains nothing: then its row says where the name belongs.
void Ink::writeKey(const std::vector<std::optional<std::size_t>>& chosen)
{
    for (const KeyRow& row : key_)
        if (chosen[row.name])
            paintText(painter, style, row.at, row.letter + QStringLiteral("  ") + row.said, Anchor::left,
                      palette.ink);
    for (std::size_t i = 0; i < waiting_.size() && style.page && !style.view.isEnd(); ++i) {
        const std::optional<Led>& led = waiting_[i].led;
        if (chosen[i] || !led || led->in_place || waiting_[i].text.isEmpty())
            continue;
        const auto row =
            std::find_if(key_.begin(), key_.end(), [i](const KeyRow& one) { return one.name == i; });
        const QString name = row == key_.end() ? waiting_[i].text : row->said;
        const QString height = inWords(-led->to.y(), Unit::mm, style.units);
        if (writeApart(QStringLiteral("%1: %2").arg(name, placeOf(*led, style))) ||
            writeApart(QStringLiteral("%1: %2").arg(name, height)))
            continue;
        if (row != key_.end()) // in its own row: that it is there is better known than not
            paintText(painter, style, row->at, name, Anchor::left, palette.ink);
    }
}

} // namespace siphonwright::drawing
