#include "core/analysis/margin_text.h"

#include "core/layout/wording.h"

#include <cmath>

namespace siphonwright {

Message textOf(const std::optional<SoundGrades>& sound)
{
    if (!sound)
        return {"Not sound on the level.", {}, {}};
    std::string pattern = "Sound from ";
    pattern += sound->low_open ? "over {0}" : "{0}";
    pattern += " nose-down to ";
    pattern += sound->high_open ? "over {1}" : "{1}";
    pattern += " nose-up.";
    return {
        pattern, {{std::abs(sound->low_percent), Unit::percent}, {sound->high_percent, Unit::percent}}, {}};
}

Message textOf(const SagMargin& margin, const Sketch& sketch)
{
    const Hose* hose = sketch.hose(margin.hose);
    const std::vector<std::string> words = {hose ? nameOfHose(*hose) : margin.hose};
    if (margin.droop.already_trapped)
        return {"{a} has a trap without any sag.", {}, words};
    if (!margin.droop.margin_mm)
        return {"{a} may sag more than {0}.", {{droop_limit_mm, Unit::mm}}, words};
    return {"{a} may sag {0} before it holds air or coolant.", {{*margin.droop.margin_mm, Unit::mm}}, words};
}

std::string textOf(const Unconfirmed& fact)
{
    return fact.fact + (fact.source == Source::typical ? " (typical)" : " (assumed)");
}

std::string listOf(const std::vector<Unconfirmed>& facts)
{
    std::string out;
    for (const Unconfirmed& fact : facts)
        out += (out.empty() ? "" : ", ") + textOf(fact);
    return out;
}

} // namespace siphonwright
