#include "app/headless/headless.h"

#include "app/headless/commands.h"

#include <QCoreApplication>
#include <QTextStream>

#include <algorithm>
#include <iterator>

namespace siphonwright {

namespace {

QString usage()
{
    return QCoreApplication::translate(
        "siphonwright::headless",
        "siphonwright [FILE]                       open the window\n"
        "siphonwright check FILE... [--json] [--bands]\n"
        "                                          judge sketches; --bands: over all that is assumed\n"
        "siphonwright warm-up FILE [--hours H] [--ambient T] [--csv OUT]\n"
        "                                          how the engine warms up\n"
        "siphonwright fill FILE [--json] [--frames DIR]\n"
        "                                          tell how it fills and what air stays; --frames: as\n"
        "                                          numbered pictures, moment-0001.png and so on\n"
        "siphonwright parts FILE [--prices LIST.csv] [--csv OUT.csv]\n"
        "                                          list the parts, cuts and what is not priced\n"
        "siphonwright diagnose FILE [--json]       judge its readings and say what explains them\n"
        "siphonwright sheet FILE --output OUT.pdf|.svg|.png\n"
        "             [--paper A4|A3|Letter|Tabloid] [--portrait] [--colour]\n"
        "             [--parts] [--photo] [--student] [--third-angle]\n"
        "             [--pages NAMES|all] [--scale 1:N] [--dpi N] [--logo PICTURE]\n"
        "siphonwright sheet FILE... --output-dir DIR\n"
        "                                          draw the sheet; --pages: drawing, fitting, checklist,\n"
        "                                          parts, estimate, assumptions, with commas between;\n"
        "                                          --scale: over several pages where it does not fit;\n"
        "                                          --photo: over the photo; --student: without findings;\n"
        "                                          --third-angle: the end view placed so;\n"
        "                                          --output-dir: each sketch as a PDF in a folder\n"
        "siphonwright survey-form OUT.pdf [--paper A4|Letter] [--inch]\n"
        "                                          a blank page to measure with at the vehicle\n"
        "siphonwright --help | --version\n"
        "\n"
        "Exit code: 0 nothing stops the job; 1 at least one stop; 2 a file could not be read or\n"
        "written, or an argument is wrong.\n");
}

struct Command {
    const char* name;
    int (*run)(const QStringList& arguments, QTextStream& out, QTextStream& err);
};
constexpr Command commands[] = {{"check", headless::check},   {"diagnose", headless::diagnose},
                                {"fill", headless::fill},     {"parts", headless::parts},
                                {"sheet", headless::sheet},   {"survey-form", headless::surveyForm},
                                {"warm-up", headless::warmUp}};

bool asksForHelp(const QString& word)
{
    return word == QLatin1String("--help") || word == QLatin1String("-h") || word == QLatin1String("help");
}

} // namespace

bool isHeadless(const QString& word)
{
    const bool is_command = std::any_of(std::begin(commands), std::end(commands), [&](const Command& known) {
        return word == QLatin1String(known.name);
    });
    return is_command || asksForHelp(word) || word == QLatin1String("--version");
}

int runHeadless(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const QString command = arguments.value(0);
    if (asksForHelp(command) || asksForHelp(arguments.value(1))) {
        out << usage();
        return nothing_stops;
    }
    for (const Command& known : commands)
        if (command == QLatin1String(known.name))
            return known.run(arguments.mid(1), out, err);
    if (command == QLatin1String("--version")) {
        out << "Siphonwright " SIPHONWRIGHT_VERSION "\n";
        return nothing_stops;
    }
    err << QCoreApplication::translate("siphonwright::headless", "\"%1\" is not a command.").arg(command)
        << '\n'
        << usage();
    return not_understood;
}

} // namespace siphonwright
