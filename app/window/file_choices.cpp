#include "app/document/recovery.h"
#include "app/window/file_commands.h"
#include "app/window/plain_box.h"
#include "app/window/settings.h"
#include "app/window/slow_call.h"

#include <QFileInfo>
#include <QGridLayout>
#include <QMessageBox>
#include <QPushButton>

#include <chrono>
#include <stop_token>
#include <utility>
#include <variant>

namespace siphonwright {
namespace {

QMessageBox* boxFor(QWidget& window, const QString& sentence, const QString& more)
{
    auto* box = new QMessageBox(QMessageBox::Warning, FileCommands::tr("Siphonwright"), sentence,
                                QMessageBox::Cancel, &window);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setInformativeText(more);
    showPlainText(*box);
    // Wide enough for a path: narrow, it would be broken behind its first stroke.
    auto* grid = qobject_cast<QGridLayout*>(box->layout());
    if (grid) {
        const int width_px = box->fontMetrics().averageCharWidth() * 70;
        grid->addItem(new QSpacerItem(width_px, 0), grid->rowCount(), 0, 1, grid->columnCount());
    }
    return box;
}

QString nameOf(const QString& path)
{
    return QFileInfo(path).fileName();
}

struct InAnotherWindow {
    QString holder;
};
using Found = std::variant<InAnotherWindow, FileRead>;

} // namespace

void FileCommands::open(const QString& path)
{
    whenSafe([this, path] {
        auto found = read<Found>(path, [path, own = document_.path(), disk = &document_.disk()]() -> Found {
            const QString absolute = QFileInfo(path).absoluteFilePath();
            OpenLock asked;
            // As long as it takes: this is beside the window.
            if (absolute != own &&
                asked.take(absolute, std::chrono::hours{24}) == OpenLock::Taken::by_another)
                return InAnotherWindow{asked.holder()};
            return Document::read(path, *disk);
        });
        if (!found)
            return;
        if (const auto* another = std::get_if<InAnotherWindow>(&*found))
            askAboutAnotherWindow(path, another->holder);
        else
            putOnTable(path, std::move(std::get<FileRead>(*found)));
    });
}

std::optional<FileRead> FileCommands::readDrawing(const QString& path) const
{
    return read<FileRead>(path, [path, disk = &document_.disk()] { return Document::read(path, *disk); });
}

PutFile FileCommands::put() const
{
    return [this](const QString& path, const QByteArray& bytes) -> QStringList {
        using Failure = std::optional<WriteFailure>;
        std::stop_source stop;
        LongCall<Failure> call([path, bytes, disk = &document_.disk(), token = stop.get_token()] {
            return replaceFile(path, bytes, *disk, std::nullopt, token);
        });
        const SlowCall slow(SlowCall::What::writing, nameOf(path), patience_);
        if (slow.wait(call, window_) != SlowCall::End::done) {
            stop.request_stop();
            return {
                tr("%1 is not written: its place does not answer. What stands there stays as it was. Write "
                   "it again in another place.")
                    .arg(nameOf(path))};
        }
        const Failure failure = call.take();
        return failure ? QStringList(failure->text()) : QStringList();
    };
}

void FileCommands::openHere(const QString& path)
{
    if (std::optional<FileRead> found = readDrawing(path))
        putOnTable(path, std::move(*found));
}

void FileCommands::putOnTable(const QString& path, FileRead read)
{
    if (const auto* problems = std::get_if<QStringList>(&read)) {
        tell(tr("%1 could not be opened. The drawing on the table is as it was.").arg(nameOf(path)),
             *problems);
        return;
    }
    document_.take(std::move(std::get<SketchFile>(read)));
    settings::folder.set(QFileInfo(document_.path()).absolutePath());
    rememberFile(document_.path());
    Q_EMIT opened();
}

void FileCommands::askAboutAnotherWindow(const QString& path, const QString& holder)
{
    QMessageBox* box = boxFor(
        window_, tr("%1 is open in another window.").arg(QFileInfo(path).fileName()),
        tr("It is open there: %1. A copy has no file until you save it. If both windows save one file, "
           "the later one is asked, and neither version is lost.")
            .arg(holder));
    auto* copy = box->addButton(tr("Open a &copy"), QMessageBox::AcceptRole);
    auto* same = box->addButton(tr("Open it &here too"), QMessageBox::ActionRole);
    box->setDefaultButton(copy);
    connect(box, &QMessageBox::buttonClicked, this, [this, path, copy, same](QAbstractButton* pressed) {
        if (pressed != copy && pressed != same)
            return;
        openHere(path);
        if (pressed == copy && document_.path() == QFileInfo(path).absoluteFilePath())
            document_.leaveFile();
    });
    box->open();
}

void FileCommands::write(const QString& path, Theirs theirs, const std::function<void()>& then)
{
    const auto begun = document_.beginSave(path, theirs);
    if (const auto* failure = std::get_if<WriteFailure>(&begun)) {
        askAboutFailure(*failure, then);
        return;
    }
    const auto& job = std::get<SaveJob>(begun);
    std::stop_source stop;
    LongCall<SaveOutcome> save([job, token = stop.get_token()] { return carryOut(job, token); });
    const SlowCall slow(SlowCall::What::saving, nameOf(path), patience_);
    const auto end = slow.wait(save, window_);
    if (end != SlowCall::End::done) {
        stop.request_stop();
        if (end == SlowCall::End::elsewhere)
            saveElsewhere(then);
        return;
    }
    if (const auto failure = document_.endSave(job, save.take())) {
        askAboutFailure(*failure, then);
        return;
    }
    settings::folder.set(QFileInfo(path).absolutePath());
    rememberFile(document_.path());
    if (then)
        then();
}

void FileCommands::askAboutFailure(const WriteFailure& failure, const std::function<void()>& then)
{
    using Kind = WriteFailure::Kind;
    const QString path = failure.path;
    const QString sentence = tr("%1 could not be saved.").arg(QFileInfo(path).fileName());
    if (failure.kind == Kind::refused) {
        tell(sentence, failure.text().split(QLatin1Char('\n')));
        return;
    }
    QMessageBox* box = boxFor(window_, sentence, failure.text());
    const bool changed = failure.kind == Kind::changed;
    QPushButton* both =
        changed ? box->addButton(tr("Save &mine, keep theirs beside it"), QMessageBox::AcceptRole) : nullptr;
    QPushButton* open =
        changed ? box->addButton(tr("Open &theirs, put mine aside"), QMessageBox::ActionRole) : nullptr;
    QPushButton* again = changed || failure.kind == Kind::forbidden
                             ? nullptr
                             : box->addButton(tr("&Try again"), QMessageBox::AcceptRole);
    QPushButton* as = box->addButton(tr("Save &as…"), QMessageBox::ActionRole);
    box->setDefaultButton(both ? both : again ? again : as);
    connect(box, &QMessageBox::buttonClicked, this, [=, this](QAbstractButton* pressed) {
        if (pressed == as)
            saveAs(then);
        else if (pressed == open && open)
            openTheirs();
        else if ((pressed == both && both) || (pressed == again && again))
            write(path, both ? Theirs::kept_beside : Theirs::in_the_way, then);
    });
    box->open();
}

void FileCommands::openTheirs()
{
    if (document_.isModified()) {
        if (!recovery_) {
            saveAs();
            return;
        }
        if (const auto failure = recovery_->setAside()) {
            tell(tr("Your drawing could not be put aside; it stays on the table."), {failure->text()});
            return;
        }
    }
    openHere(document_.path());
}

void FileCommands::recover(const QString& recovery_file, const std::function<void()>& then)
{
    whenSafe([this, recovery_file, then] {
        for (const RecoveryEntry& entry : recoverable(QFileInfo(recovery_file).absolutePath())) {
            if (entry.file != recovery_file)
                continue;
            std::optional<Sketch> sketch = readRecovery(entry);
            if (!sketch || !recovery_ || !recovery_->takeOver(entry)) {
                tell(tr("The drawing cannot be recovered from %1. The file is as it was.").arg(entry.file),
                     {});
                return;
            }
            document_.recover(std::move(*sketch), entry.original, entry.fingerprint);
            Q_EMIT opened();
            if (then)
                then();
            return;
        }
        tell(tr("The drawing is in another window now."), {});
    });
}

} // namespace siphonwright
