#pragma once

#include "app/document/document.h"

#include <QAbstractListModel>

namespace siphonwright::panels {

/// The analysis's faults as rows, then a row per fact that is missing, then a row per fact that verdicts hang
/// on and nobody has confirmed. Texts in the document's units.
class FindingsModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role {
        severity_role = Qt::UserRole,
        number_role,
        figures_role,
        why_role,
        fix_role,
        details_role,
        kind_role
    };
    enum class Kind { fault, missing, unconfirmed };

    explicit FindingsModel(Document& document, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

    /// Index into the analysis's findings, or -1 for a row that tells of a missing fact.
    int findingAt(const QModelIndex& index) const;
    PartRef partAt(const QModelIndex& index) const;
    QString ruleAt(const QModelIndex& index) const; ///< the id of the rule that speaks in a row
    /// "2 stop the job, 1 caution, 3 not judged" or that nothing stops it.
    QString summary() const;

private:
    void reload();
    QVariant findingData(const Finding& finding, int row, int role) const;
    QVariant missingData(const NotJudged& missing, int role) const;
    QVariant unconfirmedData(const Unconfirmed& fact, int role) const;
    QStringList detailsOf(const Finding& finding) const;
    Kind kindOf(int row) const;
    const NotJudged& missingAt(int row) const;
    const Unconfirmed& unconfirmedAt(int row) const;
    QString figures(const Finding& finding) const;

    Document& document_;
    std::vector<Finding> findings_;
    std::vector<NotJudged> not_judged_;
    std::vector<Unconfirmed> unconfirmed_;
    UnitSystem units_ = UnitSystem::metric;
};

} // namespace siphonwright::panels
