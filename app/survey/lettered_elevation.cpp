#include "app/drawing/ink.h"
#include "app/drawing/text.h"
#include "app/rules/pencil.h"
#include "app/survey/blank_form.h"

#include <QPainter>

#include <array>

/// Where the letters are on an engine in its frame, not to scale.
namespace siphonwright::survey {

namespace {

using namespace drawing;
using rules::At;
using rules::Pencil;

constexpr double rail_z = 18;
constexpr double floor_z = 5;
constexpr double front_x = 22; ///< of the block
constexpr double rear_x = 62;

QPointF page(At at)
{
    return {at.x, rules::drawing_height_mm - at.z};
}

/// A letter in a circle, with a thin line to what it stands for.
void letter(QPainter& painter, const Palette& palette, const char* text, At centre, At of)
{
    constexpr double radius_mm = 2.1;
    constexpr double lettering_mm = 2.3;
    painter.setPen(QPen(palette.ink, thin_mm));
    painter.drawLine(page(centre), page(of));
    painter.setBrush(palette.ground);
    painter.setPen(QPen(palette.ink, medium_mm));
    painter.drawEllipse(page(centre), radius_mm, radius_mm);
    paintWeightedText(painter, page(centre) + QPointF(0, lettering_mm / 2), QString::fromLatin1(text),
                      Anchor::centre, palette.text, lettering_mm, Weight::strong);
}

void tankWithMarks(QPainter& painter, const Palette& palette)
{
    painter.setPen(QPen(palette.ink, edge_mm));
    painter.setBrush(palette.ground);
    painter.drawRoundedRect(QRectF(page({6, 55}), page({16, 44})), 1.2, 1.2);
    painter.drawRect(QRectF(page({9, 57}), page({13, 55})));
    painter.setPen(QPen(palette.ink, thin_mm));
    for (const double z : {46.5, 49.0, 51.5})
        painter.drawLine(page({12.5, z}), page({16, z}));
}

void vehicle(QPainter& painter, const Palette& palette)
{
    Pencil pencil(painter, palette);
    pencil.ground(floor_z);
    pencil.bar({2, rail_z}, {82, rail_z});
    pencil.engine({front_x, 23}, {rear_x, 47});
    pencil.thermostat({31, 49.5});
    tankWithMarks(painter, palette);
    pencil.port({28, 28});
    pencil.port({58, 41});
    painter.setPen(QPen(palette.ink, hairline_mm, Qt::DashLine));
    painter.drawLine(page({front_x, 21.5}), page({front_x, 10}));
    painter.drawLine(page({rear_x, 21.5}), page({rear_x, 10}));
    pencil.dimension({front_x, 12}, {rear_x, 12}, "");
    pencil.dimension({74, floor_z}, {74, rail_z}, "");
    pencil.text({front_x, 8.2}, QT_TRANSLATE_NOOP("siphonwright::rules", "station 0"), Anchor::centre);
    pencil.arrow({14, 32}, {6, 32});
    pencil.text({10, 33.6}, QT_TRANSLATE_NOOP("siphonwright::rules", "front"), Anchor::centre);
    pencil.text({66, 15}, QT_TRANSLATE_NOOP("siphonwright::rules", "rail"));
    painter.setPen(QPen(palette.ink, hairline_mm, Qt::DashLine));
    painter.drawLine(page({28, 28}), page({58, 41}));
}

} // namespace

void paintLetteredElevation(QPainter& painter, const QRectF& area, const Palette& palette)
{
    struct Letter {
        const char* text;
        At centre;
        At of;
    };
    constexpr std::array letters = {
        Letter{"A", {50, 21}, {46, 26}},       Letter{"B", {48, 51}, {44, 44}},
        Letter{"C", {33, 32}, {28.8, 28.8}},   Letter{"D", {66, 45}, {59, 41.5}},
        Letter{"E", {37, 55}, {32, 50.5}},     Letter{"F", {17, 58}, {12, 56.5}},
        Letter{"G", {20.5, 43.5}, {16, 46.5}}, Letter{"H", {21.5, 49}, {16, 49}},
        Letter{"J", {20.5, 54}, {16, 51.5}},   Letter{"K", {42, 12}, {42, 12}},
        Letter{"L", {74, 11}, {74, 11}},       Letter{"M", {80, 11}, {80, 5}},
        Letter{"N", {43, 36.5}, {43, 34.5}},   Letter{"P", {10, 10}, {10, 5}},
        Letter{"R", {10, 23}, {10, 18.5}},     Letter{"S", {69, 35}, {62, 35}},
    };
    const double scale =
        std::min(area.width() / rules::drawing_width_mm, area.height() / rules::drawing_height_mm);
    painter.save();
    painter.translate(area.center());
    painter.scale(scale, scale);
    painter.translate(-rules::drawing_width_mm / 2, -rules::drawing_height_mm / 2);
    vehicle(painter, palette);
    for (const Letter& one : letters)
        letter(painter, palette, one.text, one.centre, one.of);
    painter.restore();
}

} // namespace siphonwright::survey
