#include "app/document/document.h"
#include "app/language/in_words.h"

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

} // namespace

void Document::reset(Sketch sketch)
{
    file_ = {};
    undo_stack_.clear();
    forget();
    setSketch(sketch);
    Q_EMIT fileChanged();
}

QStringList Document::open(const QString& path)
{
    FileRead found = read(path, *disk_);
    if (const auto* problems = std::get_if<QStringList>(&found))
        return *problems;
    take(std::move(std::get<SketchFile>(found)));
    return {};
}

FileRead Document::read(const QString& path, const Disk& disk)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return QStringList(tr("%1 cannot be opened: %2.").arg(path, file.errorString()));
    // One byte over the limit is enough to know; the rest of a huge file need not be read.
    const QByteArray bytes = file.read(static_cast<qint64>(largest_file_bytes) + 1);
    if (file.error() != QFileDevice::NoError)
        return QStringList(tr("%1 cannot be read: %2.").arg(path, file.errorString()));
    if (static_cast<std::size_t>(bytes.size()) > largest_file_bytes)
        return QStringList(
            tr("%1 is larger than %2 MB and cannot be a sketch.").arg(path).arg(largest_file_bytes >> 20));
    auto read = readSketch(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (const auto* problems = std::get_if<Problems>(&read))
        return sentences(*problems);
    const QFileInfo info(path);
    return SketchFile{std::move(std::get<Sketch>(read)),
                      {info.absoluteFilePath(), fingerprintOf(bytes), disk.device(info.absolutePath())}};
}

void Document::take(SketchFile file)
{
    file_ = std::move(file.mark);
    undo_stack_.clear();
    forget();
    setSketch(file.sketch);
    Q_EMIT fileChanged();
}

std::variant<SaveJob, WriteFailure> Document::beginSave(const QString& path, Theirs theirs) const
{
    auto written = writeSketch(sketch_);
    if (const auto* problems = std::get_if<Problems>(&written))
        return WriteFailure{WriteFailure::Kind::refused, path, sentences(*problems).join(QLatin1Char('\n'))};
    return SaveJob{path, QByteArray::fromStdString(std::get<std::string>(written)), file_, theirs, disk_};
}

std::optional<WriteFailure> Document::endSave(const SaveJob& job, const SaveOutcome& outcome)
{
    const QString absolute = QFileInfo(job.path).absoluteFilePath();
    if (outcome.stands)
        file_ = {absolute, fingerprintOf(job.bytes), outcome.device};
    if (outcome.failure)
        return outcome.failure;
    undo_stack_.setClean();
    Q_EMIT fileChanged();
    return std::nullopt;
}

std::optional<WriteFailure> Document::write(const QString& path, Theirs theirs)
{
    const auto begun = beginSave(path, theirs);
    if (const auto* failure = std::get_if<WriteFailure>(&begun))
        return *failure;
    const auto& job = std::get<SaveJob>(begun);
    return endSave(job, carryOut(job));
}

QStringList Document::save(const QString& path)
{
    const auto failure = write(path);
    return failure ? failure->text().split(QLatin1Char('\n')) : QStringList{};
}

void Document::leaveFile()
{
    file_ = {};
    Q_EMIT fileChanged();
}

void Document::recover(Sketch sketch, const QString& path, const QByteArray& fingerprint)
{
    file_ = {path, fingerprint, std::nullopt};
    undo_stack_.clear();
    undo_stack_.resetClean();
    forget();
    setSketch(sketch);
    Q_EMIT fileChanged();
}

} // namespace siphonwright
