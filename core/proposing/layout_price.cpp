#include "core/proposing/layout_price.h"

#include "core/paperwork/estimate.h"
#include "core/paperwork/part_rows.h"

#include <algorithm>

namespace siphonwright {
namespace {

bool isFitted(ItemKind kind)
{
    return kind >= ItemKind::hose && kind <= ItemKind::insulation;
}

} // namespace

LayoutPrice priceOfHoses(const Sketch& sketch, const Layout& layout)
{
    LayoutPrice out;
    const PartsList parts = partsOf(sketch, layout);
    const Estimate estimate = estimateOf(sketch, parts);
    for (const EstimateLine& line : estimate.lines) {
        if (line.group != LineGroup::materials || line.number == 0)
            continue;
        const ItemKind kind = parts.rows[line.number - 1].kind;
        if (!isFitted(kind))
            continue;
        if (line.amount_minor) {
            out.minor = out.minor.value_or(0) + *line.amount_minor;
            continue;
        }
        const std::string name(nameOf(kind));
        if (std::find(out.not_priced.begin(), out.not_priced.end(), name) == out.not_priced.end())
            out.not_priced.push_back(name);
    }
    if (estimate.status == EstimateStatus::refused)
        out.not_priced.push_back(estimate.message);
    const std::string hose(nameOf(ItemKind::hose));
    out.hose_priced =
        out.minor && std::find(out.not_priced.begin(), out.not_priced.end(), hose) == out.not_priced.end();
    return out;
}

std::optional<double> priceOfMetre(const Sketch& sketch, double bore_mm)
{
    PartRow hose;
    hose.kind = ItemKind::hose;
    hose.item = std::string(keyOf(ItemKind::hose)) + "-" + sizeKey(bore_mm);
    const PricedItem* priced = priceOf(quoteOf(sketch).prices, hose);
    constexpr std::int64_t metre_thousandths = 1000;
    const std::optional<std::int64_t> units =
        priced ? converted(metre_thousandths, PriceUnit::metre, priced->unit) : std::nullopt;
    if (!units || !priced->price_minor)
        return std::nullopt;
    return static_cast<double>(*units) / metre_thousandths * static_cast<double>(*priced->price_minor);
}

} // namespace siphonwright
