#pragma once

#include "app/drawing/look.h"

#include <QIcon>
#include <QString>

namespace siphonwright::look {

/// What the desktop asks for, as far as Qt tells: dark where its windows are, high contrast where it sets
/// black on white or white on black with nothing between. Takes apply() back.
drawing::Look ofDesktop();

/// Style, palette and lettering of what apply() puts on, which then adds the style sheet.
void dress(drawing::Look look, double text_scale);

/// Paper and ink for every widget of the program: palette, lettering and style sheet.
/// @param text_scale how many times the usual text is, 1 to 2.
void apply(drawing::Look look, double text_scale);

/// One of the program's line icons, in the ink of the look, sharp at every size. Null where there is none.
QIcon icon(const QString& name, drawing::Look look);

/// WCAG 2.1, "contrast ratio": (lighter + 0.05) / (darker + 0.05) of the relative luminances, 1 to 21.
/// Colours are taken as opaque.
double contrastRatio(const QColor& a, const QColor& b);

} // namespace siphonwright::look
