#pragma once

#include "app/panels/fields.h"

#include <QCoreApplication>

namespace siphonwright::panels {

/// Translation context of the forms.
struct FormText {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::panels::FormText)
};

Access<Engine> engineAccess();
Access<ThermostatHousing> thermostatAccess();
Access<SurgeTank> tankAccess();
Access<Port> portAccess(const Id& id);
Access<Heater> heaterAccess(const Id& id);
Access<Hose> hoseAccess(const Id& id);
Access<Area> areaAccess(const Id& id);
Access<Dimension> dimensionAccess(const Id& id);
Access<Sketch> sketchAccess();

/// Row labels of a position: along, height over datum, across.
QStringList positionLabels();

/// What a hose end can be put on, with its name: open first, then ports, then heater nozzles.
struct EndChoice {
    QString name;
    HoseEnd end;
};
std::vector<EndChoice> endChoices(const Sketch& sketch);

Field linkTo(const QString& label, const PartRef& target);

} // namespace siphonwright::panels
