#include "core/physics/warm_up.h"

#include "core/physics/warm_up_run.h"

namespace siphonwright {

WarmUp warmUp(const WarmUpInputs& inputs, const Fluid& fluid, const WarmUpOptions& options)
{
    WarmUp refused;
    refused.message = problemIn(inputs, options);
    if (!refused.message.pattern.empty())
        return refused;
    if (!(fluid.highest_degC() - fluid.lowest_degC() >= 1 &&
          fluid.highest_degC() - fluid.lowest_degC() <= 2000)) {
        refused.message.pattern = "The coolant's properties are not known over any range.";
        return refused;
    }
    if (inputs.start_degC < fluid.lowest_degC()) {
        refused.status = WarmUpStatus::slush;
        refused.message = {"At {0} the coolant is slush: it freezes at {1}. Nothing circulates.",
                           {{inputs.start_degC, Unit::degC}, {fluid.lowest_degC(), Unit::degC}},
                           {}};
        return refused;
    }
    return WarmUpRun(inputs, options, fluid).result();
}

} // namespace siphonwright
