#pragma once

#include "app/paper/flow.h"
#include "app/sheet/inset.h"

#include <QPointF>
#include <QString>
#include <QStringList>

#include <vector>

namespace siphonwright::paper {

using sheet::Inset;

/// Paragraphs broken for one width, under each other.
class SetLines {
public:
    explicit SetLines(double width_mm) : width_mm_(width_mm) {}

    void add(const QString& text, double lettering_mm, Weight weight);
    /// With lines of like lengths.
    void addEven(const QString& text, double lettering_mm, Weight weight);
    double height_mm() const { return height_mm_; }
    void paint(QPainter& painter, QPointF corner) const;

private:
    struct Line {
        QString text;
        double baseline_mm = 0;
        double lettering_mm = small_mm;
        Weight weight = Weight::regular;
    };
    void addLines(const QStringList& lines, double lettering_mm, Weight weight);

    double width_mm_;
    double height_mm_ = 0;
    std::vector<Line> lines_;
};

/// Paragraphs as an inset.
Inset insetOfLines(const QString& heading, const QStringList& paragraphs);

} // namespace siphonwright::paper
