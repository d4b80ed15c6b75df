#include "tests/warm_up/cvode_day.h"

#include "core/physics/warm_up_model.h"

#include <algorithm>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

namespace siphonwright::test {
namespace {

struct Day {
    WarmUpModel model;
    Thermostat thermostat;
    bool on = true;
};

int rates(double t, N_Vector y, N_Vector ydot, void* user)
{
    WarmUpModel& model = static_cast<Day*>(user)->model;
    model(t, {NV_DATA_S(y), model.size()}, {NV_DATA_S(ydot), model.size()});
    return 0;
}

int pastThreshold(double, N_Vector y, double* g, void* user)
{
    const Day& day = *static_cast<Day*>(user);
    const double sensed = NV_DATA_S(y)[day.model.statesOf(0).sensor];
    g[0] = day.on ? sensed - day.thermostat.off_degC : day.thermostat.on_degC - sensed;
    return 0;
}

/// What SUNDIALS hands out by plain pointer, freed at the end in the right order.
struct Solver {
    explicit Solver(std::size_t states, CvodeMethod method)
    {
        const auto count = static_cast<sunindextype>(states);
        worked = SUNContext_Create(nullptr, &context) == 0;
        state = N_VNew_Serial(count, context);
        tolerance = N_VNew_Serial(count, context);
        matrix = SUNDenseMatrix(count, count, context);
        linear = SUNLinSol_Dense(state, matrix, context);
        memory = CVodeCreate(method == CvodeMethod::bdf ? CV_BDF : CV_ADAMS, context);
        worked = worked && state && tolerance && matrix && linear && memory;
    }
    ~Solver()
    {
        CVodeFree(&memory);
        SUNLinSolFree(linear);
        SUNMatDestroy(matrix);
        N_VDestroy(tolerance);
        N_VDestroy(state);
        SUNContext_Free(&context);
    }
    Solver(const Solver&) = delete;
    Solver& operator=(const Solver&) = delete;

    bool worked = false;
    SUNContext context = nullptr;
    N_Vector state = nullptr;
    N_Vector tolerance = nullptr;
    SUNMatrix matrix = nullptr;
    SUNLinearSolver linear = nullptr;
    void* memory = nullptr;
};

bool prepare(Solver& solver, Day& day, double relative_tolerance, double absolute_tolerance_K)
{
    const std::vector<double> start = day.model.start();
    std::copy(start.begin(), start.end(), NV_DATA_S(solver.state));
    N_VConst(absolute_tolerance_K, solver.tolerance);
    // Heat lost only adds up, and steers no step.
    NV_DATA_S(solver.tolerance)[day.model.lost()] = 1e30;
    return CVodeInit(solver.memory, rates, 0, solver.state) == CV_SUCCESS &&
           CVodeSVtolerances(solver.memory, relative_tolerance, solver.tolerance) == CV_SUCCESS &&
           CVodeSetUserData(solver.memory, &day) == CV_SUCCESS &&
           CVodeSetLinearSolver(solver.memory, solver.linear, solver.matrix) == CV_SUCCESS &&
           CVodeSetMaxNumSteps(solver.memory, 100000000) == CV_SUCCESS &&
           CVodeRootInit(solver.memory, 1, pastThreshold) == CV_SUCCESS;
}

} // namespace

CvodeDay cvodeDay(const WarmUpInputs& inputs, const Fluid& fluid, double relative_tolerance,
                  double absolute_tolerance_K, CvodeMethod method)
{
    CvodeDay result;
    const WarmUpHeater& heater = inputs.loops[0].heater;
    Day day{WarmUpModel(inputs, {}, fluid), heater.thermostat, true};
    day.model.setPower(0, heater.power_W());
    const std::size_t chamber = day.model.statesOf(0).chamber;
    Solver solver(day.model.size(), method);
    if (!solver.worked || !prepare(solver, day, relative_tolerance, absolute_tolerance_K))
        return result;
    double time_s = 0;
    long evaluations_before = 0, evaluations = 0, jacobian_evaluations = 0;
    const auto count = [&] {
        CVodeGetNumRhsEvals(solver.memory, &evaluations);
        CVodeGetNumLinRhsEvals(solver.memory, &jacobian_evaluations);
        return evaluations + jacobian_evaluations;
    };
    while (time_s < inputs.duration_s) {
        CVodeSetStopTime(solver.memory, inputs.duration_s);
        const int status = CVode(solver.memory, inputs.duration_s, solver.state, &time_s, CV_ONE_STEP);
        if (status < 0)
            return result;
        if (day.on)
            result.peak_outlet_degC = std::max(result.peak_outlet_degC, NV_DATA_S(solver.state)[chamber]);
        if (status != CV_ROOT_RETURN)
            continue;
        result.switches_s.push_back(time_s);
        day.on = !day.on;
        day.model.setPower(0, day.on ? heater.power_W() : 0);
        evaluations_before += count();
        if (CVodeReInit(solver.memory, time_s, solver.state) != CV_SUCCESS)
            return result;
    }
    result.evaluations = evaluations_before + count();
    result.block_at_end_degC = day.model.blockMean_degC({NV_DATA_S(solver.state), day.model.size()});
    result.worked = true;
    return result;
}

} // namespace siphonwright::test
