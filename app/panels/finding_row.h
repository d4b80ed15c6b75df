#pragma once

#include <QStyledItemDelegate>

namespace siphonwright::panels {

/// Draws a finding: a numbered mark whose shape says the severity, the word for it, the sentence, the figures
/// and, on the selected row, why it matters and what to do.
class FindingRow : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void setDark(bool dark) { dark_ = dark; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    QString body(const QStyleOptionViewItem& option, const QModelIndex& index) const;
    void paintMark(QPainter& painter, const QPointF& centre, const QModelIndex& index,
                   const QFont& font) const;

    bool dark_ = false;
};

} // namespace siphonwright::panels
