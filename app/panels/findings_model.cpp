#include "app/panels/findings_model.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"

#include "core/analysis/margin_text.h"

namespace siphonwright::panels {

namespace {

QString words(std::string_view text)
{
    return inWords(text);
}

QString titleOf(const std::string& rule)
{
    const Rule* known = ruleById(rule);
    return known ? words(known->title) : QString::fromStdString(rule);
}

} // namespace

FindingsModel::FindingsModel(Document& document, QObject* parent)
    : QAbstractListModel(parent), document_(document)
{
    connect(&document_, &Document::changed, this, &FindingsModel::reload);
    connect(&document_, &Document::analysed, this, &FindingsModel::reload);
    reload();
}

void FindingsModel::reload()
{
    const Analysis& analysis = document_.analysis();
    const UnitSystem units = unitsOf(document_.sketch());
    if (analysis.findings == findings_ && analysis.not_judged == not_judged_ &&
        analysis.unconfirmed == unconfirmed_ && units == units_)
        return;
    // During a drag mostly numbers change: the rows stay, so that selection and scrolling do too.
    const bool same_rows = analysis.findings.size() == findings_.size() &&
                           analysis.not_judged.size() == not_judged_.size() &&
                           analysis.unconfirmed.size() == unconfirmed_.size();
    if (!same_rows)
        beginResetModel();
    findings_ = analysis.findings;
    not_judged_ = analysis.not_judged;
    unconfirmed_ = analysis.unconfirmed;
    units_ = units;
    if (!same_rows)
        endResetModel();
    else if (rowCount() > 0)
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

int FindingsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0
                            : static_cast<int>(findings_.size() + not_judged_.size() + unconfirmed_.size());
}

FindingsModel::Kind FindingsModel::kindOf(int row) const
{
    const auto at = static_cast<std::size_t>(row);
    if (at < findings_.size())
        return Kind::fault;
    return at < findings_.size() + not_judged_.size() ? Kind::missing : Kind::unconfirmed;
}

const NotJudged& FindingsModel::missingAt(int row) const
{
    return not_judged_[static_cast<std::size_t>(row) - findings_.size()];
}

const Unconfirmed& FindingsModel::unconfirmedAt(int row) const
{
    return unconfirmed_[static_cast<std::size_t>(row) - findings_.size() - not_judged_.size()];
}

int FindingsModel::findingAt(const QModelIndex& index) const
{
    return index.isValid() && index.row() < static_cast<int>(findings_.size()) ? index.row() : -1;
}

PartRef FindingsModel::partAt(const QModelIndex& index) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    switch (kindOf(index.row())) {
    case Kind::fault:
        return findings_[static_cast<std::size_t>(index.row())].part;
    case Kind::missing:
        return missingAt(index.row()).part;
    case Kind::unconfirmed:
        break;
    }
    return unconfirmedAt(index.row()).part;
}

QString FindingsModel::ruleAt(const QModelIndex& index) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    return QString::fromStdString(row < findings_.size() ? findings_[row].rule
                                                         : not_judged_[row - findings_.size()].rule);
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const Kind kind = kindOf(index.row());
    if (role == kind_role)
        return static_cast<int>(kind);
    switch (kind) {
    case Kind::fault:
        return findingData(findings_[static_cast<std::size_t>(index.row())], index.row(), role);
    case Kind::missing:
        return missingData(missingAt(index.row()), role);
    case Kind::unconfirmed:
        break;
    }
    return unconfirmedData(unconfirmedAt(index.row()), role);
}

QVariant FindingsModel::findingData(const Finding& finding, int row, int role) const
{
    const Rule* rule = ruleById(finding.rule);
    switch (role) {
    case Qt::DisplayRole:
        return inWords(finding.text, units_);
    case severity_role:
        return static_cast<int>(finding.severity);
    case number_role:
        return row + 1;
    case figures_role:
        return figures(finding);
    case why_role:
        return rule ? words(rule->why) : QString();
    case fix_role:
        return inWords(finding.fix, units_);
    case details_role:
        return detailsOf(finding);
    case Qt::ToolTipRole:
        return rule ? tr("%1. Basis: %2").arg(words(rule->title), words(rule->basis)) : QString();
    case Qt::AccessibleTextRole:
        return tr("%1, %2: %3 %4")
            .arg(row + 1)
            .arg(words(nameOf(finding.severity)), inWords(finding.text, units_), figures(finding));
    default:
        return {};
    }
}

QVariant FindingsModel::missingData(const NotJudged& missing, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return tr("%1: %2").arg(titleOf(missing.rule), inWords(missing.missing));
    case severity_role:
        return -1;
    default:
        return {};
    }
}

QVariant FindingsModel::unconfirmedData(const Unconfirmed& fact, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole: {
        QString text = inWords(textOf(fact));
        text[0] = text[0].toUpper();
        return text;
    }
    case severity_role:
        return -1;
    case Qt::ToolTipRole:
        return tr("Verdicts hang on this. Measure it or look it up, and say so beside the figure.");
    default:
        return {};
    }
}

/// What else belongs to the fault, and what its verdict hangs on.
QStringList FindingsModel::detailsOf(const Finding& finding) const
{
    QStringList lines;
    for (const Finding& detail : finding.details)
        lines << inWords(detail.text, units_);
    if (!finding.rests_on.empty())
        lines << tr("Not confirmed: %1.").arg(inWords(listOf(finding.rests_on)));
    return lines;
}

QString FindingsModel::figures(const Finding& finding) const
{
    if (!finding.measured)
        return {};
    const QString measured = inWords(*finding.measured, finding.unit, units_);
    if (!finding.limit)
        return tr("measured %1").arg(measured);
    const QString limit = inWords(*finding.limit, finding.unit, units_);
    const auto metric = [&finding](double value) { return inWords(value, finding.unit, UnitSystem::metric); };
    // Sixteenths of an inch may hide by how much.
    if (measured == limit && metric(*finding.measured) != metric(*finding.limit))
        return tr("measured %1 (%2), limit %3 (%4)")
            .arg(measured, metric(*finding.measured), limit, metric(*finding.limit));
    return tr("measured %1, limit %2").arg(measured, limit);
}

QString FindingsModel::summary() const
{
    const auto count = [this](Severity severity) {
        int n = 0;
        for (const Finding& finding : findings_)
            n += finding.severity == severity ? 1 : 0;
        return n;
    };
    const int stops = count(Severity::stop);
    const int cautions = count(Severity::caution);
    const int advices = count(Severity::advice);
    QStringList parts;
    if (stops > 0)
        parts.append(stops == 1 ? tr("1 stops the job") : tr("%1 stop the job").arg(stops));
    if (cautions > 0)
        parts.append(cautions == 1 ? tr("1 caution") : tr("%1 cautions").arg(cautions));
    if (advices > 0)
        parts.append(tr("%1 advice").arg(advices));
    if (!not_judged_.empty())
        parts.append(tr("%1 not judged").arg(not_judged_.size()));
    if (!unconfirmed_.empty())
        parts.append(tr("%1 not confirmed").arg(unconfirmed_.size()));
    if (findings_.empty() && document_.sketch().hoses.empty())
        return tr("Nothing to judge until hoses are drawn");
    if (stops == 0)
        parts.prepend(tr("Nothing found that stops the job"));
    return parts.join(QStringLiteral(", "));
}

} // namespace siphonwright::panels
