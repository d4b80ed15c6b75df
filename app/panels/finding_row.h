#pragma once

#include "app/drawing/look.h"

#include <QStyledItemDelegate>

namespace siphonwright::panels {

/// Draws a finding: a numbered mark whose shape says the severity, the word for it, the sentence, the figures
/// and, on the selected row, why it matters and what to do.
class FindingRow : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void setLook(drawing::Look look) { look_ = look; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    QString body(const QStyleOptionViewItem& option, const QModelIndex& index) const;
    void paintMark(QPainter& painter, const QPointF& centre, const QModelIndex& index,
                   const QFont& font) const;

    drawing::Look look_ = drawing::Look::light;
};

} // namespace siphonwright::panels
