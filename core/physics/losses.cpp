#include "core/physics/losses.h"

#include "core/physics/friction.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double entrance_per_reynolds = 160; ///< Hooper (1981), from memory
constexpr double flush_constant = 0.5;        ///< Hooper (1981), from memory
constexpr double smooth = 0;
constexpr double least_reynolds = 1e-9; ///< keeps still flow from dividing by nothing

bool positive(double value)
{
    return std::isfinite(value) && value > 0;
}
bool notNegative(double value)
{
    return std::isfinite(value) && value >= 0;
}

/// The coefficient of each form. K is on the velocity in the bore of `loss`.
struct Coefficient {
    const Loss& loss;
    double reynolds;

    double operator()(const loss_form::Local& local) const
    {
        return local.constant + local.per_reynolds * std::pow(reynolds, -local.exponent);
    }
    double operator()(const loss_form::Wall& wall) const
    {
        return frictionFactor(reynolds, wall.roughness_m / loss.bore_m) * wall.length_m / loss.bore_m;
    }
    double operator()(const loss_form::Entrance& entrance) const
    {
        return entrance.constant + entrance_per_reynolds / reynolds;
    }
    double operator()(const loss_form::Exit& /*exit*/) const { return 1; }
    double operator()(const loss_form::Bend& bend) const
    {
        return bendExcess(reynolds, bend.angle_rad, bend.radius_m / loss.bore_m);
    }
    double operator()(const loss_form::HoseEnd& end) const
    {
        const double ratio = end.own_bore_m / loss.bore_m;
        const double own_reynolds = reynolds / ratio;
        const double own_friction = frictionFactor(own_reynolds, smooth) * end.own_length_m / end.own_bore_m;
        const double on_own_velocity = own_friction + expansionLoss(own_reynolds, ratio);
        return contractionLoss(reynolds, ratio) + on_own_velocity / (ratio * ratio * ratio * ratio);
    }
    double operator()(const loss_form::Step& step) const
    {
        if (step.next_bore_m < loss.bore_m)
            return contractionLoss(reynolds, step.next_bore_m / loss.bore_m);
        return expansionLoss(reynolds, loss.bore_m / step.next_bore_m);
    }
};

struct Problem {
    const Loss& loss;

    const char* operator()(const loss_form::Local& local) const
    {
        if (!notNegative(local.constant) || !notNegative(local.per_reynolds))
            return "a loss coefficient must be 0 or more";
        if (!(notNegative(local.exponent) && local.exponent < 2))
            return "a coefficient's exponent of the Reynolds number must be from 0, under 2";
        return nullptr;
    }
    const char* operator()(const loss_form::Wall& wall) const
    {
        if (!notNegative(wall.length_m))
            return "a length must be 0 or more";
        if (!(notNegative(wall.roughness_m) && wall.roughness_m < loss.bore_m))
            return "roughness must be 0 or more and less than the bore";
        return nullptr;
    }
    const char* operator()(const loss_form::Entrance& entrance) const
    {
        return notNegative(entrance.constant) ? nullptr : "a loss coefficient must be 0 or more";
    }
    const char* operator()(const loss_form::Exit& /*exit*/) const { return nullptr; }
    const char* operator()(const loss_form::Bend& bend) const
    {
        if (!notNegative(bend.angle_rad))
            return "a bend's angle must be 0 or more";
        return bend.radius_m >= loss.bore_m / 2 && std::isfinite(bend.radius_m)
                   ? nullptr
                   : "a bend's centre-line radius must be at least half the bore";
    }
    const char* operator()(const loss_form::HoseEnd& end) const
    {
        if (!(positive(end.own_bore_m) && end.own_bore_m <= loss.bore_m))
            return "a hose end's own bore must be over 0 and at most the hose's";
        return notNegative(end.own_length_m) ? nullptr : "a length must be 0 or more";
    }
    const char* operator()(const loss_form::Step& step) const
    {
        return positive(step.next_bore_m) ? nullptr : "a bore must be over 0";
    }
};

} // namespace

double lossCoefficient(const Loss& loss, double reynolds)
{
    // std::max would let a Reynolds number that is not a number pass for the least.
    const double size = std::abs(reynolds);
    return loss.factor *
           std::visit(Coefficient{loss, size < least_reynolds ? least_reynolds : size}, loss.form);
}

Loss reversed(const Loss& loss)
{
    Loss other = loss;
    if (std::holds_alternative<loss_form::Entrance>(loss.form))
        other.form = loss_form::Exit{};
    else if (std::holds_alternative<loss_form::Exit>(loss.form))
        other.form = loss_form::Entrance{flush_constant};
    else if (const auto* step = std::get_if<loss_form::Step>(&loss.form)) {
        other = Loss::step(step->next_bore_m, loss.bore_m);
        other.factor = loss.factor;
        other.part = loss.part;
    }
    return other;
}

const char* problemIn(const Loss& loss)
{
    if (!positive(loss.bore_m))
        return "a bore must be over 0";
    if (!positive(loss.area_m2))
        return "an area must be over 0";
    if (!positive(loss.factor))
        return "a factor must be over 0";
    return std::visit(Problem{loss}, loss.form);
}

} // namespace siphonwright
