#include "core/analysis/margin_text.h"

#include "core/layout/wording.h"

#include <cmath>

namespace siphonwright {

Message textOf(const std::optional<SoundGrades>& sound)
{
    if (!sound)
        return {"Not free of traps on the level.", {}, {}};
    std::string pattern = "Free of traps from ";
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
        return margin.droop.already_humps
                   ? Message{"{a} humps as it is drawn: it has no sag to spare.", {}, words}
                   : Message{
                         "{a} dips as it is drawn: some coolant stays in it when it is drained.", {}, words};
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
