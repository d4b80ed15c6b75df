#include "app/window/look.h"

#include "app/drawing/elevation.h"

#include <QApplication>
#include <QFile>
#include <QPainter>
#include <QPalette>
#include <QPixmap>
#include <QStyleFactory>
#include <QSvgRenderer>

namespace siphonwright::look {

namespace {

QPalette paletteFor(const drawing::Palette& ink, bool dark)
{
    const QColor panel = dark ? ink.ground.lighter(112) : ink.ground.darker(103);
    QPalette palette;
    palette.setColor(QPalette::Window, panel);
    palette.setColor(QPalette::WindowText, ink.text);
    palette.setColor(QPalette::Base, ink.ground);
    palette.setColor(QPalette::AlternateBase, panel);
    palette.setColor(QPalette::Text, ink.text);
    palette.setColor(QPalette::PlaceholderText, ink.faint);
    palette.setColor(QPalette::Button, panel);
    palette.setColor(QPalette::ButtonText, ink.text);
    palette.setColor(QPalette::ToolTipBase, ink.ground);
    palette.setColor(QPalette::ToolTipText, ink.text);
    palette.setColor(QPalette::Highlight, ink.accent);
    palette.setColor(QPalette::HighlightedText, ink.ground);
    palette.setColor(QPalette::Link, ink.accent);
    palette.setColor(QPalette::Mid, ink.grid_strong);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, ink.faint);
    return palette;
}

constexpr int text_px = 13;

/// %1 line, %2 accent, %3 warning ink, %4 faint ink, %5 ground, %6 lettering, %7 its size. The lettering
/// stands here too, since a desktop's own fonts for single kinds of widgets win over the application's.
QString styleSheet(const drawing::Palette& ink)
{
    return QStringLiteral(
               "QWidget { font-family: \"%6\"; font-size: %7px; }"
               "QToolBar { border: 0; border-bottom: 1px solid %1; spacing: 1px; padding: 2px; }"
               "QToolButton { border: 1px solid transparent; border-radius: 3px; padding: 3px 6px; }"
               "QToolButton:hover { border-color: %1; }"
               "QToolButton:checked { border-color: %2; color: %2; }"
               "QToolButton:focus { border-color: %2; }"
               "QDockWidget::title { padding: 4px 8px; border-bottom: 1px solid %1; }"
               "QStatusBar { border-top: 1px solid %1; }"
               "QLineEdit, QPlainTextEdit { border: 1px solid %1; border-radius: 2px; padding: 1px 3px; }"
               "QLineEdit:focus, QPlainTextEdit:focus { border-color: %2; }"
               "QLineEdit[refused=\"true\"] { border: 1px solid %3; }"
               "QLabel[role=\"problem\"] { color: %3; }"
               "QLabel[role=\"title\"] { font-weight: 600; }"
               "QLabel[role=\"page-title\"] { font-weight: 600; font-size: 18px; }"
               "QLabel[role=\"heading\"] { font-weight: 600; padding-top: 6px; border-bottom: 1px solid %1; }"
               "QLabel[role=\"faint\"] { color: %4; }"
               "QPushButton[role=\"link\"] { border: 0; color: %2; text-align: left; padding: 2px; }"
               "QPushButton[role=\"link\"]:hover, QPushButton[role=\"link\"]:focus "
               "{ text-decoration: underline; }"
               "QFrame#first-steps { background: %5; border: 0; border-bottom: 1px solid %1; }"
               "QFrame#find-bar { background: %5; border: 1px solid %1; }"
               "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; }")
        .arg(ink.grid_strong.name(), ink.accent.name(), ink.stop.name(), ink.faint.name(), ink.ground.name(),
             drawing::lettering().family())
        .arg(text_px);
}

} // namespace

void apply(bool dark)
{
    const drawing::Palette ink = dark ? drawing::Palette::dark() : drawing::Palette::light();
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(paletteFor(ink, dark));
    QFont font = drawing::lettering();
    font.setPixelSize(text_px);
    QApplication::setFont(font);
    qApp->setStyleSheet(styleSheet(ink));
}

QIcon icon(const QString& name, bool dark)
{
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const drawing::Palette ink = dark ? drawing::Palette::dark() : drawing::Palette::light();
    QByteArray svg = file.readAll();
    svg.replace("currentColor", ink.text.name().toLatin1());
    QSvgRenderer renderer(svg);
    QIcon icon;
    for (const int size : {20, 40, 60}) {
        QPixmap pixmap(size, size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        renderer.render(&painter);
        painter.end();
        icon.addPixmap(pixmap);
    }
    return icon;
}

} // namespace siphonwright::look
