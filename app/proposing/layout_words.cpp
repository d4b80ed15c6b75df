#include "app/proposing/layout_words.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/paper/paperwork.h"

#include "core/paperwork/parts.h"
#include "core/proposing/proposal_text.h"

#include <cmath>

namespace siphonwright::proposing {
namespace {

QString words(const Message& text, UnitSystem units)
{
    return inWords(text, units);
}

QString amount(double value, Unit unit, UnitSystem units)
{
    return inWords(value, unit, units);
}

} // namespace

QString priceText(const LayoutPrice& price, const Sketch& sketch)
{
    if (!price.minor)
        return tr("not priced");
    const QString sum = paper::money(*price.minor, quoteOf(sketch));
    if (price.complete())
        return sum;
    QStringList missing;
    for (const std::string& name : price.not_priced)
        missing << inWords(name);
    return tr("%1, not priced: %2").arg(sum, missing.join(QStringLiteral(", ")));
}

QString rowText(std::size_t number, const Proposal& proposal, UnitSystem units)
{
    const QString hoses = tr("%1.  Bore %2: %3 + %4")
                              .arg(number)
                              .arg(amount(proposal.bore_mm, Unit::mm, units),
                                   amount(std::round(proposal.supply_mm), Unit::mm, units),
                                   amount(std::round(proposal.return_mm), Unit::mm, units));
    const QString flow = proposal.flow_l_per_min > 0 ? amount(proposal.flow_l_per_min, Unit::l_per_min, units)
                                                     : tr("flow not computed");
    QStringList lines{hoses, tr("%1, %2").arg(flow, priceText(proposal.price, proposal.sketch))};
    if (const std::optional<Message> least = leastOf(proposal))
        lines << words(*least, units);
    if (!proposal.sound_over_envelope)
        lines << tr("▲ Not sound on every grade that is judged");
    return lines.join(QLatin1Char('\n'));
}

QString detailsText(const Proposal& proposal, const std::vector<Finding>& beside, UnitSystem units)
{
    QStringList lines;
    for (const Message& change : proposal.changes)
        lines << words(change, units);
    lines << tr("Supply hose %1, return hose %2, %3 in all. Clips: %4. A valve at each port.")
                 .arg(amount(std::round(proposal.supply_mm), Unit::mm, units),
                      amount(std::round(proposal.return_mm), Unit::mm, units),
                      amount(std::round(proposal.length_mm), Unit::mm, units))
                 .arg(proposal.clips);
    lines << tr("What is left:");
    for (const Message& margin : marginList(proposal))
        lines << tr("– %1").arg(words(margin, units));
    if (proposal.advices > 0)
        lines << tr("Findings of advice that stay: %1.").arg(proposal.advices);
    if (const QString stays = besideText(beside, units); !stays.isEmpty())
        lines << stays;
    return lines.join(QLatin1Char('\n'));
}

QString besideText(const std::vector<Finding>& beside, UnitSystem units)
{
    QStringList lines;
    for (const Finding& finding : beside)
        if (const QString text = words(finding.text, units); !lines.contains(text))
            lines << text;
    return lines.isEmpty() ? QString() : tr("No layout mends: %1").arg(lines.join(QLatin1Char(' ')));
}

} // namespace siphonwright::proposing
