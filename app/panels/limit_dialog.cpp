#include "app/panels/limit_dialog.h"

#include "app/panels/field.h"
#include "app/panels/quantity_edit.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace siphonwright::panels {

namespace {

QString words(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

void dropChange(Sketch& sketch, const std::string& rule)
{
    const auto is_of_rule = [&rule](const LimitChange& change) { return change.rule == rule; };
    sketch.limits.erase(std::remove_if(sketch.limits.begin(), sketch.limits.end(), is_of_rule),
                        sketch.limits.end());
}

/// Only what differs from the rule book is kept, so that a better rule book reaches old drawings.
std::optional<double> changed(const QuantityEdit* edit, const std::optional<double>& own)
{
    return edit && edit->value() != own ? edit->value() : std::nullopt;
}

} // namespace

bool hasLimits(const Document& document, int finding)
{
    const auto& findings = document.analysis().findings;
    if (finding < 0 || static_cast<std::size_t>(finding) >= findings.size())
        return false;
    const Rule* rule = ruleById(findings[static_cast<std::size_t>(finding)].rule);
    return rule && (rule->limits.advice || rule->limits.caution || rule->limits.stop);
}

LimitDialog::LimitDialog(Document& document, std::string rule, QWidget* parent)
    : QDialog(parent), document_(document), rule_(std::move(rule)), reason_(new QLineEdit(this))
{
    const Rule& row = *ruleById(rule_);
    const Limits now = limitsOf(row, document_.sketch());
    setWindowTitle(tr("Change a limit"));
    auto* form = new QFormLayout(this);
    auto* title = new QLabel(words(row.title), this);
    title->setProperty("role", QStringLiteral("title"));
    form->addRow(title);
    auto* basis = new QLabel(tr("Basis: %1").arg(words(row.basis)), this);
    basis->setWordWrap(true);
    form->addRow(basis);
    const QString pattern = row.sense == Sense::over ? tr("%1 over") : tr("%1 under");
    advice_ = addLimit(pattern.arg(tr("Advice")), row.limits.advice, now.advice);
    caution_ = addLimit(pattern.arg(tr("Caution")), row.limits.caution, now.caution);
    stop_ = addLimit(pattern.arg(tr("Stop")), row.limits.stop, now.stop);
    reason_->setPlaceholderText(tr("for example: the heater's manual, page 7"));
    reason_->setObjectName(QStringLiteral("limit-reason"));
    for (const LimitChange& change : document_.sketch().limits)
        if (change.rule == rule_)
            reason_->setText(QString::fromStdString(change.reason));
    form->addRow(tr("Reason"), reason_);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    auto* ok = buttons->button(QDialogButtonBox::Ok);
    ok->setText(tr("Change the limit"));
    ok->setEnabled(!reason_->text().trimmed().isEmpty());
    auto* own = buttons->addButton(tr("Back to the rule book's"), QDialogButtonBox::ResetRole);
    form->addRow(buttons);
    connect(reason_, &QLineEdit::textChanged, ok,
            [ok](const QString& reason) { ok->setEnabled(!reason.trimmed().isEmpty()); });
    connect(buttons, &QDialogButtonBox::accepted, this, &LimitDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &LimitDialog::reject);
    connect(own, &QPushButton::clicked, this, &LimitDialog::restoreOwn);
}

QuantityEdit* LimitDialog::addLimit(const QString& label, std::optional<double> own,
                                    std::optional<double> now)
{
    if (!own)
        return nullptr;
    auto* edit = new QuantityEdit(ruleById(rule_)->unit, this);
    edit->setUnits(unitsOf(document_.sketch()));
    edit->setValue(now);
    edit->setAccessibleName(label);
    auto* problem = new QLabel(this);
    problem->setProperty("role", QStringLiteral("problem"));
    problem->setWordWrap(true);
    problem->hide();
    auto* form = static_cast<QFormLayout*>(layout());
    form->addRow(label, edit);
    form->addRow(problem);
    connect(edit, &QuantityEdit::problemChanged, problem, [problem](const QString& sentence) {
        problem->setText(sentence);
        problem->setVisible(!sentence.isEmpty());
    });
    return edit;
}

void LimitDialog::accept()
{
    for (QuantityEdit* edit : {advice_, caution_, stop_})
        if (edit && !edit->commit())
            return;
    const Limits& own = ruleById(rule_)->limits;
    LimitChange change;
    change.rule = rule_;
    change.advice = changed(advice_, own.advice);
    change.caution = changed(caution_, own.caution);
    change.stop = changed(stop_, own.stop);
    change.reason = reason_->text().trimmed().toStdString();
    document_.apply(tr("Change a limit"), [&change](Sketch& sketch) {
        dropChange(sketch, change.rule);
        if (change.advice || change.caution || change.stop)
            sketch.limits.push_back(change);
    });
    QDialog::accept();
}

void LimitDialog::restoreOwn()
{
    document_.apply(tr("Take back a changed limit"), [this](Sketch& sketch) { dropChange(sketch, rule_); });
    QDialog::reject();
}

} // namespace siphonwright::panels
