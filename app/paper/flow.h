#pragma once

#include "app/drawing/line_table.h"
#include "app/drawing/text.h"

#include <QPainter>
#include <QSizeF>
#include <QStringList>

#include <functional>
#include <vector>

/// Text and tables that run from page to page, mm from a page's top left corner. Everything is laid once and
/// can then be painted on any device, page by page.
namespace siphonwright::paper {

using drawing::Anchor;
using drawing::Weight;

/// Heights of capitals, mm.
constexpr double small_mm = drawing::small_text_mm;
constexpr double body_mm = drawing::text_mm;
constexpr double heading_mm = drawing::heading_text_mm;
constexpr double title_mm = drawing::title_text_mm;
constexpr double line_share = 1.7; ///< from line to line, of the capitals' height

class Flow {
public:
    explicit Flow(QSizeF page_mm);

    double left() const { return left_mm; }
    double right() const { return page_.width() - right_mm; }
    double width() const { return right() - left(); }
    double y() const { return y_; } ///< top of what comes next
    void down(double mm) { y_ += mm; }
    /// Go to a new page unless this much still fits. \return whether it did
    bool need(double height_mm);
    /// What stands at the top of every page after the first; it moves down by itself.
    void onNewPage(std::function<void()> head) { head_ = std::move(head); }

    void text(double x, double baseline, const QString& text, Anchor anchor, double size_mm,
              Weight weight = Weight::regular, bool faint = false);
    void line(double x1, double x2, double y, double width_mm, bool faint = false);
    void box(const QRectF& area, double width_mm);
    void draw(std::function<void(QPainter&)> what);
    /// Wrapped lines from here down; blank lines and line breaks are kept.
    void paragraph(const QString& text, double size_mm = body_mm, Weight weight = Weight::regular,
                   double indent_mm = 0);
    void heading(const QString& text);

    int count() const { return static_cast<int>(pages_.size()); }
    void paint(QPainter& painter, int page) const;
    QSizeF pageSize() const { return page_; }

    static constexpr double left_mm = 20; ///< room to file it
    static constexpr double right_mm = 12;
    static constexpr double top_mm = 14;
    static constexpr double bottom_mm = 20;

private:
    QSizeF page_;
    double y_ = top_mm;
    std::function<void()> head_;
    std::vector<std::vector<std::function<void(QPainter&)>>> pages_;
};

/// A table whose head is repeated on every page.
class FlowTable {
public:
    struct Column {
        QString title;
        double width_mm = 0; ///< 0: what is left, for one column
        Anchor anchor = Anchor::left;
    };
    FlowTable(Flow& flow, std::vector<Column> columns);

    void head();
    void row(const QStringList& cells, Weight weight = Weight::regular);
    /// A line across, with what follows belonging to it.
    void group(const QString& title);
    /// Where a column ends, for sums under it.
    double edge(std::size_t column) const;

private:
    void cell(std::size_t column, double top, const QStringList& lines, Weight weight);

    Flow& flow_;
    std::vector<Column> columns_;
};

} // namespace siphonwright::paper
