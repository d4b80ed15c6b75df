#pragma once

#include "app/document/document.h"

#include "core/commissioning/checklist.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace siphonwright::commissioning {

/// One step of the checklist at a time, for gloved hands: large words, its caution, the numbers of this
/// drawing, Done and Back. What it waits for is said; it can be done all the same with a reason, which is
/// kept.
class StepView : public QWidget {
    Q_OBJECT
public:
    StepView(Document& document, QWidget* parent = nullptr);

    const WorkStep& step() const { return *step_; }
    void show(const WorkStep& step);
    /// The first step that is open; the last when all is done.
    void showNext();

Q_SIGNALS:
    void stepChanged();

private:
    void layOut();
    QPushButton* button(const QString& name, const QString& words);
    void refresh();
    void sayNumbers();
    void done();
    void doneAllTheSame();
    void takeBack();
    void tickWith(const QString& reason);
    void move(int by);

    Document& document_;
    const WorkStep* step_;
    QString remark_; ///< what the last tick or untick said
    QProgressBar* progress_;
    QLabel* place_;
    QLabel* title_;
    QLabel* caution_;
    QLabel* numbers_;
    QLabel* state_;
    QLineEdit* by_;
    QLineEdit* reason_;
    QPushButton* all_the_same_;
    QPushButton* untick_;
    QPushButton* back_;
    QPushButton* next_;
    QPushButton* done_;
};

} // namespace siphonwright::commissioning
