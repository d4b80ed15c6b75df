#pragma once

#include "app/document/disk.h"

#include <QFile>

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <optional>

namespace siphonwright::test {

/// A disk that fails at one step, with one error, or that is another than before.
class FailingDisk : public Disk {
public:
    enum class Step { none, create, write, write_midway, flush, replace, flush_folder, short_writes };
    Step step = Step::none;
    int error = EIO;
    bool other_device = false; ///< than at first

    int create(QFile& file) const override { return step == Step::create ? error : Disk::create(file); }
    int write(QFile& file, const char* bytes, qint64 count, qint64& written) const override
    {
        constexpr qint64 piece = 7;
        if (step == Step::write || (step == Step::write_midway && file.size() > 100))
            return error;
        const bool in_pieces = step == Step::short_writes || step == Step::write_midway;
        return Disk::write(file, bytes, in_pieces ? std::min(count, piece) : count, written);
    }
    int flush(QFile& file) const override { return step == Step::flush ? error : Disk::flush(file); }
    int replace(const QString& from, const QString& to) const override
    {
        return step == Step::replace ? error : Disk::replace(from, to);
    }
    int flushFolder(const QString& folder) const override
    {
        return step == Step::flush_folder ? error : Disk::flushFolder(folder);
    }
    std::optional<std::uint64_t> device(const QString& folder) const override
    {
        const auto real = Disk::device(folder);
        return real && other_device ? *real + 1 : real;
    }
};

} // namespace siphonwright::test
