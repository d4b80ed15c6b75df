#pragma once

#include "app/document/document.h"
#include "app/document/worker.h"

#include "core/proposing/fix.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace siphonwright::panels {

/// Looks beside the window for the least change of the drawing that cures a finding, says it, and makes it
/// with one press as one undo step.
class FixBar : public QWidget {
    Q_OBJECT
public:
    explicit FixBar(Document& document, QWidget* parent = nullptr);

    /// A finding of the document's analysis; -1: none, and nothing is shown.
    void setFinding(int finding);
    void apply(); ///< the change that is offered; nothing when none is

Q_SIGNALS:
    void ready(); ///< sent from the worker's thread

private:
    struct Job {
        Sketch sketch;
        Analysis analysis;
        Finding finding;
    };
    struct Answer {
        Finding finding;
        std::optional<Fix> fix;
    };
    void look();
    void takeAnswer();

    Document& document_;
    QLabel* words_;
    QPushButton* button_;
    int finding_ = -1;
    std::optional<Finding> asked_; ///< what was looked for last
    std::optional<Fix> fix_;
    Worker<Job, Answer> worker_;
};

} // namespace siphonwright::panels
