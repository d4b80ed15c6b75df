#include "app/window/look.h"

#include "app/panels/text_size.h"

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
#include <QVariant>

#include <algorithm>
#include <cmath>

namespace siphonwright::look {

namespace {

// Properties of the program. Style, palette and style sheet each look at every widget there is.
constexpr const char* dressed = "look_dressed"; ///< in what, but for the style sheet
constexpr const char* applied = "look_applied"; ///< in what, altogether

QString nameOf(drawing::Look look, double text_scale)
{
    return QStringLiteral("%1 %2").arg(static_cast<int>(look)).arg(text_scale);
}

/// Lines round fields and between parts of the window: they say what can be typed into, so that high contrast
/// draws them like ink.
QColor frameOf(const drawing::Palette& ink, drawing::Look look)
{
    return drawing::isContrast(look) ? ink.faint : ink.grid_strong;
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

/// Text of another size than the usual.
QString textSizes(double text_scale)
{
    QString out;
    for (const int px : panels::text_sizes_px)
        out += QStringLiteral("*[text_px=\"%1\"] { font-size: %2px; }")
                   .arg(px)
                   .arg(std::lround(px * text_scale));
    return out + QStringLiteral("*[strong=\"true\"] { font-weight: 600; }");
}

/// Buttons and lists stand off by their edge alone, which their usual style leaves too faint for high
/// contrast.
QString strongEdges(const drawing::Palette& ink)
{
    return QStringLiteral("QPushButton { border: 1px solid %1; border-radius: 2px; padding: 3px 10px; }"
                          "QComboBox { border: 1px solid %1; border-radius: 2px; padding: 2px 4px; }"
                          "QPushButton:focus, QComboBox:focus { border: 2px solid %2; }"
                          "QPushButton:disabled, QComboBox:disabled { border-style: dotted; }"
                          "QPushButton:pressed, QPushButton:checked { background: %2; color: %3; }")
        .arg(ink.faint.name(), ink.accent.name(), ink.ground.name());
}

/// %1 line, %2 accent, %3 warning ink, %4 faint ink, %5 ground, %6 lettering, %7 its size, %8 of titles. Of
/// the lettering of all nothing is said here: each widget would take it in anew, a tenth of the time that the
/// program takes to start (letter()). A panel's title is a special case: while its panel has the
/// application's very font, Qt writes it in one that does not follow; a weight that no one sees makes it
/// another.
QString styleSheet(const drawing::Palette& ink, drawing::Look look, double text_scale)
{
    return QStringLiteral(
               "QToolBar { border: 0; border-bottom: 1px solid %1; spacing: 1px; padding: 2px; }"
               "QToolButton { border: 1px solid transparent; border-radius: 3px; padding: 3px 6px; }"
               "QToolButton:hover { border-color: %1; }"
               "QToolButton:checked { border-color: %2; color: %2; }"
               "QToolButton:focus { border-color: %2; }"
               "QDockWidget { font-family: \"%6\"; font-size: %7px; font-weight: 401; }"
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
               // Names of panels behind each other stay whole: where they have no room they scroll.
               "QTabBar { qproperty-elideMode: ElideNone; }"
               "QFrame#find-bar { background: %5; border: 1px solid %1; }"
               "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; }")
               .arg(frameOf(ink, look).name(), ink.accent.name(), ink.stop.name(), ink.faint.name(),
                    ink.ground.name(), drawing::lettering().family())
               .arg(std::lround(drawing::usual_text_px * text_scale))
               .arg(std::lround(18 * text_scale)) +
           textSizes(text_scale) + (drawing::isContrast(look) ? strongEdges(ink) : QString());
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
    for (const char* what_was : {dressed, applied})
        qApp->setProperty(what_was, QVariant());
    const QPalette palette = QGuiApplication::palette();
    const QColor ground = palette.color(QPalette::Window);
    const QColor text = palette.color(QPalette::WindowText);
    const bool dark = luminance(ground) < luminance(text);
    if (contrastRatio(ground, text) > nothing_between)
        return dark ? drawing::Look::contrast_dark : drawing::Look::contrast;
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    if (QGuiApplication::styleHints()->colorScheme() == Qt::ColorScheme::Dark)
        return drawing::Look::dark;
#endif
    return dark ? drawing::Look::dark : drawing::Look::light;
}

namespace {

/// All widgets with the drawing's lettering: with it a desktop's own fonts for single kinds of them go.
void letter(double text_scale)
{
    QFont font = drawing::lettering();
    font.setPixelSize(static_cast<int>(std::lround(drawing::usual_text_px * text_scale)));
    QApplication::setFont(font);
}

} // namespace

void dress(drawing::Look look, double text_scale)
{
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(paletteFor(drawing::paletteOf(look), look));
    letter(text_scale);
    qApp->setProperty(dressed, nameOf(look, text_scale));
    qApp->setProperty(applied, QVariant());
}

void apply(drawing::Look look, double text_scale)
{
    const QString wanted = nameOf(look, text_scale);
    if (qApp->property(applied) == wanted)
        return;
    if (qApp->property(dressed) != wanted)
        dress(look, text_scale);
    qApp->setStyleSheet(styleSheet(drawing::paletteOf(look), look, text_scale));
    letter(text_scale); // a style brings the desktop's fonts back
    qApp->setProperty(applied, wanted);
}

QIcon icon(const QString& name, drawing::Look look)
{
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return QIcon(new LineIcon(file.readAll(), drawing::paletteOf(look)));
}

} // namespace siphonwright::look
