#pragma once

#include "app/document/disk.h"

#include <QByteArray>
#include <QString>

#include <cstdint>
#include <optional>
#include <stop_token>

namespace siphonwright {

/// What happens to a version of a file that another program has written meanwhile.
enum class Theirs {
    in_the_way, ///< nothing is written
    kept_beside ///< it gets a name of its own beside the file
};

/// What a file is, beside what was opened or saved last.
enum class OnDisk { none, same, changed, gone };

/// The file of a drawing as it was opened or saved last.
struct FileMark {
    QString path;                        ///< absolute; empty without a file
    QByteArray fingerprint;              ///< empty without a file
    std::optional<std::uint64_t> device; ///< that its folder was on
};

/// What stands there now. It asks the disk, which may take long.
OnDisk onDiskNow(const FileMark& mark);

/// A save as it is to be carried out: a value of its own, so that it can go on beside the window.
struct SaveJob {
    QString path;
    QByteArray bytes;
    FileMark mark; ///< of the document
    Theirs theirs = Theirs::in_the_way;
    const Disk* disk = &Disk::real(); ///< lives as long as the program
};

struct SaveOutcome {
    std::optional<WriteFailure> failure;
    bool stands = false; ///< the bytes are in the file, whether or not the last flush failed
    std::optional<std::uint64_t> device;
};

/// Write, with replaceFile(). Of the document's own file it takes no version that another program has
/// written, and does not write it onto a disk that is not the one it was on: where a drive was, its empty
/// folder may be left, on another disk, and a drawing saved there is not found again.
/// \param stop the file is not replaced any more from then on
SaveOutcome carryOut(const SaveJob& job, const std::stop_token& stop = {});

} // namespace siphonwright
