#pragma once

#include "app/document/long_call.h"

#include <QCoreApplication>
#include <QString>

#include <chrono>
#include <functional>
#include <utility>

class QWidget;

namespace siphonwright {

/// How long reading or writing may take: unseen, then with a box that says that it goes on, then with one
/// that says that the place does not answer.
struct FilePatience {
    std::chrono::milliseconds unseen{1000};
    std::chrono::milliseconds unanswered{5000};
};

/// Waits for a file to be read or written, beside which the window stays alive.
class SlowCall {
    Q_DECLARE_TR_FUNCTIONS(SlowCall)
public:
    enum class What {
        opening,
        opening_logo, ///< of a sheet, that can be made without it
        saving,       ///< the drawing
        writing,      ///< what is made of it
    };
    enum class End {
        done,
        elsewhere, ///< of a save
        given_up,
    };

    /// \param name of the file
    SlowCall(What what, QString name, const FilePatience& patience)
        : what_(what), name_(std::move(name)), patience_(patience)
    {}
    /// Until it is done, or somebody chooses to wait no longer.
    template <class Result>
    End wait(const LongCall<Result>& call, QWidget& window) const
    {
        return wait([&call](std::chrono::milliseconds patience) { return call.isDone(patience); }, window);
    }

private:
    using IsDone = std::function<bool(std::chrono::milliseconds patience)>;
    End wait(const IsDone& is_done, QWidget& window) const;
    QString going() const;
    QString unanswered() const;
    QString whatThen() const;

    What what_;
    QString name_;
    FilePatience patience_;
};

} // namespace siphonwright
