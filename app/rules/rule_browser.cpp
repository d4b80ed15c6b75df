#include "app/rules/rule_browser.h"

#include "app/rules/rule_choices.h"
#include "app/rules/rule_list.h"
#include "app/rules/rule_page.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QTreeView>
#include <QVBoxLayout>

namespace siphonwright::rules {

RuleBrowser::RuleBrowser(Document& document, QWidget* parent)
    : QWidget(parent, Qt::Window),
      document_(document),
      list_(new RuleList(document, this)),
      search_(new RuleSearch(this)),
      sought_(new QLineEdit(this)),
      tree_(new QTreeView(this)),
      right_(new QScrollArea(this))
{
    setWindowTitle(tr("Rules"));
    resize(1060, 700);
    right_->setWidgetResizable(true);
    right_->setFrameShape(QFrame::NoFrame);
    right_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* splitter = new QSplitter(this);
    splitter->addWidget(makeLeft());
    splitter->addWidget(right_);
    splitter->setStretchFactor(1, 1);
    splitter->setChildrenCollapsible(false);
    splitter->setSizes({380, 680});
    auto* row = new QVBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(splitter);
    auto* close_key = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    connect(close_key, &QShortcut::activated, this, &QWidget::close);
    connect(sought_, &QLineEdit::textChanged, this, &RuleBrowser::search);
    connect(sought_, &QLineEdit::returnPressed, tree_, [this] { tree_->setFocus(); });
    connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) {
                turnTo(now.siblingAtColumn(0).data(RuleList::rule_role).toString());
            });
    showRule(words(ruleBook().front().id));
}

QWidget* RuleBrowser::makeLeft()
{
    search_->setSourceModel(list_);
    sought_->setObjectName(QStringLiteral("rule-search"));
    sought_->setPlaceholderText(tr("Search the rules"));
    sought_->setAccessibleName(tr("Search the rules"));
    sought_->setClearButtonEnabled(true);
    tree_->setObjectName(QStringLiteral("rule-list"));
    tree_->setAccessibleName(tr("Rules"));
    tree_->setModel(search_);
    tree_->setHeaderHidden(true);
    tree_->setFrameShape(QFrame::NoFrame);
    tree_->setRootIsDecorated(false);
    tree_->setItemsExpandable(false);
    tree_->setIndentation(10);
    tree_->setUniformRowHeights(true);
    tree_->setAllColumnsShowFocus(true);
    tree_->header()->setStretchLastSection(false);
    tree_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    tree_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    tree_->expandAll();
    auto* left = new QWidget(this);
    left->setMinimumWidth(static_cast<int>(230 * drawing::textScale(font())));
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(8, 8, 4, 4);
    column->addWidget(sought_);
    column->addWidget(tree_, 1);
    return left;
}

void RuleBrowser::search(const QString& words)
{
    search_->searchFor(words);
    tree_->expandAll();
}

void RuleBrowser::showRule(const QString& rule)
{
    const QModelIndex source = list_->indexOf(rule);
    if (!source.isValid())
        return;
    if (!search_->mapFromSource(source).isValid())
        sought_->clear();
    const QModelIndex index = search_->mapFromSource(source);
    tree_->setCurrentIndex(index);
    tree_->scrollTo(index.parent()); // its group first, so that the heading is in sight
    tree_->scrollTo(index);
    turnTo(rule);
}

QString RuleBrowser::currentRule() const
{
    return page_ ? words(page_->rule().id) : QString();
}

void RuleBrowser::turnTo(const QString& rule)
{
    const Rule* known = ruleById(rule.toStdString());
    if (!known || rule == currentRule())
        return;
    page_ = new RulePage(document_, *known, look_);
    right_->setWidget(page_); // which takes the former page away
    right_->setMinimumWidth(page_->minimumSizeHint().width() +
                            right_->verticalScrollBar()->sizeHint().width());
}

void RuleBrowser::setLook(drawing::Look look)
{
    if (look == look_)
        return;
    look_ = look;
    list_->setLook(look);
    const QString rule = currentRule();
    page_ = nullptr;
    turnTo(rule);
}

} // namespace siphonwright::rules
