#pragma once

#include <QLayout>
#include <QList>

namespace siphonwright::panels {

/// Widgets beside each other as long as there is room, the rest on lines below: what a row of buttons does
/// where words are long or large. On each line they share the width, widgets that want no more than they need
/// excepted.
class WrappedRow : public QLayout {
    Q_OBJECT
public:
    explicit WrappedRow(QWidget* parent = nullptr) : QLayout(parent) {}
    ~WrappedRow() override;

    /// Room that pushes what follows to the right end of its line.
    void addStretch();

    void addItem(QLayoutItem* item) override { items_.append(item); }
    int count() const override { return int(items_.size()); }
    QLayoutItem* itemAt(int index) const override { return items_.value(index); }
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& room) override;

private:
    using Line = QList<QLayoutItem*>;
    QList<Line> lines(int width) const;
    int heightOf(const Line& line) const;
    void layOut(const Line& line, const QRect& room) const;
    int gap() const;

    QList<QLayoutItem*> items_;
};

} // namespace siphonwright::panels
