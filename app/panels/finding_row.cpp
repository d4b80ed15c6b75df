#include "app/panels/finding_row.h"

#include "app/drawing/look.h"
#include "app/panels/findings_model.h"

#include <QAbstractTextDocumentLayout>
#include <QListView>
#include <QPainter>
#include <QTextDocument>

#include <cmath>

namespace siphonwright::panels {

namespace {

constexpr int mark_width = 34;
constexpr int padding = 6;
constexpr double mark_radius = 10;

/// A regular polygon of n corners, the first at an angle in degrees.
QPolygonF polygon(const QPointF& centre, double radius, int n, double first_deg)
{
    QPolygonF shape;
    for (int i = 0; i < n; ++i) {
        const double angle = (first_deg + 360.0 * i / n) * 3.14159265358979323846 / 180;
        shape << centre + QPointF(radius * std::cos(angle), radius * std::sin(angle));
    }
    return shape;
}

int markWidth(const QFont& font)
{
    return static_cast<int>(mark_width * drawing::textScale(font));
}

int textWidth(const QStyleOptionViewItem& option)
{
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int width = view ? view->viewport()->width() : option.rect.width();
    return std::max(80, width - markWidth(option.font) - padding);
}

void prepare(QTextDocument& text, const QStyleOptionViewItem& option, const QString& html)
{
    text.setDefaultFont(option.font);
    text.setDocumentMargin(2);
    text.setHtml(html);
    text.setTextWidth(textWidth(option));
}

} // namespace

QString FindingRow::body(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const auto field = [&index](int role) { return index.data(role).toString().toHtmlEscaped(); };
    const drawing::Palette ink = drawing::paletteOf(look_);
    const QString faint = ink.faint.name();
    const auto kind = static_cast<FindingsModel::Kind>(index.data(FindingsModel::kind_role).toInt());
    if (kind != FindingsModel::Kind::fault)
        return QStringLiteral("<span style='color:%1'><b>%2</b> %3</span>")
            .arg(faint, kind == FindingsModel::Kind::missing ? tr("Not judged.") : tr("Not confirmed."),
                 field(Qt::DisplayRole));
    const int severity = index.data(FindingsModel::severity_role).toInt();
    const QString word = severity == static_cast<int>(Severity::stop)      ? tr("STOP")
                         : severity == static_cast<int>(Severity::caution) ? tr("Caution")
                                                                           : tr("Advice");
    const QColor colour = severity == static_cast<int>(Severity::stop)      ? ink.stop
                          : severity == static_cast<int>(Severity::caution) ? ink.caution
                                                                            : ink.advice;
    QString html = QStringLiteral("<b><span style='color:%1'>%2</span></b> %3")
                       .arg(colour.name(), word, field(Qt::DisplayRole));
    if (const QString figures = field(FindingsModel::figures_role); !figures.isEmpty())
        html += QStringLiteral("<br><b>%1</b>").arg(figures);
    for (const QString& detail : index.data(FindingsModel::details_role).toStringList())
        html += QStringLiteral("<br>– %1").arg(detail.toHtmlEscaped());
    if (const QString why = field(FindingsModel::why_role); !why.isEmpty())
        html += QStringLiteral("<br><span style='color:%1'>%2</span>").arg(faint, why);
    if (const QString fix = field(FindingsModel::fix_role);
        !fix.isEmpty() && option.state.testFlag(QStyle::State_Selected))
        html += QStringLiteral("<br>%1 %2").arg(tr("<b>Fix:</b>"), fix);
    return html;
}

QSize FindingRow::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QStyleOptionViewItem full = option;
    // The view asks for sizes without telling which row is selected.
    if (const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
        view && view->selectionModel() && view->selectionModel()->isSelected(index))
        full.state |= QStyle::State_Selected;
    QTextDocument text;
    prepare(text, full, body(full, index));
    return {textWidth(option), static_cast<int>(std::ceil(text.size().height())) + padding};
}

void FindingRow::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const drawing::Palette ink = drawing::paletteOf(look_);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (option.state.testFlag(QStyle::State_Selected)) {
        QColor wash = ink.accent;
        wash.setAlpha(36);
        painter->fillRect(option.rect, wash);
        painter->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), ink.accent);
    }
    painter->setPen(ink.grid_strong);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    paintMark(*painter,
              QPointF(option.rect.left() + markWidth(option.font) / 2.0,
                      option.rect.top() + padding + mark_radius * drawing::textScale(option.font)),
              index, option.font);
    QTextDocument text;
    prepare(text, option, body(option, index));
    painter->translate(option.rect.left() + markWidth(option.font), option.rect.top() + padding / 2);
    QAbstractTextDocumentLayout::PaintContext context;
    context.palette.setColor(QPalette::Text, ink.text);
    text.documentLayout()->draw(painter, context);
    painter->restore();
}

void FindingRow::paintMark(QPainter& painter, const QPointF& centre, const QModelIndex& index,
                           const QFont& font) const
{
    const drawing::Palette ink = drawing::paletteOf(look_);
    const int severity = index.data(FindingsModel::severity_role).toInt();
    QFont bold = font;
    bold.setBold(true);
    const double scale = drawing::textScale(font);
    const double radius = mark_radius * scale;
    bold.setPixelSize(static_cast<int>(11 * scale));
    painter.setFont(bold);
    const QRectF box(centre.x() - 14 * scale, centre.y() - 9 * scale, 28 * scale, 18 * scale);
    if (severity < 0) {
        painter.setPen(QPen(ink.faint, 1.4, Qt::DashLine));
        painter.drawEllipse(centre, radius, radius);
        const bool missing =
            index.data(FindingsModel::kind_role).toInt() == static_cast<int>(FindingsModel::Kind::missing);
        painter.drawText(box, Qt::AlignCenter, missing ? QStringLiteral("?") : QStringLiteral("~"));
        return;
    }
    painter.setPen(Qt::NoPen);
    if (severity == static_cast<int>(Severity::stop)) {
        painter.setBrush(ink.stop);
        painter.drawPolygon(polygon(centre, radius + 1.5, 8, 22.5));
        painter.setPen(ink.ground);
    } else if (severity == static_cast<int>(Severity::caution)) {
        painter.setPen(QPen(ink.caution, 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.setBrush(ink.ground);
        painter.drawPolygon(polygon(centre + QPointF(0, 2 * scale), radius + 3.5, 3, -90));
        painter.setPen(ink.text);
        painter.drawText(box.translated(0, 3 * scale), Qt::AlignCenter,
                         index.data(FindingsModel::number_role).toString());
        return;
    } else {
        painter.setPen(QPen(ink.advice, 1.4));
        painter.setBrush(ink.ground);
        painter.drawEllipse(centre, radius, radius);
        painter.setPen(ink.text);
    }
    painter.drawText(box, Qt::AlignCenter, index.data(FindingsModel::number_role).toString());
}

} // namespace siphonwright::panels
