#pragma once

/// Friction of flow in straight and bent bores, as formulas of the Reynolds number alone.
///
/// Friction factors are Darcy's (four times Fanning's). Reynolds numbers must not be negative; nothing here
/// checks its arguments, and what is not a number stays so.
namespace siphonwright {

/// Reynolds number up to which a bend's loss is that of a laminar curved pipe: where the straight pipe's
/// friction leaves 64/Re. Flow in a bend stays laminar longer (Ito 1959: to 20000 (D/2r)^0.32), so that the
/// steps of handOver() lie where the real ones are late and gentle too.
constexpr double bend_laminar_to = 2000;

/// Reynolds numbers, in the upstream bore, up to which a sharp step's loss is the laminar one (Hooper 1988).
constexpr double contraction_laminar_to = 2500;
constexpr double expansion_laminar_to = 4000;

/// Darcy friction factor of a straight round bore.
///
/// Method: Churchill, S. W. (1977), Chemical Engineering 84(24), 91-92: one equation for every regime and
/// roughness; 64/Re under Re = 1, where it is the same. Against Colebrook (1939) it is up to 1.8 % high at Re
/// 4000 and 0.6 % low at 1e5 in a smooth bore. Between Re 2000 and 4000, where real flow is intermittent, the
/// rise is a convention. f Re^2 rises strictly.
/// \param relative_roughness roughness over bore, 0 for smooth
double frictionFactor(double reynolds, double relative_roughness);

/// Friction factor of laminar flow in a curved bore over that in a straight one, at least 1.
///
/// Method: White, C. M. (1929), Proc. Royal Society A 123, 645-663; 11.6 < De < 2000, where the Dean number
/// De = Re sqrt(D/2r); 1 below. It is friction of a developed coil, so for one short arc an upper estimate.
double curvedPipeRatio(double reynolds, double radius_over_bore);

/// Loss coefficient of a smooth bend in turbulent flow, over that of the straight bore of its length.
///
/// Method: Rennels, D. C. and Hudson, H. M. (2012), Pipe Flow, ch. 15:
/// (0.10 + 2.4 f) sin(a/2) + 6.6 f (sqrt(sin(a/2)) + sin(a/2)) / (r/D)^(4a/pi). Bends of more than a half
/// turn, which it does not cover, lose in proportion to their angle from there.
double turbulentBendExcess(double friction_factor, double angle_rad, double radius_over_bore);

/// Loss coefficient of a bend over that of the straight bore of its length, in any flow: curvedPipeRatio() up
/// to bend_laminar_to, then handOver() to turbulentBendExcess() of a smooth bore.
double bendExcess(double reynolds, double angle_rad, double radius_over_bore);

/// Loss coefficient of a sharp step down to a bore of `bore_ratio` times the bore, on the velocity and
/// Reynolds number in the larger bore upstream.
///
/// Method: Hooper, W. B. (1988), Chemical Engineering 95(16), 89-92, with the friction of a smooth bore, and
/// handOver() above contraction_laminar_to.
/// \param bore_ratio smaller bore over larger, over 0 and at most 1
double contractionLoss(double reynolds, double bore_ratio);

/// Loss coefficient of a sharp step up from a bore of `bore_ratio` times the bore behind it, on the velocity
/// and Reynolds number in the smaller bore upstream.
///
/// Method: Hooper (1988) as above, handOver() above expansion_laminar_to. The laminar value is about twice
/// what a momentum balance between parabolic profiles gives, so it errs to the side of loss.
/// \param bore_ratio smaller bore over larger, over 0 and at most 1
double expansionLoss(double reynolds, double bore_ratio);

/// Loss coefficient beyond the end of a laminar law: the turbulent one, as soon as a change by no more than
/// Re^1.5 from the last laminar value reaches it.
///
/// Published laws meet in a jump. A jump down makes the loss of a loop fall while its flow rises, and then
/// one head belongs to several flows. K Re^2 rises strictly here as long as turbulent Re^2 does. That the
/// flow itself should hand over so is an assumption. \param last_laminar the laminar coefficient at
/// `laminar_to` \param turbulent the turbulent coefficient at `reynolds`, which is at least `laminar_to`
double handOver(double reynolds, double laminar_to, double last_laminar, double turbulent);

} // namespace siphonwright
