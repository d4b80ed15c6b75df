#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

/// Samples of uncertain figures, the same on every machine.
namespace siphonwright {

/// Random numbers by PCG32 (O'Neill 2014, "PCG: A Family of Simple Fast Space-Efficient Statistically Good
/// Algorithms for Random Number Generation", XSH RR 64/32): integer arithmetic alone, so that all machines
/// and libraries agree to the bit.
class Pcg32 {
public:
    explicit Pcg32(std::uint64_t seed, std::uint64_t stream = 0);

    std::uint32_t next();
    double uniform();                        ///< from 0, under 1, in steps of 2^-32
    std::uint32_t below(std::uint32_t many); ///< 0 to many - 1, each alike

private:
    std::uint64_t state_ = 0;
    std::uint64_t increment_ = 1;
};

/// Points in a unit cube of `factors` sides, a vector each. Every side, cut into as many equal parts as there
/// are samples, has one point in each part, at a random place in it (McKay, Beckman and Conover 1979,
/// Technometrics 21:239-245).
std::vector<std::vector<double>> latinHypercube(std::size_t samples, std::size_t factors, std::uint64_t seed);

} // namespace siphonwright
