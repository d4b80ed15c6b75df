#include "app/assumptions/assumption_form.h"

#include "app/assumptions/assumption_choices.h"
#include "app/drawing/look.h"
#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/quantity_edit.h"
#include "app/panels/wrapped_row.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace siphonwright::assumptions {

using panels::QuantityEdit;
using panels::unitsOf;

namespace {

/// A roughness is typed as a plain number of mm: lengths are shown far more coarsely.
Unit typedUnit(const Assumption& assumption)
{
    return assumption.unit == Unit::mm ? Unit::none : assumption.unit;
}

QString unitBeside(const Assumption& assumption)
{
    return assumption.unit == Unit::mm ? QStringLiteral("mm") : words(assumption.unit_text);
}

/// Far beyond the book's range, but not where the physics has no meaning.
std::pair<double, double> accepted(const Assumption& assumption)
{
    constexpr double times = 100;
    if (assumption.unit == Unit::ratio)
        return {0, 1};
    if (assumption.unit == Unit::degC)
        return {-40, 120};
    return {assumption.low / times, assumption.high * times};
}

} // namespace

AssumptionForm::AssumptionForm(Document& document, const Assumption& assumption, QWidget* parent)
    : QWidget(parent),
      document_(document),
      assumption_(assumption),
      value_(new QuantityEdit(typedUnit(assumption), this)),
      book_(new QLabel(this)),
      reason_(new QLineEdit(this)),
      remark_(new QLabel(this)),
      keep_(new QPushButton(tr("Keep for this drawing"), this)),
      back_(new QPushButton(tr("Back to the book's"), this))
{
    lay();
    connect(&document_, &Document::changed, this, &AssumptionForm::refresh);
    connect(value_, &QLineEdit::textEdited, this, &AssumptionForm::followTyping);
    connect(reason_, &QLineEdit::textEdited, this, &AssumptionForm::followTyping);
    connect(reason_, &QLineEdit::returnPressed, this, &AssumptionForm::keep);
    connect(keep_, &QPushButton::clicked, this, &AssumptionForm::keep);
    connect(back_, &QPushButton::clicked, this, [this] { takeBack(document_, assumption_.id); });
    showChange();
}

void AssumptionForm::lay()
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(3, 1);
    auto* title = new QLabel(words(assumption_.title), this);
    title->setProperty("role", QStringLiteral("title"));
    auto* basis = new QLabel(tr("Basis: %1.").arg(words(assumption_.basis)), this);
    for (QLabel* label : {title, basis}) {
        label->setWordWrap(true);
        grid->addWidget(label, grid->rowCount(), 0, 1, 4);
    }
    addEditor(*grid);
    reason_->setObjectName(QStringLiteral("assumption-reason"));
    reason_->setAccessibleName(tr("Reason"));
    reason_->setPlaceholderText(tr("for example: measured on this engine"));
    remark_->setObjectName(QStringLiteral("assumption-remark"));
    remark_->setProperty("role", QStringLiteral("problem"));
    remark_->setWordWrap(true);
    keep_->setObjectName(QStringLiteral("keep-assumption"));
    back_->setObjectName(QStringLiteral("book-assumption"));
    const int at = grid->rowCount();
    grid->addWidget(new QLabel(tr("Reason"), this), at, 0);
    grid->addWidget(reason_, at, 1, 1, 3);
    grid->addWidget(remark_, at + 1, 1, 1, 3);
    auto* buttons = new panels::WrappedRow;
    buttons->addStretch();
    buttons->addWidget(back_);
    buttons->addWidget(keep_);
    grid->addLayout(buttons, at + 2, 0, 1, 4);
}

void AssumptionForm::addEditor(QGridLayout& grid)
{
    value_->setObjectName(QStringLiteral("assumption-value"));
    value_->setAccessibleName(words(assumption_.title));
    value_->setMaximumWidth(static_cast<int>(130 * drawing::textScale(font())));
    const auto [least, most] = accepted(assumption_);
    value_->setRange(least, most);
    book_->setProperty("role", QStringLiteral("faint"));
    auto* problem = new QLabel(this);
    problem->setProperty("role", QStringLiteral("problem"));
    problem->setWordWrap(true);
    problem->hide();
    connect(value_, &QuantityEdit::problemChanged, problem, [problem](const QString& sentence) {
        problem->setText(sentence);
        problem->setVisible(!sentence.isEmpty());
    });
    const int at = grid.rowCount();
    grid.addWidget(new QLabel(tr("In this drawing"), this), at, 0);
    grid.addWidget(value_, at, 1);
    grid.addWidget(new QLabel(unitBeside(assumption_), this), at, 2);
    grid.addWidget(book_, at, 3);
    grid.addWidget(problem, at + 1, 1, 1, 3);
}

AssumptionChange AssumptionForm::stored() const
{
    const AssumptionChange* change = changeOf(document_.sketch(), assumption_.id);
    return change ? *change : AssumptionChange{};
}

void AssumptionForm::refresh()
{
    if (!(stored() == shown_) || document_.sketch().units != units_)
        showChange();
}

void AssumptionForm::showChange()
{
    shown_ = stored();
    units_ = document_.sketch().units;
    const UnitSystem units = unitsOf(document_.sketch());
    const bool changed = !shown_.assumption.empty();
    value_->setValue(std::nullopt); // what was typed gives way
    value_->setUnits(units);
    value_->setValue(changed ? shown_.value : assumption_.value);
    const QString own = withDecimalSign(inWords(valueText(assumption_, assumption_.value, units)));
    book_->setText(changed ? tr("changed; the book's: %1").arg(own) : tr("as in the book"));
    reason_->setText(QString::fromStdString(shown_.reason));
    reason_->setCursorPosition(0);
    back_->setEnabled(changed);
    keep_->setEnabled(false);
    remark_->hide();
}

void AssumptionForm::followTyping()
{
    const bool reasoned = !reason_->text().trimmed().isEmpty();
    keep_->setEnabled(reasoned);
    remark_->setText(tr("Write the reason too: the sheet states it."));
    remark_->setVisible(!reasoned);
}

void AssumptionForm::keep()
{
    const QString reason = reason_->text().trimmed();
    if (!keep_->isEnabled() || reason.isEmpty() || !value_->commit() || !value_->value())
        return;
    keepChange(document_, {std::string(assumption_.id), *value_->value(), reason.toStdString()});
    showChange();
}

} // namespace siphonwright::assumptions
