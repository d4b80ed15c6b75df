#include "app/panels/findings_panel.h"

#include "app/panels/finding_row.h"
#include "app/panels/findings_model.h"
#include "app/panels/limit_dialog.h"

#include <QItemSelectionModel>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QVBoxLayout>

namespace siphonwright::panels {

FindingsPanel::FindingsPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      model_(new FindingsModel(document, this)),
      row_(new FindingRow(this)),
      summary_(new QLabel(this)),
      list_(new QListView(this)),
      change_limit_(new QPushButton(tr("Change this limit…"), this))
{
    summary_->setProperty("role", QStringLiteral("title"));
    summary_->setObjectName(QStringLiteral("findings-summary"));
    summary_->setWordWrap(true);
    list_->setObjectName(QStringLiteral("findings-list"));
    list_->setAccessibleName(tr("Findings"));
    list_->setModel(model_);
    list_->setItemDelegate(row_);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setResizeMode(QListView::Adjust);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    change_limit_->setProperty("role", QStringLiteral("link"));
    change_limit_->setToolTip(tr("Where the heater's or engine's manual gives another figure"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 4, 4);
    column->setSpacing(4);
    column->addWidget(summary_);
    column->addWidget(list_, 1);
    column->addWidget(change_limit_, 0, Qt::AlignLeft);

    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &FindingsPanel::rowChosen);
    connect(list_, &QListView::clicked, this, [this] { rowChosen(); });
    connect(&selection_, &Selection::findingChanged, this, &FindingsPanel::followSelection);
    connect(&document_, &Document::changed, this, &FindingsPanel::refresh);
    connect(&document_, &Document::analysed, this, &FindingsPanel::refresh);
    connect(change_limit_, &QPushButton::clicked, this, &FindingsPanel::changeLimit);
    refresh();
}

void FindingsPanel::setDark(bool dark)
{
    row_->setDark(dark);
    list_->viewport()->update();
}

QString FindingsPanel::summary() const
{
    return model_->summary();
}

void FindingsPanel::refresh()
{
    summary_->setText(model_->summary());
    followSelection();
}

void FindingsPanel::rowChosen()
{
    const QModelIndex row = list_->currentIndex();
    list_->doItemsLayout();
    if (following_ || !row.isValid())
        return;
    const QScopedValueRollback<bool> guard(following_, true);
    const PartRef part = model_->partAt(row);
    const int finding = model_->findingAt(row);
    if (part.kind != PartKind::nothing)
        selection_.select(part);
    selection_.selectFinding(finding);
    change_limit_->setVisible(hasLimits(document_, finding));
    if (finding >= 0)
        Q_EMIT findingChosen(finding);
}

void FindingsPanel::followSelection()
{
    const int finding = selection_.finding();
    change_limit_->setVisible(hasLimits(document_, finding));
    if (following_)
        return;
    const QScopedValueRollback<bool> guard(following_, true);
    if (finding >= 0 && finding < model_->rowCount())
        list_->setCurrentIndex(model_->index(finding));
    else if (model_->findingAt(list_->currentIndex()) >= 0)
        list_->setCurrentIndex({});
    list_->doItemsLayout();
}

void FindingsPanel::changeLimit()
{
    const int finding = selection_.finding();
    if (!hasLimits(document_, finding))
        return;
    auto* dialog = new LimitDialog(
        document_, document_.analysis().findings[static_cast<std::size_t>(finding)].rule, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace siphonwright::panels
