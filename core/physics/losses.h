#pragma once

#include <variant>

/// Where a stream loses pressure: wall, bends, hose ends, fittings.
namespace siphonwright {

/// What a loss's coefficient depends on besides the Reynolds number. Metres and radians.
namespace loss_form {

struct Wall {
    double length_m = 0;
    double roughness_m = 0;
};
/// K = constant + per_reynolds / Re^exponent.
struct Local {
    double constant = 0;
    double per_reynolds = 0;
    double exponent = 1;
};
struct Entrance {
    double constant = 0;
};
struct Exit {};
struct Bend {
    double angle_rad = 0;
    double radius_m = 0; ///< of the centre line
};
struct HoseEnd {
    double own_bore_m = 0;
    double own_length_m = 0;
};
struct Step {
    double next_bore_m = 0;
};

} // namespace loss_form

/// One resistance to flow. Its pressure loss is
///
///     K rho v^2 / 2,  v = m / (rho area_m2),  Re = m bore_m / (area_m2 viscosity),
///
/// with K = lossCoefficient(loss, Re): velocity and Reynolds number are those in the loss's own bore_m and
/// area_m2, whatever the bores beside it. Made by the named functions; problemIn() says whether it holds
/// together. Metres, square metres, radians.
struct Loss {
    using Form = std::variant<loss_form::Local, loss_form::Wall, loss_form::Entrance, loss_form::Exit,
                              loss_form::Bend, loss_form::HoseEnd, loss_form::Step>;

    double bore_m = 0;  ///< hydraulic diameter
    double area_m2 = 0; ///< of the stream; that of the round bore unless it is set to another
    Form form;
    int part = -1; ///< the caller's: whose loss this is

    /// Friction of a straight or bent bore along its whole length: Churchill (1977), frictionFactor(). Rubber
    /// and silicone count as smooth, 0.0015 to 0.01 mm (common practice, no published source).
    static Loss wall(double length_m, double bore_m, double roughness_m);

    /// What a hose's bend loses beyond the wall friction of its length: bendExcess(). White (1929), Rennels
    /// and Hudson (2012).
    static Loss hoseBend(double angle_rad, double radius_m, double bore_m);

    /// A barb or beaded nipple that a hose is pushed on, on the velocity in the hose: step down, friction of
    /// its own smooth bore, step up: Hooper (1988), Churchill (1977). The largest uncertainty in a heater's
    /// loop: no measurement of hose ends at these Reynolds numbers is known to us. An own bore as wide as the
    /// hose loses by friction alone.
    static Loss hoseEnd(double hose_bore_m, double own_bore_m, double own_length_m);

    /// Sharp change from one bore to the next in the direction of flow, on the velocity in the bore upstream:
    /// contractionLoss() or expansionLoss(), Hooper (1988).
    static Loss step(double bore_m, double next_bore_m);

    /// From a wide room into a bore, flush with its wall (160/Re + 0.5) or standing into it (160/Re + 1.0).
    /// Hooper (1981), from memory. It contains the extra loss of flow that is still developing.
    static Loss entrance(double bore_m);
    static Loss reentrantEntrance(double bore_m);
    /// From a bore into a wide room: 1. Hooper (1981), from memory.
    static Loss exit(double bore_m);

    /// constant + per_reynolds / Re^exponent on an area of its own, as published loops give their losses.
    /// \param exponent from 0, under 2
    static Loss general(double constant, double per_reynolds, double exponent, double bore_m, double area_m2);

    /// Fittings and valves by the two-K method, K = K1/Re + Kinf (1 + 25.4 mm/D): Hooper, W. B. (1981),
    /// Chemical Engineering, 24 August, 96-100, each with its K1 and Kinf. `bore_m` is the fitting's own true
    /// bore. Fitted for 25 mm and larger; below it is an extrapolation, +-35 %.
    static Loss twoK(double k1, double k_infinity, double bore_m);

    static Loss elbow90(double bore_m);             ///< screwed, radius one bore: 800, 0.40
    static Loss elbow90Welded(double bore_m);       ///< flanged or welded, radius one bore: 800, 0.25
    static Loss elbow90LongRadius(double bore_m);   ///< radius 1.5 bores: 800, 0.20
    static Loss mitre90(double bore_m);             ///< one weld: 1000, 1.15
    static Loss elbow45(double bore_m);             ///< radius one bore: 500, 0.20
    static Loss elbow45LongRadius(double bore_m);   ///< radius 1.5 bores: 500, 0.15
    static Loss return180(double bore_m);           ///< flanged or welded, radius one bore: 1000, 0.35
    static Loss return180LongRadius(double bore_m); ///< radius 1.5 bores: 1000, 0.30

    static Loss teeRun(double bore_m);           ///< screwed, straight through: 200, 0.10
    static Loss teeRunFlanged(double bore_m);    ///< straight through: 150, 0.05
    static Loss teeBranch(double bore_m);        ///< screwed, round the corner: 500, 0.70
    static Loss teeBranchFlanged(double bore_m); ///< round the corner: 800, 0.80
    static Loss teeBranchStubIn(double bore_m);  ///< round the corner: 1000, 1.0

    static Loss ballValve(double bore_m);          ///< or gate or plug, full bore, open: 300, 0.10
    static Loss ballValveReduced90(double bore_m); ///< ball, gate or plug, bore reduced to 0.9: 500, 0.15
    static Loss ballValveReduced80(double bore_m); ///< ball, gate or plug, bore reduced to 0.8: 1000, 0.25
    static Loss globeValve(double bore_m);         ///< standard: 1500, 4.0
    static Loss angleValve(double bore_m);         ///< globe of angle or Y pattern: 1000, 2.0
    static Loss diaphragmValve(double bore_m);     ///< dam type: 1000, 2.0
    static Loss butterflyValve(double bore_m);     ///< 800, 0.25

    /// Check valves held open by the flow. Whether a natural circulation's few millimetres of head open them
    /// at all is another question, and against their direction they let nothing through.
    static Loss liftCheck(double bore_m);        ///< 2000, 10.0
    static Loss swingCheck(double bore_m);       ///< 1500, 1.5
    static Loss tiltingDiscCheck(double bore_m); ///< 1000, 0.5
};

/// The loss coefficient at a Reynolds number, both on the velocity in the loss's bore. K Re^2 rises strictly
/// with Re, so more flow never loses less pressure; only a bend of Dean number under 11.6 loses nothing at
/// all beyond its wall's friction. \param loss one in which problemIn() finds none \param reynolds over 0;
/// under 1e-9 it counts as that, and below nothing as the flow reversed in a loss that is the same both ways.
/// Not a number gives not a number.
double lossCoefficient(const Loss& loss, double reynolds);

/// The same place with the flow the other way: an entrance becomes an exit and an exit a flush entrance, a
/// step up becomes a step down on its other bore. What Hooper's fittings lose backwards is not published;
/// they stay as they are.
Loss reversed(const Loss& loss);

/// What is wrong with the loss's numbers, in words for whoever made it; nullptr when nothing is.
const char* problemIn(const Loss& loss);

} // namespace siphonwright
