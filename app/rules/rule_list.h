#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QSortFilterProxyModel>
#include <QStandardItemModel>

namespace siphonwright::rules {

/// All rules in their groups, in the rule book's order: title with a mark of the worst that each found in
/// this drawing, and beside it whether it is changed or switched off here.
class RuleList : public QStandardItemModel {
    Q_OBJECT
public:
    enum Role { rule_role = Qt::UserRole, search_role };

    explicit RuleList(Document& document, QObject* parent = nullptr);

    void setLook(drawing::Look look);
    /// The row of a rule, first column; not valid for an unknown one.
    QModelIndex indexOf(const QString& rule) const;

private:
    void refresh();
    QString stateOf(const Rule& rule) const;
    QString foundBy(const Rule& rule) const;
    QIcon markOf(const Rule& rule) const;

    Document& document_;
    std::vector<std::pair<const Rule*, QStandardItem*>> rows_;
    drawing::Look look_ = drawing::Look::light;
};

/// The rules that have every typed word in their title, id, why or fix.
class RuleSearch : public QSortFilterProxyModel {
    Q_OBJECT
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

    void searchFor(const QString& words);

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    QStringList words_;
};

} // namespace siphonwright::rules
