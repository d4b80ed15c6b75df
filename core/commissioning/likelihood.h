#pragma once

#include "core/commissioning/evidence.h"
#include "core/commissioning/simulated.h"

namespace siphonwright {

/// How well a course explains the readings: ln of their probability density, up to what is the same for all
/// courses.
///
/// Temperatures together: normal about the members' mean. Covariance: that of the members (what is assumed),
/// off-diagonals times 0.7 since so few members overstate them (own choice), plus instruments and model
/// (Instrument). Current: a heater that cycles draws its current or nothing, each with the share of members
/// that do, from 3 to 97 %. Voltage and level: normal. Energised: wrong once in fifty. Starts: normal, within
/// 1 and the members' spread. Independent but for the temperatures.
double logLikelihood(const Evidence& evidence, const Course& course);

/// How far apart two courses are for the instruments that were read: the square sum of their differences over
/// standard deviations. Under 1 the readings cannot tell them apart (own choice).
double separation(const Evidence& evidence, const Course& a, const Course& b);

/// Difference of two courses in one channel at one time over the standard deviation of both and of the
/// instrument: by how much a reading there would tell them apart.
double separationAt(const Course& a, const Course& b, std::size_t time, Channel channel);

/// Mean of what the members draw while they draw something, A; 0 where none does.
double currentWhileOn(const Course& course, std::size_t time);

/// Mean squared misfit of the temperatures read, each over its own standard deviation: about 1 where a course
/// explains them; 0 where none was read.
double misfit(const Evidence& evidence, const Course& course);

} // namespace siphonwright
