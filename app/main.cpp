#include "app/document/vector_state.h"
#include "app/headless/headless.h"
#include "app/window/file_commands.h"
#include "app/window/main_window.h"

#include <QApplication>
#include <QTextStream>

namespace {

void nameProgram()
{
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(SIPHONWRIGHT_VERSION));
}

} // namespace

int main(int argc, char** argv)
{
    nameProgram();
    if (argc > 1 && siphonwright::isHeadless(QString::fromLocal8Bit(argv[1]))) {
        // Fonts and pictures need a platform, but no display.
        qputenv("QT_QPA_PLATFORM", "offscreen");
        const QApplication app(argc, argv);
        siphonwright::leaveVectorState();
        QTextStream out(stdout);
        QTextStream err(stderr);
        return siphonwright::runHeadless(QCoreApplication::arguments().mid(1), out, err);
    }
    const QApplication app(argc, argv);
    siphonwright::MainWindow window;
    window.show();
    if (const QStringList files = QCoreApplication::arguments().mid(1); !files.isEmpty())
        window.files().open(files.first());
    else
        window.files().startWelcome();
    return QApplication::exec();
}
