#pragma once

#include "core/sketch/sketch.h"

#include <QMap>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

class QTextStream;

/// Reading what was typed behind a command.
namespace siphonwright::headless {

/// What a command understands. Options begin with "--"; after "--" alone everything is a file.
struct Known {
    struct Valued {
        const char* option;
        const char* needs; ///< "the name of a file to write": said when the value is empty
    };
    const char* command;
    std::vector<const char*> flags;
    std::vector<Valued> valued; ///< written "--option VALUE" or "--option=VALUE"
    int most_files = 1;
    const char* file =
        QT_TRANSLATE_NOOP("siphonwright::headless", "a sketch file"); ///< what it needs at least one of
};

struct Arguments {
    QStringList files; ///< at least one
    QStringList flags;
    QMap<QString, QString> values;

    bool has(const char* flag) const { return flags.contains(QLatin1String(flag)); }
    std::optional<QString> value(const char* option) const;
};

/// Nothing, with a sentence on `err`, when an argument is not known or something is missing.
std::optional<Arguments> understood(const QStringList& given, const Known& known, QTextStream& err);

/// Nothing, with what is wrong on `err`, when the file cannot be read.
std::optional<Sketch> opened(const QString& file, QTextStream& err);

} // namespace siphonwright::headless
