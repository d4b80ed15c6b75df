#pragma once

#include <QString>

#include <functional>

class QWidget;

namespace siphonwright {

/// The trainer's page on air locks, in a window of its own that can stay open beside the drawing. A click on
/// a sample's name hands it to `open_sample`.
void showTeaching(QWidget& window, const std::function<void(const QString&)>& open_sample);

} // namespace siphonwright
