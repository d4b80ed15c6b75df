#include "core/checks/rules_page.h"

#include "core/checks/rules.h"

namespace siphonwright {
namespace {

constexpr std::string_view head =
    "# The rules\n"
    "\n"
    "This page is made from the rule book in `core/checks/rule_book.cpp`. A value equal to a limit passes. "
    "Limits can be changed, and rules switched off, for a single drawing, with a reason that its sheet "
    "states. "
    "What is judged over the grades is judged on the level first; what is found only on a grade comes one "
    "severity lower and says from which grade on.\n";

/// "152.4 mm (6 in)", or once where both systems say the same.
std::string inBothSystems(double value, Unit unit)
{
    const std::string metric = format(value, unit, UnitSystem::metric);
    const std::string inch = format(value, unit, UnitSystem::inch);
    return metric == inch ? metric : metric + " (" + inch + ")";
}

std::string limitsInWords(const Rule& rule)
{
    const std::string sense = rule.sense == Sense::over ? " over " : " under ";
    std::string words;
    const auto add = [&](std::string_view severity, const std::optional<double>& limit) {
        if (limit)
            words += (words.empty() ? "" : ", ") + std::string(severity) + sense +
                     inBothSystems(*limit, rule.unit);
    };
    add("advice", rule.limits.advice);
    add("caution", rule.limits.caution);
    add("stop", rule.limits.stop);
    return words.empty() ? "none of its own: judged yes or no, or by a manual's figure" : words;
}

std::string_view tiltInWords(Tilt tilt)
{
    switch (tilt) {
    case Tilt::same:
        return "no, the grade does not change it";
    case Tilt::shifts:
        return "yes";
    case Tilt::traps:
        return "yes, and it decides in which grades the loop is sound";
    }
    return {};
}

void writeRule(const Rule& rule, std::string& page)
{
    const auto row = [&page](std::string_view name, std::string_view text) {
        page.append("- ").append(name).append(": ").append(text).append("\n");
    };
    page.append("\n## ").append(rule.title).append("\n\n");
    page.append(rule.why).append("\n\n");
    row("Id", "`" + std::string(rule.id) + "`");
    row("Limits", limitsInWords(rule));
    row("Basis", rule.basis);
    row("Fix", rule.fix);
    row("Judged over the grades", tiltInWords(rule.tilt));
}

} // namespace

std::string rulesPage()
{
    std::string page(head);
    for (const Rule& rule : ruleBook())
        writeRule(rule, page);
    return page;
}

} // namespace siphonwright
