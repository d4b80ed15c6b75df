#pragma once

class QWidget;

namespace siphonwright {

/// The trainer's page on air locks, in a window of its own that can stay open beside the drawing.
void showTeaching(QWidget& window);

} // namespace siphonwright
