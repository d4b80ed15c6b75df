#pragma once

#include "core/physics/warm_up.h"

#include <vector>

/// A warm-up with one heater and its thermostat by CVODE of SUNDIALS (Hindmarsh et al. 2005, ACM Trans. Math.
/// Softw. 31:363-396): its variable-order method, its own root finding, on the equations of WarmUpModel.
namespace siphonwright::test {

enum class CvodeMethod {
    bdf,   ///< backward differentiation, dense Jacobian by differences
    adams, ///< Adams-Moulton with the same Newton iteration
};

struct CvodeDay {
    bool worked = false;
    std::vector<double> switches_s;  ///< off, on, off, ...
    double peak_outlet_degC = -1000; ///< while energised
    double block_at_end_degC = 0;
    long evaluations = 0; ///< of the right-hand side, those for Jacobians included
};

/// \param inputs ones of a single loop with a thermostat and no cut-out, started with its contacts closed
CvodeDay cvodeDay(const WarmUpInputs& inputs, const Fluid& fluid, double relative_tolerance,
                  double absolute_tolerance_K, CvodeMethod method = CvodeMethod::bdf);

} // namespace siphonwright::test
