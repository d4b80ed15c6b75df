#pragma once

#include "app/document/document.h"
#include "app/document/long_call.h"
#include "app/document/open_lock.h"
#include "app/window/slow_call.h"

#include <QObject>
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <string>
#include <utility>

class QWidget;

namespace siphonwright {

class Recovery;

/// New, open and save as the user sees them: asks before work is lost, tells what went wrong.
class FileCommands : public QObject {
    Q_OBJECT
public:
    FileCommands(Document& document, QWidget& window);

    /// An empty drawing, in the units of the open one.
    void startNew();
    void startFromTemplate(const std::string& id);
    void choose(); ///< ask for a file to open
    /// Open after asking for unsaved work. Problems are shown and leave the open drawing as it is.
    void open(const QString& path);
    void save(const std::function<void()>& then = {});
    void saveAs(const std::function<void()>& then = {});
    /// Do something that takes the open drawing away: at once, or when the user has decided on unsaved work.
    void whenSafe(const std::function<void()>& then);
    /// The sample that greets a first start, as a drawing without a file.
    void startWelcome();
    /// A sample by its name without ending, as a drawing without a file; nothing where there is none.
    void startSample(const QString& name);

    /// Open what another program has made of the document's file. Unsaved work is put aside to be recovered.
    void openTheirs();
    /// Put a drawing that can be recovered on the table, after asking for unsaved work.
    void recover(const QString& recovery_file, const std::function<void()>& then = {});
    /// What reading a file gives, beside which the window stays alive; nothing where somebody chose to wait
    /// no longer. \param reading works with nothing but its own, as LongCall says
    template <class Result>
    std::optional<Result> read(const QString& path, std::function<Result()> reading,
                               SlowCall::What what = SlowCall::What::opening) const
    {
        LongCall<Result> call(std::move(reading));
        const SlowCall slow(what, path.section(QLatin1Char('/'), -1), patience_);
        if (slow.wait(call, window_) != SlowCall::End::done)
            return std::nullopt;
        return call.take();
    }
    /// Read a drawing that is not put on the table; in the sentences of what is wrong with it, or nothing as
    /// read().
    std::optional<FileRead> readDrawing(const QString& path) const;
    /// Puts files made of the drawing in their places, likewise. Where nobody waits any longer, that is said.
    PutFile put() const;

    /// Where unsaved work is put aside; none at first. It must live as long as this.
    void setRecovery(Recovery* recovery) { recovery_ = recovery; }

    /// For tests, that need not wait so long.
    void setPatience(const FilePatience& patience) { patience_ = patience; }

    void tell(const QString& sentence, const QStringList& details);

Q_SIGNALS:
    void opened();   ///< another drawing is on the table
    void welcomed(); ///< it is the sample that greets

private:
    void write(const QString& path, Theirs theirs, const std::function<void()>& then);
    /// saveAs() that does not begin in the place that does not answer.
    void saveElsewhere(const std::function<void()>& then);
    void askWhere(const QString& folder, const QString& file, const std::function<void()>& then);
    void openHere(const QString& path);
    void putOnTable(const QString& path, FileRead read);
    void askAboutAnotherWindow(const QString& path, const QString& holder);
    void askAboutFailure(const WriteFailure& failure, const std::function<void()>& then);
    bool resetToSample(const QString& name, std::optional<UnitChoice> units = std::nullopt);

    Document& document_;
    QWidget& window_;
    OpenLock lock_;
    Recovery* recovery_ = nullptr;
    FilePatience patience_;
};

/// Units that a first drawing has: those chosen last, else those of the locale.
UnitChoice usualUnits();

/// Name of the drawing for title bars: its file's, or that it has none.
QString displayName(const Document& document);

} // namespace siphonwright
