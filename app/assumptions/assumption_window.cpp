#include "app/assumptions/assumption_window.h"

#include "app/assumptions/assumption_choices.h"
#include "app/assumptions/assumption_form.h"
#include "app/assumptions/assumption_list.h"

#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QTreeView>
#include <QVBoxLayout>

namespace siphonwright::assumptions {

AssumptionWindow::AssumptionWindow(Document& document, QWidget* parent)
    : QWidget(parent, Qt::Window),
      document_(document),
      list_(new AssumptionList(document, this)),
      search_(new AssumptionSearch(this)),
      sought_(new QLineEdit(this)),
      table_(new QTreeView(this)),
      column_(new QVBoxLayout(this))
{
    setWindowTitle(tr("Assumptions"));
    resize(1200, 680);
    auto* what = new QLabel(tr("Figures that nobody has measured, with what each rests on. Results come with "
                               "a band over these ranges; a figure changed here is held."),
                            this);
    what->setWordWrap(true);
    sought_->setObjectName(QStringLiteral("assumption-search"));
    sought_->setPlaceholderText(tr("Search the assumptions"));
    sought_->setAccessibleName(tr("Search the assumptions"));
    sought_->setClearButtonEnabled(true);
    layTable();
    column_->addWidget(what);
    column_->addWidget(sought_);
    column_->addWidget(table_, 1);
    auto* close_key = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    connect(close_key, &QShortcut::activated, this, &QWidget::close);
    connect(sought_, &QLineEdit::textChanged, search_, &AssumptionSearch::searchFor);
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) { turnTo(search_->mapToSource(now).row()); });
    table_->setCurrentIndex(search_->index(0, 0));
}

void AssumptionWindow::layTable()
{
    search_->setSourceModel(list_);
    table_->setObjectName(QStringLiteral("assumption-list"));
    table_->setAccessibleName(tr("Assumptions"));
    table_->setModel(search_);
    table_->setRootIsDecorated(false);
    table_->setUniformRowHeights(true);
    table_->setAllColumnsShowFocus(true);
    table_->setAlternatingRowColors(true);
    QHeaderView* header = table_->header();
    header->setSectionsMovable(false);
    for (int column = 0; column < AssumptionList::column_count; ++column)
        header->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    header->setSectionResizeMode(AssumptionList::title, QHeaderView::Interactive);
    header->resizeSection(AssumptionList::title, 400);
    header->setSectionResizeMode(AssumptionList::basis, QHeaderView::Stretch);
}

void AssumptionWindow::showAssumption(const QString& id)
{
    const std::span<const Assumption> book = assumptionBook();
    for (std::size_t i = 0; i < book.size(); ++i) {
        if (words(book[i].id) != id)
            continue;
        const QModelIndex source = list_->index(static_cast<int>(i), 0);
        if (!search_->mapFromSource(source).isValid())
            sought_->clear();
        table_->setCurrentIndex(search_->mapFromSource(source));
        table_->scrollTo(table_->currentIndex());
    }
}

void AssumptionWindow::turnTo(int row)
{
    if (row < 0 || static_cast<std::size_t>(row) >= assumptionBook().size())
        return;
    const Assumption& chosen = assumptionBook()[static_cast<std::size_t>(row)];
    if (form_ && &form_->assumption() == &chosen)
        return;
    if (form_) {
        form_->hide();
        form_->deleteLater(); // a key pressed in it may have led here
    }
    form_ = new AssumptionForm(document_, chosen, this);
    column_->addWidget(form_);
    form_->show();
}

} // namespace siphonwright::assumptions
