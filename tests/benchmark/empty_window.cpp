// What any program of this kind takes to start: an empty main window.

#include <QApplication>
#include <QMainWindow>

int main(int argc, char** argv)
{
    const QApplication app(argc, argv);
    QMainWindow window;
    window.resize(1280, 720);
    window.show();
    return QApplication::exec();
}
