#include "app/drawing/thin_line.h"

#include <cmath>

namespace siphonwright::drawing {
namespace {

double cross(QPointF a, QPointF b)
{
    return a.x() * b.y() - a.y() * b.x();
}

/// std::hypot() is several times as slow, and page and screen are far from where it would matter.
double lengthOf(QPointF way)
{
    return std::sqrt(QPointF::dotProduct(way, way));
}

/// The directions in which a line from a point may go on and still pass all points left out so far.
class Sector {
public:
    explicit Sector(double off) : off_(off) {}

    bool holds(QPointF way) const
    {
        const double far = lengthOf(way);
        return far >= farthest_ - off_ && (!narrowed_ || (cross(right_, way) >= 0 && cross(way, left_) >= 0 &&
                                                          QPointF::dotProduct(way, right_ + left_) > 0));
    }
    void narrow(QPointF way)
    {
        const double far = lengthOf(way);
        farthest_ = std::max(farthest_, far);
        if (far <= off_)
            return;
        const QPointF aside = QPointF(-way.y(), way.x()) * (off_ / far);
        if (!narrowed_ || cross(way + aside, left_) > 0)
            left_ = way + aside;
        if (!narrowed_ || cross(right_, way - aside) > 0)
            right_ = way - aside;
        narrowed_ = true;
    }

private:
    double off_;
    double farthest_ = 0;
    bool narrowed_ = false;
    QPointF left_;
    QPointF right_;
};

} // namespace

QPolygonF thinned(const QPolygonF& line, double off)
{
    if (line.size() < 3 || !(off > 0))
        return line;
    QPolygonF out;
    out << line.front();
    Sector sector(off);
    for (qsizetype i = 1; i < line.size(); ++i) {
        if (!sector.holds(line[i] - out.back())) {
            out << line[i - 1];
            sector = Sector(off);
        }
        sector.narrow(line[i] - out.back());
    }
    out << line.back();
    return out;
}

} // namespace siphonwright::drawing
