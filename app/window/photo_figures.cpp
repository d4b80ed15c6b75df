#include "app/window/photo_figures.h"

#include "app/panels/quantity_edit.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright {

PhotoFigures::PhotoFigures(const QString& title, const QString& sentence,
                           const std::vector<LengthAsked>& lengths, UnitSystem units, QWidget* parent)
    : QDialog(parent), problem_(new QLabel(this))
{
    constexpr double least_mm = 1;
    constexpr double most_mm = 50'000;
    setWindowTitle(title);
    setAttribute(Qt::WA_DeleteOnClose);
    auto* said = new QLabel(sentence, this);
    said->setWordWrap(true);
    said->setMinimumWidth(340);
    auto* form = new QFormLayout;
    for (const LengthAsked& length : lengths) {
        auto* edit = new panels::QuantityEdit(Unit::mm, this);
        edit->setUnits(units);
        edit->setRange(least_mm, most_mm);
        edit->setValue(length.now_mm);
        edit->setAccessibleName(length.label);
        edit->selectAll();
        edit->installEventFilter(this);
        form->addRow(length.label, edit);
        edits_.push_back(edit);
    }
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &PhotoFigures::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(said);
    column->addLayout(form);
    column->addWidget(problem_);
    column->addWidget(buttons);
    edits_.front()->setFocus();
}

/// Enter goes from line to line, and from the last one on: the lines themselves only take what is typed.
bool PhotoFigures::eventFilter(QObject* watched, QEvent* event)
{
    const auto at = std::find(edits_.begin(), edits_.end(), watched);
    if (at == edits_.end() || event->type() != QEvent::KeyPress)
        return QDialog::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Return && key != Qt::Key_Enter)
        return QDialog::eventFilter(watched, event);
    if (at + 1 == edits_.end())
        accept();
    else
        (*(at + 1))->setFocus(Qt::TabFocusReason);
    return true;
}

void PhotoFigures::accept()
{
    lengths_mm_.clear();
    for (panels::QuantityEdit* edit : edits_) {
        const bool understood = edit->commit() && edit->value();
        if (!understood) {
            problem_->setText(edit->problem().isEmpty() ? tr("Type the length as measured.")
                                                        : edit->problem());
            problem_->show();
            edit->setFocus();
            return;
        }
        lengths_mm_.push_back(*edit->value());
    }
    QDialog::accept();
}

} // namespace siphonwright
