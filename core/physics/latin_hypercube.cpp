#include "core/physics/latin_hypercube.h"

#include <numeric>
#include <utility>

namespace siphonwright {

Pcg32::Pcg32(std::uint64_t seed, std::uint64_t stream) : increment_(2 * stream + 1)
{
    next();
    state_ += seed;
    next();
}

std::uint32_t Pcg32::next()
{
    const std::uint64_t old = state_;
    state_ = old * 6364136223846793005ULL + increment_;
    const auto shifted = static_cast<std::uint32_t>(((old >> 18) ^ old) >> 27);
    const auto turn = static_cast<std::uint32_t>(old >> 59);
    return (shifted >> turn) | (shifted << ((32 - turn) & 31));
}

double Pcg32::uniform()
{
    return next() * (1.0 / 4294967296.0);
}

std::uint32_t Pcg32::below(std::uint32_t many)
{
    // Numbers under the remainder would make the low results likelier; they are drawn again.
    const std::uint32_t remainder = (0 - many) % many;
    for (;;) {
        const std::uint32_t drawn = next();
        if (drawn >= remainder)
            return drawn % many;
    }
}

std::vector<std::vector<double>> latinHypercube(std::size_t samples, std::size_t factors, std::uint64_t seed)
{
    std::vector<std::vector<double>> points(samples, std::vector<double>(factors));
    Pcg32 random(seed);
    std::vector<std::size_t> order(samples);
    for (std::size_t factor = 0; factor < factors; ++factor) {
        std::iota(order.begin(), order.end(), std::size_t{0});
        for (std::size_t i = samples; i > 1; --i)
            std::swap(order[i - 1], order[random.below(static_cast<std::uint32_t>(i))]);
        for (std::size_t i = 0; i < samples; ++i)
            points[i][factor] =
                (static_cast<double>(order[i]) + random.uniform()) / static_cast<double>(samples);
    }
    return points;
}

} // namespace siphonwright
