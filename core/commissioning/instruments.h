#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/record.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

/// What is read at the vehicle, by which instrument, and how far a reading may be off.
namespace siphonwright {

enum class Channel { inlet, outlet, hose_surface, engine, current, voltage, coolant_level, count };
constexpr std::size_t channel_count = static_cast<std::size_t>(Channel::count);

/// One row of the list of instruments. Spreads are standard deviations, our own choice after common practice
/// (no published source), and meant to be edited here.
struct Instrument {
    Channel channel;
    std::string_view id;    ///< the reading's key in files
    std::string_view title; ///< "outlet"
    std::string_view where; ///< how and where it is read
    Unit unit;
    double spread;       ///< of the instrument, in `unit`
    double spread_share; ///< of the instrument, as a share of what it reads
    double model_spread; ///< of the computation beyond what the assumptions' ranges give, in `unit`
    double model_share;  ///< the same as a share: an element's make, a supply's ups and downs
};

std::span<const Instrument> instruments();
const Instrument& instrumentFor(Channel channel);

/// Standard deviation of a reading about a computed value, without the assumptions' part.
double spreadOf(Channel channel, double value);
/// Of the instrument alone.
double instrumentSpread(Channel channel, double value);

constexpr bool isTemperature(Channel channel)
{
    return channel == Channel::inlet || channel == Channel::outlet || channel == Channel::hose_surface ||
           channel == Channel::engine;
}

/// What a reading holds for a channel; nothing where that was not read.
const std::optional<double>& readOn(const Reading& reading, Channel channel);
std::optional<double>& readOn(Reading& reading, Channel channel);

} // namespace siphonwright
