#pragma once

#include "tests/sheet/ink_recorder.h"

#include <QLineF>
#include <QString>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <vector>

/// Lines that lead from a name or a balloon to what it is of: they end in a dot.
namespace siphonwright::test {

/// \param per_mm  device units
inline std::vector<QLineF> leadersIn(const std::vector<Inked>& inked, double per_mm)
{
    constexpr double largest_dot_mm = 1.1;
    std::vector<QLineF> leaders;
    for (std::size_t i = 0; i + 1 < inked.size(); ++i) {
        const Inked& line = inked[i];
        const Inked& dot = inked[i + 1];
        if (line.what != Inked::What::stroke || dot.what != Inked::What::fill ||
            dot.box.width() > largest_dot_mm * per_mm || dot.area.size() < 8)
            continue;
        const QPointF at = dot.box.center();
        if (QLineF(at, line.line.p1()).length() < 1 || QLineF(at, line.line.p2()).length() < 1)
            leaders.push_back(line.line);
    }
    return leaders;
}

inline QStringList leaderCrossings(const std::vector<QLineF>& leaders, double per_mm)
{
    QStringList found;
    const auto words = [per_mm](const QLineF& line) {
        return QStringLiteral("%1, %2 to %3, %4")
            .arg(line.x1() / per_mm, 0, 'f', 1)
            .arg(line.y1() / per_mm, 0, 'f', 1)
            .arg(line.x2() / per_mm, 0, 'f', 1)
            .arg(line.y2() / per_mm, 0, 'f', 1);
    };
    // Two may lead to one thing: they meet at their ends.
    const double met = 0.05 * per_mm;
    const auto isEnd = [met](const QLineF& line, QPointF at) {
        return QLineF(line.p1(), at).length() < met || QLineF(line.p2(), at).length() < met;
    };
    for (std::size_t i = 0; i < leaders.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            if (QPointF at; leaders[i].intersects(leaders[k], &at) == QLineF::BoundedIntersection &&
                            !isEnd(leaders[i], at) && !isEnd(leaders[k], at))
                found << QStringLiteral("leaders cross: %1 and %2").arg(words(leaders[i]), words(leaders[k]));
    return found;
}

/// A point of the drawing with its name.
struct NamedPoint {
    QString name;
    QPointF at; ///< device units
};

/// Names without a leader that stand nearer to another point than to their own: there they name that one.
inline QStringList misleadingNames(const std::vector<NamedPoint>& points, const std::vector<Inked>& inked,
                                   const std::vector<QLineF>& leaders, double per_mm)
{
    const auto distance = [](const QRectF& box, QPointF at) {
        return std::hypot(std::max({0.0, box.left() - at.x(), at.x() - box.right()}),
                          std::max({0.0, box.top() - at.y(), at.y() - box.bottom()}));
    };
    QStringList found;
    for (const NamedPoint& own : points)
        for (const Inked& text : inked) {
            const bool is_name =
                text.what == Inked::What::text &&
                (text.text == own.name || text.text.startsWith(own.name + QLatin1String(" [")));
            const bool is_led = std::any_of(leaders.begin(), leaders.end(), [&](const QLineF& leader) {
                return std::min(distance(text.box, leader.p1()), distance(text.box, leader.p2())) < per_mm;
            });
            constexpr double beside_mm = 6; // farther off it is another text: in the end view, in a table
            if (!is_name || is_led || distance(text.box, own.at) > beside_mm * per_mm)
                continue;
            for (const NamedPoint& other : points)
                if (QLineF(own.at, other.at).length() > per_mm &&
                    distance(text.box, other.at) < distance(text.box, own.at))
                    found << QStringLiteral("%1 stands by %2").arg(text.text, other.name);
        }
    return found;
}

} // namespace siphonwright::test
