#include "app/headless/arguments.h"

#include "app/document/document.h"
#include "app/language/tr.h"

#include <QTextStream>

#include <algorithm>

namespace siphonwright::headless {

namespace {

/// The value of "--name value" or "--name=value" at `i`; moves past it.
std::optional<QString> valueOf(const QStringList& given, qsizetype& i, const QString& name)
{
    const QString& argument = given[i];
    if (argument.startsWith(name + QLatin1Char('=')))
        return argument.mid(name.size() + 1);
    if (argument != name)
        return std::nullopt;
    ++i;
    return given.value(i);
}

/// Takes an option at `i`; no, when it is none that is known, or lacks its value.
bool takeOption(Arguments& out, const QStringList& given, qsizetype& i, const Known& known, QTextStream& err)
{
    const QString argument = given[i];
    for (const Known::Valued& valued : known.valued) {
        const QString option = QLatin1String(valued.option);
        const std::optional<QString> value = valueOf(given, i, option);
        if (!value)
            continue;
        if (value->isEmpty()) {
            err << tr("%1 needs %2.").arg(option, tr(valued.needs)) << '\n';
            return false;
        }
        out.values[option] = *value;
        return true;
    }
    const bool is_flag = std::any_of(known.flags.begin(), known.flags.end(),
                                     [&](const char* flag) { return argument == QLatin1String(flag); });
    if (is_flag)
        out.flags << argument;
    else
        err << tr("%1 does not know what to do with \"%2\".").arg(QLatin1String(known.command), argument)
            << '\n';
    return is_flag;
}

} // namespace

std::optional<QString> Arguments::value(const char* option) const
{
    const auto found = values.find(QLatin1String(option));
    return found == values.end() ? std::nullopt : std::optional<QString>(*found);
}

std::optional<Arguments> understood(const QStringList& given, const Known& known, QTextStream& err)
{
    Arguments out;
    bool options = true;
    for (qsizetype i = 0; i < given.size(); ++i) {
        const QString argument = given[i];
        if (options && argument == QLatin1String("--")) {
            options = false;
        } else if (options && argument.startsWith(QLatin1String("--"))) {
            if (!takeOption(out, given, i, known, err))
                return std::nullopt;
        } else if (out.files.size() < known.most_files) {
            out.files << argument;
        } else {
            err << tr("%1 does not know what to do with \"%2\".").arg(QLatin1String(known.command), argument)
                << '\n';
            return std::nullopt;
        }
    }
    if (!out.files.isEmpty())
        return out;
    err << tr("%1 needs %2.").arg(QLatin1String(known.command), tr(known.file)) << '\n';
    return std::nullopt;
}

std::optional<Sketch> opened(const QString& file, QTextStream& err)
{
    Document document;
    const QStringList problems = document.open(file);
    for (const QString& problem : problems)
        err << file << ": " << problem << '\n';
    return problems.isEmpty() ? std::optional<Sketch>(document.sketch()) : std::nullopt;
}

} // namespace siphonwright::headless
