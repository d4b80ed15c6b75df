#include "app/panels/form_view.h"

#include "app/drawing/look.h"
#include "app/panels/quantity_edit.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <algorithm>

namespace siphonwright::panels {

namespace {

/// A list to choose from that leaves the wheel to the panel it scrolls in, and does not widen its row.
class Choice : public QComboBox {
public:
    explicit Choice(QWidget* parent = nullptr) : QComboBox(parent)
    {
        setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        setMinimumContentsLength(6);
        setFocusPolicy(Qt::StrongFocus);
    }

protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

/// Free text of several lines that is stored when it is left.
class Paragraph : public QPlainTextEdit {
public:
    explicit Paragraph(std::function<void(const QString&)> store) : store_(std::move(store))
    {
        setTabChangesFocus(true);
        setMinimumHeight(70);
    }

protected:
    void focusOutEvent(QFocusEvent* event) override
    {
        QPlainTextEdit::focusOutEvent(event);
        store_(toPlainText());
    }

private:
    std::function<void(const QString&)> store_;
};

bool sameShape(const Field& a, const Field& b)
{
    return a.kind == b.kind && a.label == b.label && a.choices == b.choices && a.target == b.target &&
           a.unit == b.unit && static_cast<bool>(a.source) == static_cast<bool>(b.source);
}

} // namespace

FormView::FormView(Document& document, Form form, QWidget* parent)
    : QWidget(parent), document_(document), form_(std::move(form))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(6);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(1, 1);
    for (std::size_t i = 0; i < form_.size(); ++i)
        addRow(*grid, i);
    grid->setRowStretch(static_cast<int>(form_.size()) * 2, 1);
    refresh();
}

FormView::~FormView() = default;

bool FormView::fits(const Form& form) const
{
    return std::equal(form.begin(), form.end(), form_.begin(), form_.end(), sameShape);
}

void FormView::show(Form form)
{
    form_ = std::move(form);
    refresh();
}

void FormView::refresh()
{
    for (const auto& refresher : refreshers_)
        refresher(document_.sketch());
}

void FormView::addRow(QGridLayout& grid, std::size_t index)
{
    const Field& field = form_[index];
    const int line = static_cast<int>(index) * 2;
    if (field.kind == Field::Kind::heading) {
        auto* heading = new QLabel(field.label, this);
        heading->setWordWrap(true);
        heading->setProperty("role", QStringLiteral("heading"));
        grid.addWidget(heading, line, 0, 1, 3);
        return;
    }
    QWidget* editor = editorFor(index);
    editor->setToolTip(field.tip);
    // A paragraph has no label of its own: it is named by the heading that it stands under.
    editor->setAccessibleName(field.label.isEmpty() && index > 0 ? form_[index - 1].label : field.label);
    editor->setObjectName(field.label);
    const bool wide = field.kind == Field::Kind::link || field.kind == Field::Kind::paragraph ||
                      field.kind == Field::Kind::remark;
    if (wide) {
        grid.addWidget(editor, line, 0, 1, 3);
        return;
    }
    auto* label = new QLabel(field.label, this);
    label->setWordWrap(true);
    label->setToolTip(field.tip);
    label->setBuddy(editor);
    grid.addWidget(label, line, 0);
    grid.addWidget(editor, line, 1, 1, field.source ? 1 : 2);
    if (field.source)
        grid.addWidget(sourceEditor(index), line, 2);
    if (auto* quantity = qobject_cast<QuantityEdit*>(editor)) {
        // "not entered" is read whole; a label beside it wraps.
        quantity->setMinimumWidth(static_cast<int>(84 * drawing::textScale(font())));
        auto* problem = new QLabel(this);
        problem->setProperty("role", QStringLiteral("problem"));
        problem->setWordWrap(true);
        problem->hide();
        grid.addWidget(problem, line + 1, 0, 1, 3);
        connect(quantity, &QuantityEdit::problemChanged, problem, [problem](const QString& sentence) {
            problem->setText(sentence);
            problem->setVisible(!sentence.isEmpty());
        });
    }
}

QWidget* FormView::editorFor(std::size_t index)
{
    switch (form_[index].kind) {
    case Field::Kind::quantity:
        return quantityEditor(index);
    case Field::Kind::text:
        return textEditor(index);
    case Field::Kind::paragraph:
        return paragraphEditor(index);
    case Field::Kind::choice:
        return choiceEditor(index);
    case Field::Kind::link:
        return linkEditor(index);
    case Field::Kind::heading:
    case Field::Kind::remark:
        break;
    }
    auto* label = new QLabel(this);
    label->setWordWrap(true);
    refreshers_.emplace_back(
        [this, label, index](const Sketch& sketch) { label->setText(form_[index].text(sketch)); });
    return label;
}

QWidget* FormView::quantityEditor(std::size_t index)
{
    const Field& field = form_[index];
    auto* edit = new QuantityEdit(field.unit, this);
    edit->setMayBeEmpty(field.may_be_empty);
    edit->setRange(field.least, field.most);
    if (!field.stock.empty())
        edit->setStock(field.stock);
    connect(edit, &QuantityEdit::committed, this, [this, edit, index] {
        const auto value = edit->value();
        document_.apply(tr("Change %1").arg(form_[index].label),
                        [this, index, value](Sketch& sketch) { form_[index].set_number(sketch, value); });
        // Where the edit was not possible the line shows what holds.
        edit->setValue(form_[index].number(document_.sketch()));
    });
    refreshers_.emplace_back([this, edit, index](const Sketch& sketch) {
        edit->setUnits(unitsOf(sketch));
        edit->setValue(form_[index].number(sketch));
    });
    return edit;
}

QWidget* FormView::textEditor(std::size_t index)
{
    auto* edit = new QLineEdit(this);
    connect(edit, &QLineEdit::editingFinished, this, [this, edit, index] {
        const QString typed = edit->text();
        if (typed == form_[index].text(document_.sketch()))
            return;
        document_.apply(tr("Change %1").arg(form_[index].label),
                        [this, index, typed](Sketch& sketch) { form_[index].set_text(sketch, typed); });
    });
    refreshers_.emplace_back([this, edit, index](const Sketch& sketch) {
        const QString now = form_[index].text(sketch);
        if (edit->text() != now && !(edit->hasFocus() && edit->isModified())) {
            edit->setText(now);
            edit->setCursorPosition(0);
        }
    });
    return edit;
}

QWidget* FormView::paragraphEditor(std::size_t index)
{
    auto* edit = new Paragraph([this, index](const QString& typed) {
        if (typed == form_[index].text(document_.sketch()))
            return;
        document_.apply(tr("Change notes"),
                        [this, index, typed](Sketch& sketch) { form_[index].set_text(sketch, typed); });
    });
    refreshers_.emplace_back([this, edit, index](const Sketch& sketch) {
        const QString now = form_[index].text(sketch);
        if (!edit->hasFocus() && edit->toPlainText() != now)
            edit->setPlainText(now);
    });
    return edit;
}

QWidget* FormView::choiceEditor(std::size_t index)
{
    const Field& field = form_[index];
    auto* choice = new Choice(this);
    const int offset = field.may_be_empty ? 1 : 0;
    if (field.may_be_empty)
        choice->addItem(tr("not entered"));
    choice->addItems(field.choices);
    connect(choice, &QComboBox::activated, this, [this, index, offset](int chosen) {
        document_.apply(tr("Change %1").arg(form_[index].label),
                        [this, index, chosen, offset](Sketch& sketch) {
                            form_[index].set_choice(sketch, chosen - offset);
                        });
    });
    refreshers_.emplace_back([this, choice, index, offset](const Sketch& sketch) {
        const QSignalBlocker blocked(choice);
        choice->setCurrentIndex(form_[index].choice(sketch) + offset);
        if (form_[index].tip.isEmpty()) // what has no room ends in dots
            choice->setToolTip(choice->currentText());
    });
    return choice;
}

QWidget* FormView::linkEditor(std::size_t index)
{
    auto* button = new QPushButton(form_[index].label, this);
    button->setProperty("role", QStringLiteral("link"));
    button->setCursor(Qt::PointingHandCursor);
    connect(button, &QPushButton::clicked, this, [this, index] { Q_EMIT partWanted(form_[index].target); });
    return button;
}

QWidget* FormView::sourceEditor(std::size_t index)
{
    auto* choice = new Choice(this);
    choice->setProperty("role", QStringLiteral("source"));
    choice->addItems(sourceWords());
    choice->setToolTip(tr("Where this comes from"));
    choice->setAccessibleName(tr("Source of %1").arg(form_[index].label));
    // Some platforms have a list's choice for its name.
    choice->setAccessibleDescription(choice->accessibleName());
    connect(choice, &QComboBox::activated, this, [this, index](int chosen) {
        document_.apply(tr("Change source of %1").arg(form_[index].label),
                        [this, index, chosen](Sketch& sketch) {
                            form_[index].set_source(sketch, static_cast<Source>(chosen));
                        });
    });
    refreshers_.emplace_back([this, choice, index](const Sketch& sketch) {
        const QSignalBlocker blocked(choice);
        choice->setCurrentIndex(static_cast<int>(form_[index].source(sketch)));
        const Field& field = form_[index];
        const bool entered = field.number ? field.number(sketch).has_value() : field.choice(sketch) >= 0;
        choice->setEnabled(entered);
    });
    return choice;
}

} // namespace siphonwright::panels
