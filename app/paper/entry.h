#pragma once

#include <QLineEdit>
#include <QPlainTextEdit>

#include <functional>

namespace siphonwright::paper {

/// A line that is taken as a whole, by Enter or by leaving it. What is refused stays in the line with a
/// sentence why, and changes nothing; Escape brings back what was there.
class EntryLine : public QLineEdit {
    Q_OBJECT
public:
    /// \return why the text is refused; empty: taken
    using Take = std::function<QString(const QString& typed)>;
    EntryLine(const QString& name, Take take, QWidget* parent = nullptr);

    void showText(const QString& text);
    bool commit();
    QString problem() const { return problem_; }

Q_SIGNALS:
    void problemChanged(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    void setProblem(const QString& sentence);

    Take take_;
    QString shown_;
    QString problem_;
    bool typed_ = false;
};

/// A few lines of text, taken when they are left.
class EntryText : public QPlainTextEdit {
    Q_OBJECT
public:
    EntryText(const QString& name, std::function<void(const QString&)> take, QWidget* parent = nullptr);
    void showText(const QString& text);

protected:
    void focusOutEvent(QFocusEvent* event) override;

private:
    std::function<void(const QString&)> take_;
    QString shown_;
};

} // namespace siphonwright::paper
