#include "app/paper/set_lines.h"

#include <memory>

namespace siphonwright::paper {

namespace {

SetLines setAt(const QStringList& paragraphs, double width_mm, double lettering_mm)
{
    SetLines lines(width_mm);
    for (const QString& one : paragraphs)
        lines.add(one, lettering_mm, Weight::regular);
    return lines;
}

} // namespace

void SetLines::add(const QString& text, double lettering_mm, Weight weight)
{
    addLines(drawing::wrapped(text, width_mm_, lettering_mm, weight), lettering_mm, weight);
}

void SetLines::addEven(const QString& text, double lettering_mm, Weight weight)
{
    addLines(drawing::wrappedEvenly(text, width_mm_, lettering_mm, weight), lettering_mm, weight);
}

void SetLines::addLines(const QStringList& lines, double lettering_mm, Weight weight)
{
    for (const QString& line : lines) {
        lines_.push_back({line, height_mm_ + 1.3 * lettering_mm, lettering_mm, weight});
        height_mm_ += line_share * lettering_mm;
    }
}

void SetLines::paint(QPainter& painter, QPointF corner) const
{
    for (const Line& line : lines_)
        drawing::paintWeightedText(painter, corner + QPointF(0, line.baseline_mm), line.text, Anchor::left,
                                   drawing::Palette::paper().ink, line.lettering_mm, line.weight);
}

Inset insetOfLines(const QString& heading, const QStringList& paragraphs)
{
    Inset inset;
    inset.heading = heading;
    inset.least_width_mm = 50;
    inset.height_mm = [paragraphs](double width, double lettering) {
        return setAt(paragraphs, width, lettering).height_mm();
    };
    inset.paint = [paragraphs](QPainter& painter, const QRectF& box, double lettering) {
        setAt(paragraphs, box.width(), lettering).paint(painter, box.topLeft());
    };
    return inset;
}

} // namespace siphonwright::paper
