#include "app/window/look.h"

#include <QApplication>
#include <QFile>
#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QPixmap>
#include <QStyleFactory>
#include <QStyleHints>
#include <QSvgRenderer>

#include <algorithm>
#include <cmath>

namespace siphonwright::look {

namespace {

/// Lines round fields and between parts of the window: they say what can be typed into, so that high contrast
/// draws them like ink.
QColor frameOf(const drawing::Palette& ink, drawing::Look look)
{
    return look == drawing::Look::contrast ? ink.faint : ink.grid_strong;
}

QPalette paletteFor(const drawing::Palette& ink, drawing::Look look)
{
    const QColor panel = look == drawing::Look::dark ? ink.ground.lighter(112) : ink.ground.darker(103);
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
    palette.setColor(QPalette::Mid, frameOf(ink, look));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, ink.faint);
    return palette;
}

/// %1 line, %2 accent, %3 warning ink, %4 faint ink, %5 ground, %6 lettering, %7 its size, %8 of titles. The
/// lettering stands here too, since a desktop's own fonts for single kinds of widgets win over the
/// application's.
QString styleSheet(const drawing::Palette& ink, drawing::Look look, double text_scale)
{
    return QStringLiteral(
               "QWidget { font-family: \"%6\"; font-size: %7px; }"
               "QToolBar { border: 0; border-bottom: 1px solid %1; spacing: 1px; padding: 2px; }"
               "QToolButton { border: 1px solid transparent; border-radius: 3px; padding: 3px 6px; }"
               "QToolButton:hover { border-color: %1; }"
               "QToolButton:checked { border-color: %2; color: %2; }"
               "QToolButton:focus { border-color: %2; }"
               "QDockWidget { font-family: \"%6\"; font-size: %7px; }"
               "QDockWidget::title { padding: 4px 8px; border-bottom: 1px solid %1; font-size: %7px; }"
               "QStatusBar { border-top: 1px solid %1; }"
               // A style's own pictures on them are not of the program's family.
               "QDialogButtonBox { dialogbuttonbox-buttons-have-icons: 0; }"
               "QLineEdit, QPlainTextEdit { border: 1px solid %1; border-radius: 2px; padding: 1px 3px; }"
               "QLineEdit:focus, QPlainTextEdit:focus { border-color: %2; }"
               "QLineEdit[refused=\"true\"] { border: 1px solid %3; }"
               "QLabel[role=\"problem\"] { color: %3; }"
               "QLabel[role=\"title\"] { font-weight: 600; }"
               "QLabel[role=\"page-title\"] { font-weight: 600; font-size: %8px; }"
               "QLabel[role=\"heading\"] { font-weight: 600; padding-top: 6px; border-bottom: 1px solid %1; }"
               "QLabel[role=\"faint\"] { color: %4; }"
               "QPushButton[role=\"link\"] { border: 0; color: %2; text-align: left; padding: 2px; }"
               "QPushButton[role=\"link\"]:hover, QPushButton[role=\"link\"]:focus "
               "{ text-decoration: underline; }"
               "QFrame#first-steps, QFrame#file-strip { background: %5; border: 0; border-bottom: 1px solid "
               "%1; }"
               "QFrame#find-bar { background: %5; border: 1px solid %1; }"
               "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; }")
        .arg(frameOf(ink, look).name(), ink.accent.name(), ink.stop.name(), ink.faint.name(),
             ink.ground.name(), drawing::lettering().family())
        .arg(std::lround(drawing::usual_text_px * text_scale))
        .arg(std::lround(18 * text_scale));
}

/// Drawn anew at each size that is asked for, so that it is sharp on every screen.
class LineIcon : public QIconEngine {
public:
    LineIcon(const QByteArray& svg, const drawing::Palette& ink) : svg_(svg), ink_(ink) {}

    void paint(QPainter* painter, const QRect& where, QIcon::Mode mode, QIcon::State) override
    {
        QByteArray svg = svg_;
        const QColor& ink = mode == QIcon::Disabled   ? ink_.faint
                            : mode == QIcon::Selected ? ink_.ground // it lies on the highlight
                                                      : ink_.text;
        svg.replace("currentColor", ink.name().toLatin1());
        QSvgRenderer(svg).render(painter, where);
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override
    {
        QPixmap drawn(size);
        drawn.fill(Qt::transparent);
        QPainter painter(&drawn);
        painter.setRenderHint(QPainter::Antialiasing);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return drawn;
    }
    QIconEngine* clone() const override { return new LineIcon(svg_, ink_); }

private:
    QByteArray svg_;
    drawing::Palette ink_;
};

/// WCAG 2.1, "relative luminance", for sRGB.
double luminance(const QColor& colour)
{
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

} // namespace

double contrastRatio(const QColor& a, const QColor& b)
{
    const auto [darker, lighter] = std::minmax({luminance(a), luminance(b)});
    return (lighter + 0.05) / (darker + 0.05);
}

drawing::Look ofDesktop()
{
    constexpr double nothing_between = 20.9; // black and white: 21
    QApplication::setPalette(QPalette());
    const QPalette palette = QGuiApplication::palette();
    const QColor ground = palette.color(QPalette::Window);
    const QColor text = palette.color(QPalette::WindowText);
    if (contrastRatio(ground, text) > nothing_between)
        return drawing::Look::contrast;
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    if (QGuiApplication::styleHints()->colorScheme() == Qt::ColorScheme::Dark)
        return drawing::Look::dark;
#endif
    return luminance(ground) < luminance(text) ? drawing::Look::dark : drawing::Look::light;
}

void apply(drawing::Look look, double text_scale)
{
    const drawing::Palette ink = drawing::paletteOf(look);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(paletteFor(ink, look));
    QFont font = drawing::lettering();
    font.setPixelSize(static_cast<int>(std::lround(drawing::usual_text_px * text_scale)));
    QApplication::setFont(font);
    QApplication::setFont(font, "QDockWidgetTitle"); // a desktop has one of its own for it
    qApp->setStyleSheet(styleSheet(ink, look, text_scale));
}

QIcon icon(const QString& name, drawing::Look look)
{
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return QIcon(new LineIcon(file.readAll(), drawing::paletteOf(look)));
}

} // namespace siphonwright::look
