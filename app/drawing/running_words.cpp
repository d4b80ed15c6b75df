#include "app/drawing/running_words.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/running/loop_figures.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::drawing {

namespace {

QString words(double value, Unit unit, UnitSystem units)
{
    return inWords(value, unit, units);
}

/// What drives against what resists. In a steady state both are equal, so only air is told apart.
QString headLine(const Circulation& found, UnitSystem units)
{
    const QString drive = words(found.drive_mm, Unit::head, units);
    switch (found.status) {
    case CirculationStatus::circulates:
    case CirculationStatus::reverse:
        return found.pocket_mm > 0
                   ? tr("%1 drives, air takes %2").arg(drive, words(found.pocket_mm, Unit::head, units))
                   : tr("%1 drives, %2 resists").arg(drive, words(found.resistance_mm, Unit::head, units));
    case CirculationStatus::stalled:
        return found.drive_mm > 0
                   ? tr("%1 drives, air resists %2").arg(drive, words(found.pocket_mm, Unit::head, units))
                   : tr("nothing drives it");
    case CirculationStatus::closed:
        return found.drive_mm > 0 ? tr("%1 would drive it").arg(drive) : QString();
    default:
        return {};
    }
}

} // namespace

QString stateWords(CirculationStatus status)
{
    switch (status) {
    case CirculationStatus::circulates:
        return {};
    case CirculationStatus::reverse:
        return tr("runs backward");
    case CirculationStatus::stalled:
        return tr("stalled");
    case CirculationStatus::closed:
        return tr("a valve is shut");
    case CirculationStatus::boiling:
        return tr("boils");
    case CirculationStatus::slush:
        return tr("coolant is slush");
    case CirculationStatus::invalid_input:
    case CirculationStatus::not_converged:
        return tr("not computed");
    }
    return {};
}

QStringList runningLines(const LoopRun& run, double block_degC, UnitSystem units)
{
    if (!run.missing.empty())
        return {};
    const Circulation& found = run.circulation;
    const bool flows = found.flow_kg_per_s != 0;
    QStringList first;
    if (const QString state = stateWords(found.status); !state.isEmpty())
        first << state;
    if (flows)
        first << words(std::abs(flowByVolume_l_per_min(found)), Unit::l_per_min, units);
    QStringList lines{first.join(QStringLiteral(", "))};
    if (flows)
        lines << tr("in %1, out %2")
                     .arg(words(found.heater_inlet_degC, Unit::degC, units),
                          words(found.heater_outlet_degC, Unit::degC, units));
    if (const QString heads = headLine(found, units); !heads.isEmpty())
        lines << heads;
    lines << tr("at %1 block").arg(words(block_degC, Unit::degC, units));
    return lines;
}

double arrowSize_mm(double flow_l_per_min)
{
    return std::clamp(1.2 + 1.2 * std::sqrt(std::abs(flow_l_per_min)), 1.2, 5.5);
}

} // namespace siphonwright::drawing
