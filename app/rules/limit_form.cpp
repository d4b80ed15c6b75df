#include "app/rules/limit_form.h"

#include "app/drawing/look.h"
#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/quantity_edit.h"
#include "app/panels/wrapped_row.h"
#include "app/rules/rule_choices.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

namespace siphonwright::rules {

using panels::QuantityEdit;
using panels::unitsOf;

LimitForm::LimitForm(Document& document, const Rule& rule, QWidget* parent)
    : QWidget(parent),
      document_(document),
      rule_(rule),
      judged_(new QCheckBox(tr("Judge this rule in this drawing"), this)),
      reason_(new QLineEdit(this)),
      remark_(new QLabel(this)),
      keep_(new QPushButton(tr("Keep for this drawing"), this)),
      own_(new QPushButton(tr("Back to the rule book's"), this))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(2, 1);
    rows_[0].limit = &Limits::advice;
    rows_[0].change = &LimitChange::advice;
    rows_[1].limit = &Limits::caution;
    rows_[1].change = &LimitChange::caution;
    rows_[2].limit = &Limits::stop;
    rows_[2].change = &LimitChange::stop;
    const bool over = rule.sense == Sense::over;
    addRow(rows_[0], over ? tr("Advice over") : tr("Advice under"), *grid);
    addRow(rows_[1], over ? tr("Caution over") : tr("Caution under"), *grid);
    addRow(rows_[2], over ? tr("Stop over") : tr("Stop under"), *grid);
    if (rule.limits == Limits()) {
        auto* none = new QLabel(
            tr("Judged yes or no, or by a figure from the manual: there is no limit to change."), this);
        none->setWordWrap(true);
        grid->addWidget(none, grid->rowCount(), 0, 1, 3);
    }
    addSwitchAndReason(*grid);
    connect(&document_, &Document::changed, this, &LimitForm::refresh);
    showChange();
}

void LimitForm::addRow(Row& row, const QString& label, QGridLayout& grid)
{
    if (!(rule_.limits.*row.limit))
        return;
    row.edit = new QuantityEdit(rule_.unit, this);
    row.edit->setAccessibleName(label);
    row.edit->setObjectName(label);
    row.edit->setMaximumWidth(static_cast<int>(130 * drawing::textScale(font())));
    row.own = new QLabel(this);
    row.own->setProperty("role", QStringLiteral("faint"));
    auto* problem = new QLabel(this);
    problem->setProperty("role", QStringLiteral("problem"));
    problem->setWordWrap(true);
    problem->hide();
    const int at = grid.rowCount();
    grid.addWidget(new QLabel(label, this), at, 0);
    grid.addWidget(row.edit, at, 1);
    grid.addWidget(row.own, at, 2);
    grid.addWidget(problem, at + 1, 1, 1, 2);
    connect(row.edit, &QuantityEdit::problemChanged, problem, [problem](const QString& sentence) {
        problem->setText(sentence);
        problem->setVisible(!sentence.isEmpty());
    });
    connect(row.edit, &QLineEdit::textEdited, this, &LimitForm::followTyping);
}

void LimitForm::addSwitchAndReason(QGridLayout& grid)
{
    reason_->setObjectName(QStringLiteral("limit-reason"));
    reason_->setAccessibleName(tr("Reason"));
    reason_->setPlaceholderText(tr("for example: the heater's manual, page 7"));
    judged_->setObjectName(QStringLiteral("rule-judged"));
    keep_->setObjectName(QStringLiteral("keep-limits"));
    own_->setObjectName(QStringLiteral("own-limits"));
    remark_->setObjectName(QStringLiteral("limit-remark"));
    remark_->setProperty("role", QStringLiteral("problem"));
    remark_->setWordWrap(true);
    remark_->hide();
    const int at = grid.rowCount();
    grid.addWidget(new QLabel(tr("Reason"), this), at, 0);
    grid.addWidget(reason_, at, 1, 1, 2);
    grid.addWidget(remark_, at + 1, 1, 1, 2);
    auto* buttons = new panels::WrappedRow;
    buttons->addWidget(judged_);
    buttons->addStretch();
    buttons->addWidget(own_);
    buttons->addWidget(keep_);
    grid.addLayout(buttons, at + 2, 0, 1, 3);
    connect(reason_, &QLineEdit::textEdited, this, &LimitForm::followTyping);
    connect(reason_, &QLineEdit::returnPressed, this, &LimitForm::keepLimits);
    connect(keep_, &QPushButton::clicked, this, &LimitForm::keepLimits);
    connect(own_, &QPushButton::clicked, this, &LimitForm::takeBack);
    connect(judged_, &QCheckBox::clicked, this, &LimitForm::setJudged);
}

LimitChange LimitForm::stored() const
{
    const LimitChange* change = changeOf(document_.sketch(), rule_.id);
    LimitChange none;
    none.rule = std::string(rule_.id);
    return change ? *change : none;
}

QString LimitForm::reason() const
{
    return reason_->text().trimmed();
}

void LimitForm::refresh()
{
    if (!(stored() == shown_) || document_.sketch().units != units_)
        showChange();
}

void LimitForm::showChange()
{
    shown_ = stored();
    units_ = document_.sketch().units;
    typed_ = false;
    const UnitSystem units = unitsOf(document_.sketch());
    const Limits now = limitsOf(rule_, document_.sketch());
    for (const Row& row : rows_) {
        if (!row.edit)
            continue;
        row.edit->setValue(std::nullopt); // what was typed gives way
        row.edit->setUnits(units);
        row.edit->setValue(now.*row.limit);
        const QString own = inWords(*(rule_.limits.*row.limit), rule_.unit, units);
        row.own->setText(shown_.*row.change ? tr("changed; rule book: %1").arg(own)
                                            : tr("as in the rule book"));
    }
    reason_->setText(QString::fromStdString(shown_.reason));
    reason_->setCursorPosition(0);
    judged_->setChecked(!shown_.off);
    own_->setEnabled(shown_.advice || shown_.caution || shown_.stop || shown_.off);
    keep_->setEnabled(false);
    remark_->hide();
}

void LimitForm::followTyping()
{
    typed_ = true;
    keep_->setEnabled(!reason().isEmpty());
    remark_->setText(tr("Write the reason too: the sheet states it."));
    remark_->setVisible(reason().isEmpty());
}

void LimitForm::keepLimits()
{
    if (!typed_ || reason().isEmpty())
        return;
    LimitChange change = stored();
    for (const Row& row : rows_) {
        if (!row.edit)
            continue;
        if (!row.edit->commit())
            return;
        // Only what differs from the rule book is kept, so that a better rule book reaches old drawings.
        const std::optional<double> value = row.edit->value();
        change.*row.change = value == rule_.limits.*row.limit ? std::nullopt : value;
    }
    change.reason = reason().toStdString();
    keepChange(document_, tr("Change a limit"), change);
    showChange();
}

void LimitForm::takeBack()
{
    LimitChange none;
    none.rule = std::string(rule_.id);
    keepChange(document_, tr("Back to the rule book"), none);
    showChange();
}

void LimitForm::setJudged(bool judged)
{
    if (!judged && reason().isEmpty()) {
        judged_->setChecked(true);
        remark_->setText(tr("Write the reason first, then switch it off: the sheet states it."));
        remark_->show();
        reason_->setFocus();
        return;
    }
    LimitChange change = stored();
    change.off = !judged;
    if (!judged)
        change.reason = reason().toStdString();
    keepChange(document_, judged ? tr("Judge a rule again") : tr("Switch a rule off"), change);
    showChange();
}

} // namespace siphonwright::rules
