#pragma once

#include <array>

/// The one table of line widths and of lettering: whatever is drawn or written on screen, sheet, and the
/// pages behind it, takes its width and height from here. Millimetres on the device, whatever the scale.
namespace siphonwright::drawing {

// Widths of the series of ISO 128 (from memory): each 1.4 times the one before, thick to thin two to one.
constexpr double hairline_mm = 0.13; ///< hatching, extension and leader lines, between rows
constexpr double thin_mm = 0.18;     ///< dimension lines, centrelines, lines to write on
constexpr double medium_mm = 0.25;   ///< outlines of what is small, cells
constexpr double edge_mm = 0.35;     ///< visible outlines, boxes
constexpr double thick_mm = 0.5;     ///< what is to be seen first
constexpr double border_mm = 0.7;    ///< frame and title block
inline constexpr std::array line_widths_mm = {hairline_mm, thin_mm, medium_mm, edge_mm, thick_mm, border_mm};

// Heights of capitals, of the series of ISO 3098 (from memory).
constexpr double small_text_mm = 1.8; ///< labels and notes on small paper, captions of cells
constexpr double text_mm = 2.5;       ///< all else
constexpr double heading_text_mm = 3.5;
constexpr double title_text_mm = 5;
constexpr double sign_text_mm = 7; ///< read from a step away
inline constexpr std::array text_heights_mm = {small_text_mm, text_mm, heading_text_mm, title_text_mm,
                                               sign_text_mm};

} // namespace siphonwright::drawing
