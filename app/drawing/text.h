#pragma once

#include "app/drawing/elevation.h"

/// Measuring text in millimetres, before it is written.
namespace siphonwright::drawing {

enum class Weight { regular, strong };

/// The heavier cut of the program's lettering, for headings.
QFont strongLettering();

/// Advance of a text whose capitals are `lettering_mm` high, mm.
double textWidth(const QString& text, double lettering_mm, Weight weight = Weight::regular);

/// Height of a line from the lowest descender to the highest accent, as multiples of the capitals' height.
constexpr double descent_share = 0.36;
constexpr double ascent_share = 1.25;

void paintWeightedText(QPainter& painter, QPointF at, const QString& text, Anchor anchor,
                       const QColor& colour, double lettering, Weight weight, double angle_deg = 0);

/// A rim of ground colour round letters that are then written over it, so that lines beneath do not strike
/// them through.
void paintHalo(QPainter& painter, const Style& style, QPointF at, const QString& text, Anchor anchor,
               const QColor& ground, double angle_deg);

/// What stays on one line: words, and figures with their fractions and units.
QStringList unbroken(const QString& text);

/// Break at spaces (and within words longer than a line) so that no line is wider than `width_mm`. A number
/// stays with its fraction and its unit where a line has room for them.
QStringList wrapped(const QString& text, double width_mm, double lettering_mm,
                    Weight weight = Weight::regular);

/// In no more lines than wrapped() makes, but of like lengths, so that no word is left alone on the last.
QStringList wrappedEvenly(const QString& text, double width_mm, double lettering_mm, Weight weight);

} // namespace siphonwright::drawing
