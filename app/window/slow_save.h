#pragma once

#include "app/document/long_call.h"
#include "app/document/saving.h"

#include <QCoreApplication>
#include <QString>

#include <chrono>
#include <utility>

class QWidget;

namespace siphonwright {

/// How long a save may take: unseen, then with a box that says that it goes on, then with one that says that
/// the place does not answer.
struct SavePatience {
    std::chrono::milliseconds unseen{1000};
    std::chrono::milliseconds unanswered{5000};
};

/// Waits for a save, beside which the window stays alive.
class SlowSave {
    Q_DECLARE_TR_FUNCTIONS(SlowSave)
public:
    enum class End { done, elsewhere, given_up };

    SlowSave(LongCall<SaveOutcome>& save, QString name, const SavePatience& patience)
        : save_(save), name_(std::move(name)), patience_(patience)
    {}
    /// Until it is done, or somebody chooses to wait no longer.
    End wait(QWidget& window);

private:
    LongCall<SaveOutcome>& save_;
    QString name_;
    SavePatience patience_;
};

} // namespace siphonwright
