#include "app/drawing/seen.h"

#include "app/drawing/elevation.h"

#include <algorithm>

namespace siphonwright::drawing {

namespace {

/// Lowest and highest of an outline.
struct Heights {
    double low = 0;
    double high = 0;
};

Heights heightsOf(const std::vector<Vec2>& outline)
{
    const auto [low, high] = std::minmax_element(outline.begin(), outline.end(),
                                                 [](const Vec2& a, const Vec2& b) { return a.z < b.z; });
    return {low->z, high->z};
}

/// A depth range across the view, the left end first.
struct Across {
    double left = 0;
    double right = 0;

    double middle() const { return (left + right) / 2; }
    double half() const { return (right - left) / 2; }
};

Across across(const Projection& view, double y_from_mm, double y_to_mm)
{
    const double a = view.flat({0, y_from_mm, 0}).x;
    const double b = view.flat({0, y_to_mm, 0}).x;
    return {std::min(a, b), std::max(a, b)};
}

std::vector<Vec2> box(const Across& wide, const Heights& tall)
{
    return {{wide.left, tall.low}, {wide.right, tall.low}, {wide.right, tall.high}, {wide.left, tall.high}};
}

/// The right half from the bottom up, in shares of half the width, and its mirror image.
std::vector<Vec2> mirrored(const Across& wide, const std::vector<Vec2>& half)
{
    std::vector<Vec2> out;
    for (const Vec2 corner : half)
        out.push_back({wide.middle() + corner.x * wide.half(), corner.z});
    for (auto corner = half.rbegin(); corner != half.rend(); ++corner)
        out.push_back({wide.middle() - corner->x * wide.half(), corner->z});
    return out;
}

bool isVee(Arrangement arrangement)
{
    return arrangement == Arrangement::vee_6 || arrangement == Arrangement::vee_8 ||
           arrangement == Arrangement::vee_12 || arrangement == Arrangement::vee_16;
}

/// Two banks on a narrow crankcase; what stands higher than their decks stands between them.
std::vector<Vec2> veeEnd(const Across& wide, const Heights& engine, const Heights& jacket)
{
    const double tall = jacket.high - jacket.low;
    const double shoulder = std::max(engine.low, jacket.low - 0.75 * tall);
    const double sump = engine.low + 0.4 * (shoulder - engine.low);
    const double valley = jacket.low + 0.45 * tall;
    std::vector<Vec2> half = {{0.34, engine.low},
                              {0.34, sump},
                              {0.5, sump},
                              {0.5, shoulder},
                              {1, jacket.low},
                              {1, jacket.high},
                              {0.52, std::min(engine.high, jacket.high + 0.25 * tall)}};
    if (engine.high > jacket.high + 0.25 * tall) {
        half.push_back({0.34, jacket.low + 0.8 * tall});
        half.push_back({0.3, engine.high});
    } else {
        half.push_back({0.12, valley});
    }
    return mirrored(wide, half);
}

/// Block and head over a narrower sump.
std::vector<Vec2> inlineEnd(const Across& wide, const Heights& engine, const Heights& jacket)
{
    const double skirt = jacket.low - 0.3 * (jacket.low - engine.low);
    const double sump = engine.low + 0.35 * (jacket.low - engine.low);
    return mirrored(wide, {{0.7, engine.low},
                           {0.7, sump},
                           {1, std::max(sump, skirt)},
                           {1, jacket.high},
                           {0.8, std::max(jacket.high, engine.high - 0.1 * (engine.high - jacket.high))},
                           {0.8, engine.high}});
}

} // namespace

std::vector<Vec2> engineSeen(const Engine& engine, const Projection& view)
{
    if (!view.isEnd() || engine.outline.empty())
        return engine.outline;
    const Across wide = across(view, engine.jacket_y_from_mm, engine.jacket_y_to_mm);
    const Heights body = heightsOf(engine.outline);
    const Heights jacket = engine.jacket.empty() ? body : heightsOf(engine.jacket);
    // A jacket that is drawn to stick out leaves no shape to be guessed.
    if (jacket.low < body.low || jacket.high > body.high || engine.arrangement == Arrangement::horizontal)
        return box(wide, body);
    return isVee(engine.arrangement) ? veeEnd(wide, body, jacket) : inlineEnd(wide, body, jacket);
}

std::vector<Vec2> jacketSeen(const Engine& engine, const Projection& view)
{
    if (!view.isEnd() || engine.jacket.empty())
        return engine.jacket;
    return box(across(view, engine.jacket_y_from_mm, engine.jacket_y_to_mm), heightsOf(engine.jacket));
}

std::vector<Vec2> areaSeen(const Area& area, const Projection& view)
{
    if (!view.isEnd())
        return area.outline;
    if (!depthKnown(area) || area.outline.empty())
        return {};
    return box(across(view, *area.y_from_mm, *area.y_to_mm), heightsOf(area.outline));
}

EndSeen endSeen(const Engine& engine, const Projection& view)
{
    const EngineEnd looked_at =
        view.from() == Projection::From::from_right ? EngineEnd::right : EngineEnd::left;
    return engine.front == looked_at ? EndSeen::front : EndSeen::rear;
}

QPolygonF pageOf(const std::vector<Vec2>& outline)
{
    QPolygonF polygon;
    for (const Vec2 corner : outline)
        polygon << toPage(corner);
    return polygon;
}

} // namespace siphonwright::drawing
