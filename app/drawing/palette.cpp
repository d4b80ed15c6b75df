#include "app/drawing/look.h"

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
    p.faint = rgb(0x606469);
    p.engine_fill = rgb(0xefece4);
    p.jacket_fill = rgba(0x7fa3b8, 70);
    p.heater_fill = rgb(0xf4e3cf);
    p.supply = rgb(0x2f6690);
    p.return_ = rgb(0xa85510);
    p.air = rgb(0xffffff);
    p.held = rgb(0x6d5a9c);
    p.level = rgb(0x1f6f8c);
    p.stop = rgb(0x9b1c2e);
    p.caution = rgb(0x8a5600);
    p.advice = rgb(0x33658a);
    p.accent = rgb(0x7b3fa0);
    p.text = rgb(0x22262b);
    p.keep_clear = rgb(0x8f5035);
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
    p.faint = rgb(0xa3a8af);
    p.engine_fill = rgb(0x2a2e33);
    p.jacket_fill = rgba(0x6f9cb5, 70);
    p.heater_fill = rgb(0x453a2c);
    p.supply = rgb(0x7fb6e0);
    p.return_ = rgb(0xf0a35a);
    p.air = rgb(0xf7f7f2);
    p.held = rgb(0xb3a2e0);
    p.level = rgb(0x63bcd6);
    p.stop = rgb(0xff8590);
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

/// Black on white, every ink dark, every fill pale: for bright sun and weak eyes.
static Palette contrastPalette()
{
    Palette p;
    p.ground = rgb(0xffffff);
    p.grid = rgb(0xe6e6e6);
    p.grid_strong = rgb(0xc4c4c4);
    p.ink = rgb(0x000000);
    p.faint = rgb(0x404040);
    p.engine_fill = rgb(0xf2f2f2);
    p.jacket_fill = rgba(0x6fa8cc, 70);
    p.heater_fill = rgb(0xf6ead8);
    p.supply = rgb(0x003f80);
    p.return_ = rgb(0x7a3300);
    p.air = rgb(0xffffff);
    p.held = rgb(0x4b2f8f);
    p.level = rgb(0x004a60);
    p.stop = rgb(0x8f0014);
    p.caution = rgb(0x6b4300);
    p.advice = rgb(0x003f80);
    p.accent = rgb(0x64009f);
    p.text = rgb(0x000000);
    p.keep_clear = rgb(0x6e3410);
    p.cold = rgb(0xcfe4f5);
    p.tepid = rgb(0xb87a70);
    p.hot = rgb(0x5a0818);
    return p;
}

/// White on black, every ink pale, every fill dark: for eyes that a bright ground blinds. What is selected is
/// yellow, which no part is.
static Palette darkContrastPalette()
{
    Palette p;
    p.ground = rgb(0x000000);
    p.grid = rgb(0x1e1e1e);
    p.grid_strong = rgb(0x3a3a3a);
    p.ink = rgb(0xffffff);
    p.faint = rgb(0xcccccc);
    p.engine_fill = rgb(0x161616);
    p.jacket_fill = rgba(0x4f8fb5, 70);
    p.heater_fill = rgb(0x2b2010);
    p.supply = rgb(0x8fd0ff);
    p.return_ = rgb(0xffb870);
    p.air = rgb(0xffffff);
    p.held = rgb(0xd0b8ff);
    p.level = rgb(0x6fe0ff);
    p.stop = rgb(0xff9aa2);
    p.caution = rgb(0xffd060);
    p.advice = rgb(0xa8d8ff);
    p.accent = rgb(0xffff00);
    p.text = rgb(0xffffff);
    p.keep_clear = rgb(0xffb890);
    p.cold = rgb(0x1d4a70);
    p.tepid = rgb(0xc08080);
    p.hot = rgb(0xffe8b8);
    return p;
}

Palette paletteOf(Look look)
{
    switch (look) {
    case Look::light:
        return Palette::light();
    case Look::dark:
        return Palette::dark();
    case Look::contrast:
        return contrastPalette();
    case Look::contrast_dark:
        return darkContrastPalette();
    }
    return Palette::light();
}

double textScale(const QFont& font)
{
    return font.pixelSize() > 0 ? double(font.pixelSize()) / usual_text_px : 1;
}

} // namespace siphonwright::drawing
