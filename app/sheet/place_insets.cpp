#include "app/sheet/place_insets.h"

#include "app/drawing/line_table.h"
#include "app/drawing/text.h"

#include <QPainter>

#include <algorithm>
#include <map>
#include <numeric>

namespace siphonwright::sheet {

namespace {

constexpr double margin_mm = 3; // of a column, as in the notes
constexpr double gap_mm = 4;    // between one inset and the next under it
constexpr int most_columns = 5;

double headingHeight(const Inset& inset, double lettering_mm)
{
    return inset.heading.isEmpty() ? 0 : 2.1 * lettering_mm;
}

/// One inset in a column.
struct Tile {
    std::size_t inset = 0;
    double height_mm = 0;
};
using Column = std::vector<Tile>;

double heightOf(const Column& column)
{
    double height = 0;
    for (const Tile& tile : column)
        height += tile.height_mm + (height > 0 ? gap_mm : 0);
    return height;
}

double highest(const std::vector<Column>& columns)
{
    double most = 0;
    for (const Column& column : columns)
        most = std::max(most, heightOf(column));
    return most;
}

/// Each on the column that is lowest so far.
std::vector<Column> stacked(const std::vector<Tile>& tiles, int count)
{
    std::vector<Column> columns(static_cast<std::size_t>(count));
    for (const Tile& tile : tiles)
        std::min_element(columns.begin(), columns.end(), [](const Column& a, const Column& b) {
            return heightOf(a) < heightOf(b) - 1e-9;
        })->push_back(tile);
    return columns;
}

/// In order of need, or the tallest first where that is lower; what is needed more stands further left and
/// higher.
std::vector<Column> arranged(std::vector<Tile> tiles, int count)
{
    std::vector<Column> columns = stacked(tiles, count);
    std::stable_sort(tiles.begin(), tiles.end(),
                     [](const Tile& a, const Tile& b) { return a.height_mm > b.height_mm; });
    if (std::vector<Column> other = stacked(tiles, count); highest(other) < highest(columns) - 1)
        columns = std::move(other);
    const auto earlier = [](const Tile& a, const Tile& b) { return a.inset < b.inset; };
    for (Column& column : columns)
        std::sort(column.begin(), column.end(), earlier);
    std::sort(columns.begin(), columns.end(), [&](const Column& a, const Column& b) {
        return !a.empty() && (b.empty() || earlier(a.front(), b.front()));
    });
    return columns;
}

class Packer {
public:
    Packer(const std::vector<Inset>& insets, double width_mm, int count, double lettering_mm)
        : insets_(insets), step_(width_mm / count), count_(count), lettering_mm_(lettering_mm)
    {}

    Packed pack(const std::vector<std::size_t>& waiting, double most_mm)
    {
        std::vector<Tile> taken;
        std::vector<Column> columns;
        for (std::size_t i = 0; i < waiting.size();) {
            std::vector<Tile> trial = taken;
            bool narrow = false;
            const int group = insets_[waiting[i]].group;
            for (; i < waiting.size() && insets_[waiting[i]].group == group; ++i) {
                const Inset& inset = insets_[waiting[i]];
                narrow = narrow || leastWidth(inset) > width();
                if (!narrow)
                    trial.push_back({waiting[i], heightOfInset(waiting[i])});
            }
            if (narrow)
                continue;
            std::vector<Column> with = arranged(trial, count_);
            if (highest(with) + 2 * margin_mm > most_mm)
                continue;
            taken = std::move(trial);
            columns = std::move(with);
        }
        return laid(columns);
    }

private:
    double leastWidth(const Inset& inset) const
    {
        return inset.least_width_at ? inset.least_width_at(lettering_mm_) : inset.least_width_mm;
    }

    double width() const { return step_ - 2 * margin_mm; }

    double heightOfInset(std::size_t index)
    {
        const auto [found, is_new] = heights_.try_emplace(index, 0);
        if (is_new)
            found->second = headingHeight(insets_[index], lettering_mm_) +
                            insets_[index].height_mm(width(), lettering_mm_);
        return found->second;
    }

    Packed laid(const std::vector<Column>& columns) const
    {
        Packed out;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            double y = margin_mm;
            for (const Tile& tile : columns[i]) {
                const QRectF box(double(i) * step_ + margin_mm, y, width(), tile.height_mm);
                out.placed.push_back({tile.inset, box, lettering_mm_});
                y += tile.height_mm + gap_mm;
            }
        }
        if (!out.placed.empty())
            out.height_mm = highest(columns) + 2 * margin_mm;
        return out;
    }

    const std::vector<Inset>& insets_;
    double step_;
    int count_;
    double lettering_mm_;
    std::map<std::size_t, double> heights_;
};

std::vector<std::size_t> indicesOf(const Packed& packed)
{
    std::vector<std::size_t> indices;
    for (const PlacedInset& one : packed.placed)
        indices.push_back(one.inset);
    std::sort(indices.begin(), indices.end());
    return indices;
}

} // namespace

bool holdsMore(const Packed& a, const Packed& b)
{
    const std::vector<std::size_t> of_a = indicesOf(a);
    const std::vector<std::size_t> of_b = indicesOf(b);
    // The first that one has and the other has not decides.
    for (std::size_t i = 0; i < of_a.size(); ++i)
        if (i >= of_b.size() || of_a[i] != of_b[i])
            return i >= of_b.size() || of_a[i] < of_b[i];
    return false;
}

Packed packed(const std::vector<Inset>& insets, const std::vector<std::size_t>& waiting, double width_mm,
              double most_mm, double lettering_mm, PackWish wish)
{
    constexpr double broadest_mm = 200;
    const bool low = wish == PackWish::low;
    Packed best;
    for (int count = low ? 1 : 1 + static_cast<int>(width_mm / broadest_mm); count <= most_columns; ++count) {
        Packed one = Packer(insets, width_mm, count, lettering_mm).pack(waiting, most_mm);
        if (holdsMore(one, best) || (low && !holdsMore(best, one) && one.height_mm < best.height_mm - 1))
            best = std::move(one);
    }
    return best;
}

std::vector<std::size_t> without(const std::vector<std::size_t>& waiting,
                                 const std::vector<PlacedInset>& placed)
{
    std::vector<std::size_t> left;
    for (const std::size_t index : waiting)
        if (std::none_of(placed.begin(), placed.end(),
                         [index](const PlacedInset& one) { return one.inset == index; }))
            left.push_back(index);
    return left;
}

std::vector<PlacedInset> movedTo(std::vector<PlacedInset> placed, QPointF corner)
{
    for (PlacedInset& one : placed)
        one.box.translate(corner);
    return placed;
}

void paintInset(QPainter& painter, const Inset& inset, const PlacedInset& at)
{
    QRectF box = at.box;
    if (!inset.heading.isEmpty()) {
        drawing::paintWeightedText(painter, {box.left(), box.top() + 1.25 * at.lettering_mm}, inset.heading,
                                   drawing::Anchor::left, drawing::Palette::paper().ink, at.lettering_mm,
                                   drawing::Weight::strong);
        box.setTop(box.top() + headingHeight(inset, at.lettering_mm));
    }
    inset.paint(painter, box, at.lettering_mm);
}

} // namespace siphonwright::sheet
