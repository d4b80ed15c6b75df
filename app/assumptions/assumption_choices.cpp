#include "app/assumptions/assumption_choices.h"

#include "app/language/tr.h"

#include <algorithm>
#include <utility>

namespace siphonwright::assumptions {

namespace {

auto ofAssumption(std::string_view id)
{
    return [id](const AssumptionChange& change) { return change.assumption == id; };
}

} // namespace

const AssumptionChange* changeOf(const Sketch& sketch, std::string_view id)
{
    const auto found = std::find_if(sketch.assumptions.begin(), sketch.assumptions.end(), ofAssumption(id));
    return found == sketch.assumptions.end() ? nullptr : &*found;
}

void keepChange(Document& document, const AssumptionChange& change)
{
    document.apply(tr("Change an assumption"), [&change](Sketch& sketch) {
        auto& all = sketch.assumptions;
        const auto place = std::find_if(all.begin(), all.end(), ofAssumption(change.assumption));
        if (place == all.end())
            all.push_back(change);
        else
            *place = change;
    });
}

void takeBack(Document& document, std::string_view id)
{
    document.apply(tr("Back to the book's assumption"), [id](Sketch& sketch) {
        auto& all = sketch.assumptions;
        all.erase(std::remove_if(all.begin(), all.end(), ofAssumption(id)), all.end());
    });
}

QStringList drivenBy(const Analysis& analysis, Assumed which)
{
    std::vector<std::pair<std::size_t, Banded>> ranks;
    if (!analysis.proof)
        return {};
    for (std::size_t i = 0; i < banded_count; ++i) {
        const auto result = static_cast<Banded>(i);
        std::size_t best = assumed_count;
        for (const HeaterBands& bands : analysis.proof->bands) {
            if (!bands[result])
                continue;
            const std::vector<Assumed>& drivers = bands[result]->drivers;
            const auto found = std::find(drivers.begin(), drivers.end(), which);
            if (found != drivers.end())
                best = std::min(best, static_cast<std::size_t>(found - drivers.begin()));
        }
        if (best < assumed_count)
            ranks.emplace_back(best, result);
    }
    std::stable_sort(ranks.begin(), ranks.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    QStringList out;
    for (const auto& [rank, result] : ranks)
        if (const QString name = nameOf(result); !name.isEmpty())
            out << name;
    return out;
}

QString nameOf(Banded result)
{
    switch (result) {
    case Banded::flow_kg_per_s:
        return tr("flow");
    case Banded::peak_outlet_degC:
        return tr("peak outlet");
    case Banded::cycles_per_hour:
        return tr("cycles");
    case Banded::target_h:
        return tr("time to target");
    default:
        return {};
    }
}

} // namespace siphonwright::assumptions
