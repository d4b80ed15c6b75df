#pragma once

#include "app/drawing/look.h"

#include "core/quantity/quantity.h"
#include "core/sketch/templates.h"

#include <QDialog>
#include <QPixmap>

class QListWidget;
class QPushButton;

namespace siphonwright {

enum class TemplateKind { engines, heaters };

/// Engines or heaters to choose from by picture, each drawn as the elevation would, all to one scale.
class TemplateGallery : public QDialog {
    Q_OBJECT
public:
    TemplateGallery(TemplateKind kind, const QString& title, drawing::Look look, UnitSystem units,
                    QWidget* parent);

Q_SIGNALS:
    void chosen(const QString& template_id);
    void airCooledChosen();

private:
    void fill(TemplateKind kind, drawing::Look look, UnitSystem units);
    void accept() override;

    QListWidget* list_;
    QPushButton* take_;
};

/// A sketch of a template alone, for its picture.
Sketch sketchOf(const EngineTemplate& engine);
Sketch sketchOf(const HeaterTemplate& heater);

/// A sketch as the elevation draws it, without words, its middle in the middle of the picture.
/// @param px_per_mm of the drawing.
QPixmap pictureOf(const Sketch& sketch, QSize size, double px_per_mm, double device_ratio,
                  drawing::Look look);

/// What stands under the picture: kind, and size or power.
QString captionOf(const EngineTemplate& engine, UnitSystem units);
QString captionOf(const HeaterTemplate& heater, UnitSystem units);

} // namespace siphonwright
