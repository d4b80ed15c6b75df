#include "core/physics/losses.h"

#include <numbers>

namespace siphonwright {
namespace {

Loss inRoundBore(double bore_m, Loss::Form form)
{
    Loss loss;
    loss.bore_m = bore_m;
    loss.area_m2 = std::numbers::pi / 4 * bore_m * bore_m;
    loss.form = form;
    return loss;
}

} // namespace

Loss Loss::wall(double length_m, double bore_m, double roughness_m)
{
    return inRoundBore(bore_m, loss_form::Wall{length_m, roughness_m});
}

Loss Loss::hoseBend(double angle_rad, double radius_m, double bore_m)
{
    return inRoundBore(bore_m, loss_form::Bend{angle_rad, radius_m});
}

Loss Loss::hoseEnd(double hose_bore_m, double own_bore_m, double own_length_m)
{
    return inRoundBore(hose_bore_m, loss_form::HoseEnd{own_bore_m, own_length_m});
}

Loss Loss::step(double bore_m, double next_bore_m)
{
    return inRoundBore(bore_m, loss_form::Step{next_bore_m});
}

Loss Loss::entrance(double bore_m)
{
    return inRoundBore(bore_m, loss_form::Entrance{0.5});
}
Loss Loss::reentrantEntrance(double bore_m)
{
    return inRoundBore(bore_m, loss_form::Entrance{1.0});
}
Loss Loss::exit(double bore_m)
{
    return inRoundBore(bore_m, loss_form::Exit{});
}

Loss Loss::general(double constant, double per_reynolds, double exponent, double bore_m, double area_m2)
{
    Loss loss = inRoundBore(bore_m, loss_form::Local{constant, per_reynolds, exponent});
    loss.area_m2 = area_m2;
    return loss;
}

Loss Loss::twoK(double k1, double k_infinity, double bore_m)
{
    constexpr double size_m = 0.0254;
    return inRoundBore(bore_m, loss_form::Local{k_infinity * (1 + size_m / bore_m), k1, 1});
}

Loss Loss::elbow90(double bore_m)
{
    return twoK(800, 0.40, bore_m);
}
Loss Loss::elbow90Welded(double bore_m)
{
    return twoK(800, 0.25, bore_m);
}
Loss Loss::elbow90LongRadius(double bore_m)
{
    return twoK(800, 0.20, bore_m);
}
Loss Loss::mitre90(double bore_m)
{
    return twoK(1000, 1.15, bore_m);
}
Loss Loss::elbow45(double bore_m)
{
    return twoK(500, 0.20, bore_m);
}
Loss Loss::elbow45LongRadius(double bore_m)
{
    return twoK(500, 0.15, bore_m);
}
Loss Loss::return180(double bore_m)
{
    return twoK(1000, 0.35, bore_m);
}
Loss Loss::return180LongRadius(double bore_m)
{
    return twoK(1000, 0.30, bore_m);
}

Loss Loss::teeRun(double bore_m)
{
    return twoK(200, 0.10, bore_m);
}
Loss Loss::teeRunFlanged(double bore_m)
{
    return twoK(150, 0.05, bore_m);
}
Loss Loss::teeBranch(double bore_m)
{
    return twoK(500, 0.70, bore_m);
}
Loss Loss::teeBranchFlanged(double bore_m)
{
    return twoK(800, 0.80, bore_m);
}
Loss Loss::teeBranchStubIn(double bore_m)
{
    return twoK(1000, 1.0, bore_m);
}

Loss Loss::ballValve(double bore_m)
{
    return twoK(300, 0.10, bore_m);
}
Loss Loss::ballValveReduced90(double bore_m)
{
    return twoK(500, 0.15, bore_m);
}
Loss Loss::ballValveReduced80(double bore_m)
{
    return twoK(1000, 0.25, bore_m);
}
Loss Loss::globeValve(double bore_m)
{
    return twoK(1500, 4.0, bore_m);
}
Loss Loss::angleValve(double bore_m)
{
    return twoK(1000, 2.0, bore_m);
}
Loss Loss::diaphragmValve(double bore_m)
{
    return twoK(1000, 2.0, bore_m);
}
Loss Loss::butterflyValve(double bore_m)
{
    return twoK(800, 0.25, bore_m);
}

Loss Loss::liftCheck(double bore_m)
{
    return twoK(2000, 10.0, bore_m);
}
Loss Loss::swingCheck(double bore_m)
{
    return twoK(1500, 1.5, bore_m);
}
Loss Loss::tiltingDiscCheck(double bore_m)
{
    return twoK(1000, 0.5, bore_m);
}

} // namespace siphonwright
