#include "app/document/recovery.h"
#include "app/document/vector_state.h"
#include "app/headless/headless.h"
#include "app/language/language.h"
#include "app/window/file_commands.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"

#include <QApplication>
#include <QIcon>
#include <QLocale>
#include <QTextStream>

#include <optional>

namespace {

void nameProgram()
{
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(SIPHONWRIGHT_VERSION));
    // What the desktop entry is called: by it the desktop finds name and icon of the window.
    QGuiApplication::setDesktopFileName(QStringLiteral("org.siphonwright.Siphonwright"));
}

/// A command speaks English and writes numbers with a point, whatever the system's language, unless one is
/// asked for: what reads its output reads the same everywhere.
int runCommand(QApplication& app, const QStringList& arguments, const QString& language)
{
    siphonwright::leaveVectorState();
    QLocale::setDefault(QLocale::c());
    if (!language.isEmpty())
        siphonwright::language::use(app, language);
    QTextStream out(stdout);
    QTextStream err(stderr);
    return siphonwright::runHeadless(arguments, out, err);
}

int runWindow(QApplication& app, const QStringList& files, const QString& language)
{
    siphonwright::language::use(app, language.isEmpty() ? siphonwright::settings::language.get() : language);
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/install/org.siphonwright.Siphonwright.svg")));
    siphonwright::MainWindow window;
    window.show();
    if (!files.isEmpty())
        window.files().open(files.first());
    else
        window.files().startWelcome();
    window.keepSafe(siphonwright::recoveryFolder());
    return QApplication::exec();
}

} // namespace

int main(int argc, char** argv)
{
    nameProgram();
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);
    const std::optional<QString> language = siphonwright::language::takeOption(arguments);
    if (!language) {
        QTextStream(stderr) << siphonwright::language::optionHelp() << '\n';
        return siphonwright::not_understood;
    }
    const bool is_command = !arguments.isEmpty() && siphonwright::isHeadless(arguments.first());
    if (is_command) // fonts and pictures need a platform, but no display
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    return is_command ? runCommand(app, arguments, *language) : runWindow(app, arguments, *language);
}
