#include "app/sizing/figure_table.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollBar>
#include <QVBoxLayout>

namespace siphonwright::sizing {

FigureTable::FigureTable(Selection& selection, const QString& name, const QString& object_name,
                         QWidget* parent)
    : QTableWidget(parent), selection_(selection)
{
    setObjectName(object_name);
    setAccessibleName(name);
    verticalHeader()->hide();
    constexpr int row_px = 22;
    verticalHeader()->setMinimumSectionSize(row_px);
    verticalHeader()->setDefaultSectionSize(row_px);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setHighlightSections(false);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setWordWrap(true);
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(this, &QTableWidget::cellClicked, this, [this](int row, int column) {
        if (column == 0)
            choose(row);
    });
    connect(this, &QTableWidget::cellActivated, this, [this](int row, int) { choose(row); });
}

void FigureTable::choose(int row)
{
    const auto index = static_cast<std::size_t>(row);
    if (row >= 0 && index < parts_.size() && parts_[index].kind != PartKind::nothing)
        selection_.select(parts_[index]);
}

void FigureTable::show(const Figures& figures)
{
    setColumnCount(static_cast<int>(figures.columns.size()));
    setHorizontalHeaderLabels(figures.columns);
    for (int column = 0; column < columnCount(); ++column)
        horizontalHeaderItem(column)->setToolTip(figures.columns.value(column));
    setRowCount(static_cast<int>(figures.rows.size()));
    parts_.clear();
    for (int row = 0; row < rowCount(); ++row) {
        const Figure& figure = figures.rows[static_cast<std::size_t>(row)];
        parts_.push_back(figure.part);
        const bool linked = figure.part.kind != PartKind::nothing;
        for (int column = 0; column < columnCount(); ++column) {
            const QString text = column == 0 ? figure.label : figure.values.value(column - 1);
            auto* cell = new QTableWidgetItem(text);
            QFont own; // as large as the table's own
            own.setBold(figure.wrong || text.startsWith(QStringLiteral("▲")));
            if (column == 0 && linked) {
                own.setUnderline(true);
            }
            cell->setFont(own);
            cell->setToolTip(linked && column == 0 ? tr("Click to see on the drawing where it comes from")
                                                   : figure.tip);
            cell->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
            setItem(row, column, cell);
        }
    }
    inkLinks();
    fitColumns();
    setVisible(!figures.rows.empty());
}

/// Light and dark have links of their own.
void FigureTable::inkLinks()
{
    for (int row = 0; row < rowCount(); ++row)
        if (parts_[static_cast<std::size_t>(row)].kind != PartKind::nothing)
            item(row, 0)->setForeground(palette().link());
}

void FigureTable::changeEvent(QEvent* event)
{
    QTableWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        inkLinks();
}

/// As wide as their texts where there is room. Else two or three columns share what there is, and wrap; more
/// scroll sideways.
void FigureTable::fitColumns()
{
    horizontalHeader()->setStretchLastSection(false);
    resizeColumnsToContents();
    const int last = columnCount() - 1;
    int before_last = 0;
    for (int column = 0; column < last; ++column)
        before_last += columnWidth(column);
    const int room = viewport()->width();
    constexpr int most_that_wrap = 3;
    const bool wraps = columnCount() <= most_that_wrap;
    const int share = room * 6 / 10;
    if (wraps && before_last > share)
        for (int column = 0; column < last; ++column)
            setColumnWidth(column, columnWidth(column) * share / before_last);
    const int left = room - (wraps ? std::min(before_last, share) : before_last);
    if (last >= 0 && (wraps || left > columnWidth(last)))
        setColumnWidth(last, std::max(left, 1));
    const bool scrolls = !wraps && horizontalHeader()->length() > room;
    setHorizontalScrollBarPolicy(scrolls ? Qt::ScrollBarAlwaysOn : Qt::ScrollBarAlwaysOff);
    resizeRowsToContents();
    setFixedHeight(sizeHint().height());
}

QSize FigureTable::sizeHint() const
{
    int height = horizontalHeader()->sizeHint().height();
    if (horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOn)
        height += horizontalScrollBar()->sizeHint().height();
    for (int row = 0; row < rowCount(); ++row)
        height += rowHeight(row);
    return {400, height + 2};
}

QSize FigureTable::minimumSizeHint() const
{
    return {200, sizeHint().height()};
}

void FigureTable::resizeEvent(QResizeEvent* event)
{
    QTableWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        fitColumns();
}

FigureBlock::FigureBlock(Selection& selection, const QString& name, const QString& object_name,
                         QWidget* parent)
    : QWidget(parent),
      table_(new FigureTable(selection, name, object_name, this)),
      warnings_(new QLabel(this)),
      notes_(new QLabel(this))
{
    warnings_->setObjectName(object_name + QStringLiteral("-warnings"));
    notes_->setObjectName(object_name + QStringLiteral("-notes"));
    notes_->setProperty("role", QStringLiteral("faint"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 6);
    column->setSpacing(2);
    for (QLabel* label : {warnings_, notes_}) {
        label->setWordWrap(true);
        label->setContentsMargins(4, 0, 4, 0);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    column->addWidget(warnings_);
    column->addWidget(table_);
    column->addWidget(notes_);
}

void FigureBlock::show(const Figures& figures)
{
    table_->show(figures);
    warnings_->setText(figures.warnings.join(QLatin1Char('\n')));
    warnings_->setVisible(!figures.warnings.isEmpty());
    notes_->setText(figures.notes.join(QLatin1Char(' ')));
    notes_->setVisible(!figures.notes.isEmpty());
}

} // namespace siphonwright::sizing
