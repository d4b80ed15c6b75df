#include "app/paper/entry.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QStyle>

namespace siphonwright::paper {

EntryLine::EntryLine(const QString& name, Take take, QWidget* parent)
    : QLineEdit(parent), take_(std::move(take))
{
    setAccessibleName(name);
    connect(this, &QLineEdit::textEdited, this, [this] { typed_ = true; });
}

void EntryLine::showText(const QString& text)
{
    shown_ = text;
    if (typed_)
        return; // being typed in
    setText(text);
    setCursorPosition(0);
}

bool EntryLine::commit()
{
    if (!typed_)
        return problem_.isEmpty();
    const QString refused = take_(text());
    setProblem(refused);
    if (!refused.isEmpty())
        return false;
    typed_ = false;
    showText(shown_);
    return true;
}

void EntryLine::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (commit())
            selectAll();
        event->accept();
        return;
    }
    if (event->key() == Qt::Key_Escape && (typed_ || !problem_.isEmpty())) {
        typed_ = false;
        setProblem({});
        showText(shown_);
        selectAll();
        event->accept();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

bool EntryLine::event(QEvent* event)
{
    // Escape belongs to the line while something is typed, not to the window's shortcut.
    if (event->type() == QEvent::ShortcutOverride && typed_ &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        return true;
    }
    return QLineEdit::event(event);
}

void EntryLine::focusOutEvent(QFocusEvent* event)
{
    QLineEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason)
        commit();
}

void EntryLine::setProblem(const QString& sentence)
{
    if (problem_ == sentence)
        return;
    problem_ = sentence;
    setProperty("refused", !sentence.isEmpty());
    style()->unpolish(this);
    style()->polish(this);
    setAccessibleDescription(sentence);
    setToolTip(sentence);
    Q_EMIT problemChanged(sentence);
}

EntryText::EntryText(const QString& name, std::function<void(const QString&)> take, QWidget* parent)
    : QPlainTextEdit(parent), take_(std::move(take))
{
    setAccessibleName(name);
    setTabChangesFocus(true);
    constexpr int lines = 4;
    setFixedHeight(fontMetrics().lineSpacing() * lines + 12);
}

void EntryText::showText(const QString& text)
{
    if (shown_ == text)
        return;
    shown_ = text;
    setPlainText(text);
}

void EntryText::focusOutEvent(QFocusEvent* event)
{
    QPlainTextEdit::focusOutEvent(event);
    if (toPlainText() == shown_)
        return;
    shown_ = toPlainText();
    take_(shown_);
}

} // namespace siphonwright::paper
