#pragma once

#include "app/drawing/elevation.h"

namespace siphonwright::drawing {

/// How everything on the screen looks; paper has a palette of its own.
enum class Look { light, dark, contrast, contrast_dark };

/// Whether it is one of the two of high contrast: black on white, white on black.
inline bool isContrast(Look look)
{
    return look == Look::contrast || look == Look::contrast_dark;
}

/// Text stands off every ground it is written on by at least 4.5:1, in high contrast by 7:1 (WCAG 2.1,
/// success criteria 1.4.3 and 1.4.6). In high contrast lines that say something stand off by 4.5:1 as well;
/// the grid is a help to the eye, says nothing and stays faint.
Palette paletteOf(Look look);

/// Height of the usual text on the screen, px.
constexpr int usual_text_px = 13;
/// How many times the usual a widget's text is, so that what stands beside it grows with it.
double textScale(const QFont& font);

} // namespace siphonwright::drawing
