#include "app/drawing/elevation.h"

namespace siphonwright::drawing {

namespace {

QColor rgb(unsigned value)
{
    return QColor::fromRgb(QRgb(value));
}
QColor rgba(unsigned value, int alpha)
{
    QColor colour = rgb(value);
    colour.setAlpha(alpha);
    return colour;
}

} // namespace

// Blue and orange stay apart for every common kind of colour blindness; shapes and line treatment say the
// same once more.
Palette Palette::light()
{
    Palette p;
    p.ground = rgb(0xfbfaf6);
    p.grid = rgb(0xece9e1);
    p.grid_strong = rgb(0xdcd8cd);
    p.ink = rgb(0x22262b);
    p.faint = rgb(0x8b8f94);
    p.engine_fill = rgb(0xefece4);
    p.jacket_fill = rgba(0x7fa3b8, 70);
    p.heater_fill = rgb(0xf4e3cf);
    p.supply = rgb(0x2f6690);
    p.return_ = rgb(0xc26a1b);
    p.air = rgb(0xffffff);
    p.held = rgb(0x6d5a9c);
    p.level = rgb(0x2a7f9e);
    p.stop = rgb(0x9b1c2e);
    p.caution = rgb(0xb06f00);
    p.advice = rgb(0x33658a);
    p.accent = rgb(0x7b3fa0);
    p.text = rgb(0x22262b);
    p.keep_clear = rgb(0x9c5a3c);
    p.cold = rgb(0xd6e6f2);
    p.tepid = rgb(0xc98d84);
    p.hot = rgb(0x6e1426);
    return p;
}

Palette Palette::dark()
{
    Palette p;
    p.ground = rgb(0x1d2024);
    p.grid = rgb(0x272b30);
    p.grid_strong = rgb(0x343940);
    p.ink = rgb(0xe4e2dc);
    p.faint = rgb(0x888d94);
    p.engine_fill = rgb(0x2a2e33);
    p.jacket_fill = rgba(0x6f9cb5, 70);
    p.heater_fill = rgb(0x453a2c);
    p.supply = rgb(0x7fb6e0);
    p.return_ = rgb(0xf0a35a);
    p.air = rgb(0xf7f7f2);
    p.held = rgb(0xb3a2e0);
    p.level = rgb(0x63bcd6);
    p.stop = rgb(0xff7b87);
    p.caution = rgb(0xf2bd4b);
    p.advice = rgb(0x8dbbe0);
    p.accent = rgb(0xcf9bf0);
    p.text = rgb(0xe4e2dc);
    p.keep_clear = rgb(0xd69a78);
    p.cold = rgb(0x24405a);
    p.tepid = rgb(0xb0706f);
    p.hot = rgb(0xffe0a8);
    return p;
}

Palette Palette::paper()
{
    Palette p;
    p.ground = rgb(0xffffff);
    p.grid = rgb(0xe6e6e6);
    p.grid_strong = rgb(0xcccccc);
    p.ink = rgb(0x000000);
    p.faint = rgb(0x707070);
    p.engine_fill = rgb(0xf4f4f4);
    p.jacket_fill = rgb(0xe2e2e2);
    p.heater_fill = rgb(0xececec);
    p.supply = rgb(0x000000);
    p.return_ = rgb(0x000000);
    p.air = rgb(0xffffff);
    p.held = rgb(0x505050);
    p.level = rgb(0x303030);
    p.stop = rgb(0x000000);
    p.caution = rgb(0x000000);
    p.advice = rgb(0x000000);
    p.accent = rgb(0x000000);
    p.text = rgb(0x000000);
    p.keep_clear = rgb(0x606060);
    p.cold = rgb(0xe8e8e8);
    p.tepid = rgb(0xa0a0a0);
    p.hot = rgb(0x404040);
    return p;
}

} // namespace siphonwright::drawing
