#include "app/paper/edit_table.h"

#include <QHeaderView>
#include <QSignalBlocker>
#include <QTextDocument>

namespace siphonwright::paper {

namespace {

constexpr int shown_role = Qt::UserRole + 1; ///< the text that stood there before it was typed over

} // namespace

EditTable::EditTable(const QStringList& headings, Take take, QWidget* parent)
    : QTableWidget(0, static_cast<int>(headings.size()), parent), take_(std::move(take))
{
    setHorizontalHeaderLabels(headings);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
    setTabKeyNavigation(false);
    setStyleSheet(QStringLiteral("QTableView { gridline-color: palette(mid); }")); // on dark ground too
    connect(this, &QTableWidget::itemChanged, this, &EditTable::take);
}

void EditTable::put(int row, int column, const QString& text, Kind kind, Qt::Alignment alignment)
{
    const QSignalBlocker quiet(this);
    QTableWidgetItem* cell = item(row, column);
    if (!cell) {
        cell = new QTableWidgetItem;
        setItem(row, column, cell);
    }
    cell->setText(text);
    cell->setData(shown_role, text);
    cell->setTextAlignment(alignment);
    Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
    if (kind == Kind::typed)
        flags |= Qt::ItemIsEditable;
    cell->setFlags(flags);
    const QString tip = kind == Kind::typed ? tr("%1\nDouble-click or press F2 to type.").arg(text) : text;
    // A text of a file may look like markup, which a tool tip would follow.
    cell->setToolTip(Qt::mightBeRichText(tip) ? Qt::convertFromPlainText(tip) : tip);
    // A line under what can be typed over would be lost on a dark ground, so it is a ground of its own.
    cell->setBackground(kind == Kind::typed ? palette().brush(QPalette::AlternateBase) : QBrush());
}

void EditTable::embolden(int row, int column, bool bold)
{
    const QSignalBlocker quiet(this);
    QFont bolder; // as large as the table's own
    bolder.setBold(bold);
    item(row, column)->setFont(bolder);
}

void EditTable::take(QTableWidgetItem* changed)
{
    if (filling_)
        return;
    filling_ = true;
    const int row = changed->row();
    const int column = changed->column();
    const QString before = changed->data(shown_role).toString();
    const QString typed = changed->text();
    const QString refused = typed == before ? QString() : take_(row, column, typed);
    // Taking it may have filled the table anew; if it was refused, or changed nothing, the old text comes
    // back.
    if (QTableWidgetItem* now = item(row, column); now && now->text() == typed) {
        const QSignalBlocker quiet(this);
        now->setText(now->data(shown_role).toString());
    }
    filling_ = false;
    Q_EMIT problemChanged(refused);
}

} // namespace siphonwright::paper
