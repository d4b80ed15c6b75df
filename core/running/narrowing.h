#pragma once

/// What air that does not close a bore takes from the flow under it.
namespace siphonwright {

/// Share of a round bore's area that lies under a liquid surface so high over its floor: 0 to 1.
double openShare(double bore_mm, double depth_mm);

/// Head lost where a flow passes through a share of the bore, mm of coolant, 0 where all of it is open.
///
/// Own estimate: Borda-Carnot's sudden expansion, (v - v0)^2/2g, behind the pocket, and half of
/// (1 - share) v^2/2g for the contraction before it (textbook forms, from memory); v0 in the full bore, v in
/// the share. Both are for turbulent flow; slow flow loses somewhat more.
/// `density` in kg/m3. Nothing that is not over zero has a loss.
double narrowingHead_mm(double bore_mm, double share, double flow_kg_per_s, double density);

} // namespace siphonwright
