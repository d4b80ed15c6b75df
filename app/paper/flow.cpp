#include "app/paper/flow.h"

#include <algorithm>

namespace siphonwright::paper {

namespace {

constexpr double cell_gap_mm = 2;

QColor inkOf(bool faint)
{
    return faint ? drawing::Palette::paper().faint : drawing::Palette::paper().ink;
}

} // namespace

Flow::Flow(QSizeF page_mm) : page_(page_mm), pages_(1) {}

bool Flow::need(double height_mm)
{
    if (y_ + height_mm <= page_.height() - bottom_mm)
        return true;
    pages_.emplace_back();
    y_ = top_mm;
    if (head_)
        head_();
    return false;
}

void Flow::draw(std::function<void(QPainter&)> what)
{
    pages_.back().push_back(std::move(what));
}

void Flow::text(double x, double baseline, const QString& text, Anchor anchor, double size_mm, Weight weight,
                bool faint)
{
    draw([=](QPainter& painter) {
        drawing::paintWeightedText(painter, {x, baseline}, text, anchor, inkOf(faint), size_mm, weight);
    });
}

void Flow::line(double x1, double x2, double y, double width_mm, bool faint)
{
    draw([=](QPainter& painter) {
        painter.setPen(QPen(inkOf(faint), width_mm, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(x1, y), QPointF(x2, y));
    });
}

void Flow::box(const QRectF& area, double width_mm)
{
    draw([=](QPainter& painter) {
        painter.setPen(QPen(inkOf(false), width_mm));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(area);
    });
}

void Flow::paragraph(const QString& text, double size_mm, Weight weight, double indent_mm)
{
    for (const QString& piece : text.split(QLatin1Char('\n'))) {
        const QStringList lines = drawing::wrapped(piece, width() - indent_mm, size_mm, weight);
        if (lines.isEmpty())
            y_ += size_mm * line_share;
        for (const QString& line : lines) {
            need(size_mm * line_share);
            this->text(left() + indent_mm, y_ + size_mm * 1.3, line, Anchor::left, size_mm, weight);
            y_ += size_mm * line_share;
        }
    }
}

void Flow::heading(const QString& text)
{
    constexpr double with_first_lines_mm = 22;
    need(with_first_lines_mm);
    y_ += 4;
    this->text(left(), y_ + heading_mm, text, Anchor::left, heading_mm, Weight::strong);
    y_ += heading_mm + 2.5;
}

void Flow::paint(QPainter& painter, int page) const
{
    for (const auto& what : pages_.at(static_cast<std::size_t>(page)))
        what(painter);
}

FlowTable::FlowTable(Flow& flow, std::vector<Column> columns) : flow_(flow), columns_(std::move(columns))
{
    double taken = 0;
    for (const Column& column : columns_)
        taken += column.width_mm;
    for (Column& column : columns_)
        if (column.width_mm <= 0)
            column.width_mm = flow_.width() - taken;
}

double FlowTable::edge(std::size_t column) const
{
    double x = flow_.left();
    for (std::size_t i = 0; i <= column; ++i)
        x += columns_[i].width_mm;
    return x;
}

void FlowTable::cell(std::size_t column, double top, const QStringList& lines, Weight weight)
{
    const bool right = columns_[column].anchor == Anchor::right;
    const double x =
        right ? edge(column) - cell_gap_mm / 2 : edge(column) - columns_[column].width_mm + cell_gap_mm / 2;
    for (qsizetype i = 0; i < lines.size(); ++i)
        flow_.text(x, top + body_mm * (1.75 + line_share * static_cast<double>(i)), lines[i],
                   columns_[column].anchor, body_mm, weight);
}

void FlowTable::head()
{
    flow_.line(flow_.left(), flow_.right(), flow_.y(), drawing::edge_mm);
    for (std::size_t i = 0; i < columns_.size(); ++i)
        cell(i, flow_.y(), {columns_[i].title}, Weight::strong);
    flow_.down(body_mm * 2.6);
    flow_.line(flow_.left(), flow_.right(), flow_.y(), drawing::edge_mm);
    flow_.down(0.3);
}

void FlowTable::row(const QStringList& cells, Weight weight)
{
    std::vector<QStringList> lines;
    qsizetype most = 1;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const QString text = cells.value(static_cast<qsizetype>(i));
        const double room = columns_[i].width_mm - cell_gap_mm;
        // What fits stays as it is: wrapping would put plain spaces for those between thousands.
        const bool fits = drawing::textWidth(text, body_mm, weight) <= room;
        lines.push_back(fits ? QStringList{text} : drawing::wrapped(text, room, body_mm, weight));
        most = std::max(most, lines.back().size());
    }
    const double height = body_mm * (line_share * static_cast<double>(most) + 1.0);
    if (!flow_.need(height))
        head();
    for (std::size_t i = 0; i < columns_.size(); ++i)
        cell(i, flow_.y(), lines[i], weight);
    flow_.down(height);
    flow_.line(flow_.left(), flow_.right(), flow_.y(), drawing::hairline_mm, true);
}

void FlowTable::group(const QString& title)
{
    constexpr double with_a_row_mm = 14;
    if (!flow_.need(with_a_row_mm))
        head();
    flow_.down(1.2);
    flow_.text(flow_.left() + cell_gap_mm / 2, flow_.y() + body_mm * 1.5, title, Anchor::left, body_mm,
               Weight::strong);
    flow_.down(body_mm * 2.3);
    flow_.line(flow_.left(), flow_.right(), flow_.y(), drawing::hairline_mm, true);
}

} // namespace siphonwright::paper
