#include "app/panels/findings_panel.h"

#include "app/panels/finding_row.h"
#include "app/panels/findings_model.h"
#include "app/panels/fix_bar.h"

#include <QItemSelectionModel>
#include <QLabel>
#include <QListView>
#include <QMenu>
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
      fix_(new FixBar(document, this)),
      about_rule_(new QPushButton(tr("About this rule…"), this))
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
    // A large drawing has thousands of findings: rows out of sight are laid out when there is time.
    list_->setLayoutMode(QListView::Batched);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    // Rows are set for one width; a bar that comes and goes would change it.
    list_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setContextMenuPolicy(Qt::CustomContextMenu);
    about_rule_->setObjectName(QStringLiteral("about-rule-link"));
    about_rule_->setProperty("role", QStringLiteral("link"));
    about_rule_->setToolTip(tr("What it rests on, and its limits, which can be changed for this drawing"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 4, 4);
    column->setSpacing(4);
    column->addWidget(summary_);
    column->addWidget(list_, 1);
    column->addWidget(fix_);
    column->addWidget(about_rule_, 0, Qt::AlignLeft);

    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &FindingsPanel::rowChosen);
    connect(list_, &QListView::clicked, this, [this] { rowChosen(); });
    connect(&selection_, &Selection::findingChanged, this, &FindingsPanel::followSelection);
    connect(&document_, &Document::changed, this, &FindingsPanel::refresh);
    connect(&document_, &Document::analysed, this, &FindingsPanel::refresh);
    connect(about_rule_, &QPushButton::clicked, this, [this] { Q_EMIT ruleWanted(ruleOfRow()); });
    connect(list_, &QListView::customContextMenuRequested, this, &FindingsPanel::showMenu);
    refresh();
}

void FindingsPanel::setLook(drawing::Look look)
{
    row_->setLook(look);
    list_->viewport()->update();
}

void FindingsPanel::fix()
{
    fix_->apply();
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
    showRuleLink();
    if (following_ || !row.isValid())
        return;
    const QScopedValueRollback<bool> guard(following_, true);
    const PartRef part = model_->partAt(row);
    const int finding = model_->findingAt(row);
    if (part.kind != PartKind::nothing)
        selection_.select(part);
    selection_.selectFinding(finding);
    if (finding >= 0)
        Q_EMIT findingChosen(finding);
}

void FindingsPanel::followSelection()
{
    const int finding = selection_.finding();
    if (following_)
        return;
    const QScopedValueRollback<bool> guard(following_, true);
    if (finding >= 0 && finding < model_->rowCount())
        list_->setCurrentIndex(model_->index(finding));
    else if (model_->findingAt(list_->currentIndex()) >= 0)
        list_->setCurrentIndex({});
    list_->doItemsLayout();
    showRuleLink();
}

QString FindingsPanel::ruleOfRow() const
{
    return model_->ruleAt(list_->currentIndex());
}

void FindingsPanel::showRuleLink()
{
    about_rule_->setVisible(!ruleOfRow().isEmpty());
    fix_->setFinding(model_->findingAt(list_->currentIndex()));
}

void FindingsPanel::showMenu(const QPoint& at)
{
    if (ruleOfRow().isEmpty())
        return;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    connect(menu->addAction(tr("About this rule…")), &QAction::triggered, this,
            [this] { Q_EMIT ruleWanted(ruleOfRow()); });
    menu->popup(list_->viewport()->mapToGlobal(at));
}

} // namespace siphonwright::panels
