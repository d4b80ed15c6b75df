#include "app/paper/cut_ink.h"

#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <QPainter>

#include <algorithm>
#include <utility>

namespace siphonwright::paper {

namespace {

using drawing::Anchor;
using drawing::Weight;

QString lengthText(std::int64_t hundredths, UnitSystem units)
{
    return inWords(static_cast<double>(hundredths) / static_cast<double>(hundredths_per_mm), Unit::mm, units);
}

/// The lengths of a roll's cuts, by which rolls are alike.
std::vector<std::int64_t> lengthsOf(const CutRoll& roll, const BorePlan& bore)
{
    std::vector<std::int64_t> lengths;
    for (const std::size_t cut : roll.cuts)
        lengths.push_back(hundredthsOf(bore.cuts[cut].length_mm));
    return lengths;
}

/// The longest of the texts that fits; nothing if none does.
void paintFitting(QPainter& painter, const QRectF& box, const QStringList& texts, const CutInk& ink)
{
    for (const QString& text : texts) {
        if (drawing::textWidth(text, ink.lettering) > box.width() - ink.lettering)
            continue;
        drawing::paintWeightedText(painter, box.center() + QPointF(0, ink.lettering / 2), text,
                                   Anchor::centre, ink.ink, ink.lettering, Weight::regular);
        return;
    }
}

} // namespace

std::vector<RollsAlike> rollsAlike(const BorePlan& bore)
{
    std::vector<RollsAlike> out;
    for (const CutRoll& roll : bore.plan.rolls) {
        const auto found = std::find_if(out.begin(), out.end(), [&](const RollsAlike& other) {
            return other.roll.length == roll.length && lengthsOf(other.roll, bore) == lengthsOf(roll, bore);
        });
        if (found != out.end())
            ++found->rolls;
        else
            out.push_back({1, roll});
    }
    return out;
}

void paintRoll(QPainter& painter, QPointF top_left, const RollsAlike& alike, const BorePlan& bore,
               std::int64_t longest, UnitSystem units, const CutInk& ink)
{
    const double baseline = top_left.y() + (ink.bar_height + ink.lettering) / 2;
    drawing::paintWeightedText(painter, {top_left.x(), baseline},
                               tr("%1 × %2").arg(alike.rolls).arg(lengthText(alike.roll.length, units)),
                               Anchor::left, ink.ink, ink.lettering, Weight::strong);
    const double per_length = ink.bar_width / static_cast<double>(std::max<std::int64_t>(longest, 1));
    double x = top_left.x() + ink.label_width;
    painter.setPen(QPen(ink.ink, ink.line));
    for (const std::size_t cut : alike.roll.cuts) {
        const std::int64_t length = hundredthsOf(bore.cuts[cut].length_mm);
        const QRectF box(x, top_left.y(), static_cast<double>(length) * per_length, ink.bar_height);
        painter.setPen(QPen(ink.ink, ink.line));
        painter.setBrush(ink.fill);
        painter.drawRect(box);
        const QString text = lengthText(length, units);
        paintFitting(painter, box, {QStringLiteral("%1, %2").arg(inWords(bore.cuts[cut].name), text), text},
                     ink);
        x += box.width();
    }
    const QRectF left(x, top_left.y(), static_cast<double>(alike.roll.left) * per_length, ink.bar_height);
    if (alike.roll.left <= 0)
        return;
    painter.setPen(QPen(ink.faint, ink.line, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(left);
    const QString rest = lengthText(alike.roll.left, units);
    paintFitting(painter, left, {tr("%1 left over").arg(rest), rest}, ink);
}

bool lengthsFit(const RollsAlike& alike, const BorePlan& bore, std::int64_t longest, UnitSystem units,
                const CutInk& ink)
{
    const double per_length = ink.bar_width / static_cast<double>(std::max<std::int64_t>(longest, 1));
    return std::all_of(alike.roll.cuts.begin(), alike.roll.cuts.end(), [&](std::size_t cut) {
        const std::int64_t length = hundredthsOf(bore.cuts[cut].length_mm);
        return drawing::textWidth(lengthText(length, units), ink.lettering) <=
               static_cast<double>(length) * per_length - ink.lettering;
    });
}

QString cutsText(const RollsAlike& alike, const BorePlan& bore, UnitSystem units)
{
    std::vector<std::pair<QString, int>> counted;
    for (const std::size_t cut : alike.roll.cuts) {
        const QString text = QStringLiteral("%1, %2").arg(
            inWords(bore.cuts[cut].name), lengthText(hundredthsOf(bore.cuts[cut].length_mm), units));
        const auto found = std::find_if(counted.begin(), counted.end(),
                                        [&](const auto& other) { return other.first == text; });
        if (found != counted.end())
            ++found->second;
        else
            counted.emplace_back(text, 1);
    }
    QStringList all;
    for (const auto& [text, times] : counted)
        all << (times == 1 ? text : QStringLiteral("%1 × %2").arg(times).arg(text));
    return all.join(QStringLiteral("; "));
}

QString planText(const BorePlan& bore, UnitSystem units)
{
    const CutPlan& plan = bore.plan;
    const QString name = bore.bore_mm ? tr("Hose, bore %1").arg(inWords(*bore.bore_mm, Unit::mm, units))
                                      : tr("Hose, bore not entered");
    if (plan.status == CutStatus::cut_too_long)
        return tr("%1: %2 is longer than the longest roll: %3.")
            .arg(name, inWords(bore.cuts[plan.too_long].name),
                 inWords(bore.cuts[plan.too_long].length_mm, Unit::mm, units));
    if (!plan.planned())
        return bore.bore_mm ? tr("%1: %2").arg(name, inWords(plan.message))
                            : tr("%1: not planned.").arg(name);
    const QString text = tr("%1: %2 off %3 of rolls; %4 left over. ")
                             .arg(name, lengthText(plan.cut, units), lengthText(plan.bought, units),
                                  lengthText(plan.waste(), units));
    return text +
           (plan.status == CutStatus::least
                ? tr("No plan needs less hose.")
                : tr("A good plan; none needs less than %1.").arg(lengthText(plan.least_possible, units)));
}

std::int64_t longestRoll(const std::vector<BorePlan>& plans)
{
    std::int64_t longest = 0;
    for (const BorePlan& bore : plans)
        for (const CutRoll& roll : bore.plan.rolls)
            longest = std::max(longest, roll.length);
    return longest;
}

} // namespace siphonwright::paper
