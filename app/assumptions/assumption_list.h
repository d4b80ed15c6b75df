#pragma once

#include "app/document/document.h"

#include <QSortFilterProxyModel>
#include <QStandardItemModel>

namespace siphonwright::assumptions {

/// The book of assumptions as rows: what it is, the value in force, whether changed, range, what it drives
/// here, on what basis.
class AssumptionList : public QStandardItemModel {
    Q_OBJECT
public:
    enum Column { title, in_force, changed, range, drives, basis, column_count };
    static constexpr int search_role = Qt::UserRole + 1;

    explicit AssumptionList(Document& document, QObject* parent = nullptr);

private:
    void refresh();
    QString drivenText(std::size_t row) const;

    Document& document_;
};

/// Rows that have every word sought for.
class AssumptionSearch : public QSortFilterProxyModel {
    Q_OBJECT
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;
    void searchFor(const QString& words);

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    QStringList words_;
};

} // namespace siphonwright::assumptions
