#pragma once

#include "core/quantity/quantity.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

/// How far results hang on what is only assumed: a band for each, and what drives it.
namespace siphonwright {

/// How an assumed figure is thought to be spread. Low and high bound nearly all of it.
enum class Spread {
    even,        ///< all between low and high alike
    logarithmic, ///< ln of it evenly spread between ln low and ln high, both over 0
    peaked,      ///< triangle from low over likely to high
};

/// An assumed figure and its uncertainty.
struct UncertainFigure {
    std::string name;  ///< stable id, such as "hose_end_loss"
    std::string basis; ///< where the range comes from
    Spread spread = Spread::even;
    double low = 0;
    double high = 1;
    double likely = 0.5; ///< peaked only
};

/// The figure at a place in its spread. \param u 0 to 1: the share of the spread that lies under it
double valueAt(const UncertainFigure& assumption, double u);

/// The results of one sample, in the caller's order. An output that a sample does not have is nothing, and
/// left out of that output's band.
using Outputs = std::vector<std::optional<double>>;

/// \param values one per assumption, in their order
using SampleFunction = std::function<Outputs(const std::vector<double>& values)>;

struct BandOptions {
    std::size_t samples = 200;     ///< 20 to 100000. P5 and P95 of 200 are the tenth lowest and highest or so
    std::uint64_t seed = 20240607; ///< any will do; it is fixed so that results repeat
    /// Samples computed at a time; the function has to bear it. Results do not depend on it.
    unsigned threads = 1;
};

/// What an assumption has to do with an output.
struct Driver {
    std::size_t assumption = 0;
    double rank_correlation = 0; ///< Spearman's, -1 to 1
};

struct Band {
    double p5 = 0;
    double p50 = 0;
    double p95 = 0;
    std::size_t samples = 0;     ///< that have this output; percentiles are over these
    std::vector<Driver> drivers; ///< strongest first; under some 2/sqrt(samples) it is chance
};

enum class BandStatus {
    done,
    stopped,       ///< by the stop token; no band
    invalid_input, ///< the message says what
};

struct Bands {
    BandStatus status = BandStatus::invalid_input;
    Message message;
    std::vector<Band> outputs; ///< in the order of the function's
    std::size_t samples_done = 0;
};

/// Bands of a function over assumptions that vary independently, by a Latin hypercube (latinHypercube()). The
/// function is called for one sample after another, in the same order with the same values on every machine,
/// up to the rounding of the system's logarithm; its longest output list sets the number of outputs. Where it
/// throws, that is let through.
///
/// Percentiles interpolate linearly between ordered samples (Hyndman and Fan 1996, Am. Stat. 50:361, type 7);
/// equal ranks share their mean.
Bands bandsOf(const std::vector<UncertainFigure>& assumptions, const SampleFunction& function,
              const BandOptions& options = {}, const std::stop_token& stop = {});

/// Type 7 percentile of values in rising order, not empty. \param share 0 to 1
double percentile(const std::vector<double>& rising, double share);

/// Spearman's rank correlation of two lists of equal length; 0 where either is all the same.
double rankCorrelation(const std::vector<double>& a, const std::vector<double>& b);

} // namespace siphonwright
