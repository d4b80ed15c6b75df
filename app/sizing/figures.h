#pragma once

#include "core/analysis/analysis.h"
#include "core/quantity/quantity.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <QString>
#include <QStringList>

#include <vector>

/// Heater size, supply and coolant as rows of figures and sentences.
namespace siphonwright::sizing {

/// One row: what it is, its figures, and the part of the drawing that it comes from.
struct Figure {
    QString label;
    QStringList values;
    QString tip;
    PartRef part{};     ///< nothing: of no single part
    bool wrong = false; ///< marked by sign and weight
};

struct Figures {
    QStringList columns;
    std::vector<Figure> rows;
    QStringList notes;    ///< beside the figures
    QStringList warnings; ///< what is missing or does not fit, each led by a sign
};

Figures sizeFigures(const Sketch& sketch, const Layout& layout);
Figures supplyFigures(const Sketch& sketch);
Figures coolantFigures(const Sketch& sketch, const Layout& layout);
Figures waterFigures(const Sketch& sketch);

/// The table over stock powers, from the proof; `running` says which loops are left out of it.
Figures powerFigures(const Sketch& sketch, const Running& running, const std::vector<PowerRow>& rows);

} // namespace siphonwright::sizing
