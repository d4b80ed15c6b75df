#include "app/document/document.h"
#include "app/language/in_words.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <utility>
#include <variant>

namespace siphonwright {
namespace {

QStringList sentences(const Problems& problems)
{
    QStringList out;
    for (const Problem& problem : problems)
        out.append(inWords(problem.text()));
    return out;
}

/// Write what stands at a path under the first free name beside it.
std::optional<WriteFailure> keepBeside(const QString& path, const Disk& disk)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return WriteFailure{WriteFailure::Kind::broken, path, file.errorString()};
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return WriteFailure{WriteFailure::Kind::broken, path, file.errorString()};
    const QFileInfo info(path);
    QString beside;
    for (int number = 1; beside.isEmpty() || QFileInfo::exists(beside); ++number)
        beside = info.dir().filePath(
            QStringLiteral("%1-other-%2.%3").arg(info.completeBaseName()).arg(number).arg(info.suffix()));
    return replaceFile(beside, bytes, disk);
}

} // namespace

void Document::reset(Sketch sketch)
{
    path_.clear();
    file_fingerprint_.clear();
    undo_stack_.clear();
    forget();
    setSketch(sketch);
    Q_EMIT fileChanged();
}

QStringList Document::open(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {tr("%1 cannot be opened: %2.").arg(path, file.errorString())};
    // One byte over the limit is enough to know; the rest of a huge file need not be read.
    const QByteArray bytes = file.read(static_cast<qint64>(largest_file_bytes) + 1);
    if (file.error() != QFileDevice::NoError)
        return {tr("%1 cannot be read: %2.").arg(path, file.errorString())};
    if (static_cast<std::size_t>(bytes.size()) > largest_file_bytes)
        return {
            tr("%1 is larger than %2 MB and cannot be a sketch.").arg(path).arg(largest_file_bytes >> 20)};
    const auto read = readSketch(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (const auto* problems = std::get_if<Problems>(&read))
        return sentences(*problems);
    path_ = QFileInfo(path).absoluteFilePath();
    file_fingerprint_ = fingerprintOf(bytes);
    undo_stack_.clear();
    forget();
    setSketch(std::get<Sketch>(read));
    Q_EMIT fileChanged();
    return {};
}

std::optional<WriteFailure> Document::write(const QString& path, Theirs theirs)
{
    const auto written = writeSketch(sketch_);
    if (const auto* problems = std::get_if<Problems>(&written))
        return WriteFailure{WriteFailure::Kind::refused, path, sentences(*problems).join(QLatin1Char('\n'))};
    const QByteArray bytes = QByteArray::fromStdString(std::get<std::string>(written));
    const QString absolute = QFileInfo(path).absoluteFilePath();
    // Under another name somebody has just agreed to what is lost there.
    std::optional<QByteArray> expected;
    if (absolute == path_ && !file_fingerprint_.isEmpty())
        expected = file_fingerprint_;
    if (theirs == Theirs::kept_beside && onDisk() == OnDisk::changed) {
        expected = fingerprint(path_);
        if (const auto failure = keepBeside(path_, *disk_))
            return failure;
    }
    if (auto failure = replaceFile(path, bytes, *disk_, expected)) {
        // Where the last flush alone failed, what stands there is ours already and no other program's.
        if (absolute == path_ && fingerprint(path_) == fingerprintOf(bytes))
            file_fingerprint_ = fingerprintOf(bytes);
        return failure;
    }
    path_ = absolute;
    file_fingerprint_ = fingerprintOf(bytes);
    undo_stack_.setClean();
    Q_EMIT fileChanged();
    return std::nullopt;
}

QStringList Document::save(const QString& path)
{
    const auto failure = write(path);
    return failure ? failure->text().split(QLatin1Char('\n')) : QStringList{};
}

Document::OnDisk Document::onDisk() const
{
    if (path_.isEmpty() || file_fingerprint_.isEmpty())
        return OnDisk::none;
    const std::optional<QByteArray> now = fingerprint(path_);
    if (!now)
        return OnDisk::gone;
    return *now == file_fingerprint_ ? OnDisk::same : OnDisk::changed;
}

void Document::leaveFile()
{
    path_.clear();
    file_fingerprint_.clear();
    Q_EMIT fileChanged();
}

void Document::recover(Sketch sketch, const QString& path, const QByteArray& fingerprint)
{
    path_ = path;
    file_fingerprint_ = fingerprint;
    undo_stack_.clear();
    undo_stack_.resetClean();
    forget();
    setSketch(sketch);
    Q_EMIT fileChanged();
}

} // namespace siphonwright
