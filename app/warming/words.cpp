#include "app/warming/words.h"

#include "app/language/in_words.h"
#include "app/language/language.h"
#include "app/language/tr.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::warming {
namespace {

constexpr double nearly_always = 0.95;

QString inMinutes(double minutes)
{
    const auto total = static_cast<long long>(std::llround(minutes));
    const QString hours = QString::number(total / 60);
    const QString rest = QString::number(total % 60);
    if (total < 60)
        return tr("%1 min").arg(rest);
    return total % 60 == 0 ? tr("%1 h").arg(hours) : tr("%1 h %2 min").arg(hours, rest);
}

/// " (55–66 °C)": a band is never surer than whole degrees.
QString temperatures(const ResultBand& band, UnitSystem units)
{
    const auto whole = [units](double value) {
        const double at = units == UnitSystem::inch ? (std::round(value * 1.8) / 1.8) : std::round(value);
        return valueText(at, Unit::degC, units);
    };
    const QString low = whole(band.low);
    const QString high = whole(band.high);
    return low == high ? QString() : tr(" (%1–%2)").arg(low.section(QLatin1Char(' '), 0, 0), high);
}

QString numbers(const ResultBand& band)
{
    const QString low = QString::number(std::floor(band.low));
    const QString high = QString::number(std::ceil(band.high));
    return low == high ? QString() : tr(" (%1–%2)").arg(low, high);
}

QString peakText(const Result& result, UnitSystem units)
{
    if (!result.outcome.peak_outlet_degC)
        return tr("never on");
    const double peak = *result.outcome.peak_outlet_degC;
    QString text = tr("peak %1").arg(valueText(peak, Unit::degC, units));
    if (result.peak_band)
        text += temperatures(*result.peak_band, units);
    if (!result.outlet_limit_degC)
        return text;
    const QString limit = valueText(*result.outlet_limit_degC, Unit::degC, units);
    if (peak > *result.outlet_limit_degC)
        return text + tr(", over %1").arg(limit);
    if (result.peak_band && result.peak_band->high > *result.outlet_limit_degC)
        return text + tr(", may exceed %1").arg(limit);
    return text;
}

QString cyclesText(const Result& result)
{
    const double cycles = result.outcome.cycles_per_hour;
    QString text = cycles == 1 ? tr("1 cycle an hour")
                               : tr("%1 cycles an hour").arg(withDecimalSign(QString::number(cycles)));
    if (result.cycles_band)
        text += numbers(*result.cycles_band);
    if (!result.cycles_limit)
        return text;
    if (cycles > *result.cycles_limit)
        return text + tr(", over %1").arg(withDecimalSign(QString::number(*result.cycles_limit)));
    if (result.cycles_band && result.cycles_band->high > *result.cycles_limit)
        return text + tr(", may exceed %1").arg(withDecimalSign(QString::number(*result.cycles_limit)));
    return text;
}

/// In how many of ten cases the target is reached where it may be missed, or where it is missed by a little.
QString chanceText(const Result& result)
{
    if (!result.target_band || result.target_band->share >= nearly_always)
        return {};
    const double of_ten = std::round(result.target_band->share * 10);
    return of_ten < 1 ? tr(", reached in fewer than 1 of 10 cases")
                      : tr(", reached in %1 of 10 cases").arg(QString::number(of_ten));
}

QString targetText(const Result& result, UnitSystem units)
{
    const QString target = valueText(result.target_degC, Unit::degC, units);
    const QString at_end = valueText(result.block_at_end_degC, Unit::degC, units);
    if (!result.reached_h && at_end == target)
        return tr("%1 just not reached in %2").arg(target, timeText(result.end_h)) + chanceText(result);
    if (!result.reached_h)
        return tr("%1 not reached in %2 (%3 then)").arg(target, timeText(result.end_h), at_end) +
               chanceText(result);
    QString text = tr("%1 after %2").arg(target, timeText(*result.reached_h));
    if (result.target_band) {
        const QString low = timeText(result.target_band->low);
        const QString high = timeText(result.target_band->high);
        if (low != high)
            text += tr(" (%1–%2)").arg(low, high);
        text += chanceText(result);
    } else if (!result.bands_follow) {
        text += tr(", may not be reached");
    }
    return text;
}

QString asDriver(Assumed which)
{
    const std::string_view title = assumptionOf(which).title;
    return language::withinSentence(inWords(title).section(QLatin1Char(','), 0, 0));
}

} // namespace

QString timeText(double hours)
{
    constexpr double to_the_ten_min_until_h = 10;
    if (hours < 1)
        return inMinutes(hours * 60);
    if (hours < to_the_ten_min_until_h)
        return inMinutes(std::round(hours * 6) * 10);
    return inMinutes(std::round(hours) * 60);
}

QString clockText(double hours)
{
    return inMinutes(hours * 60);
}

QString valueText(double value, Unit unit, UnitSystem units)
{
    return inWords(value, unit, units);
}

QString resultLine(const Result& result, UnitSystem units)
{
    QStringList said = {peakText(result, units), cyclesText(result), targetText(result, units)};
    said << tr("%1 kWh").arg(numberInWords(result.energy_kWh.back(), 1));
    if (result.outcome.return_warm_s)
        said << tr("return warm after %1").arg(timeText(*result.outcome.return_warm_s / 3600));
    else
        said << tr("return never warm");
    if (result.outcome.tripped_s)
        said << tr("cut-out trips after %1").arg(timeText(*result.outcome.tripped_s / 3600));
    if (result.outcome.boiled_s)
        said << tr("boils after %1").arg(timeText(*result.outcome.boiled_s / 3600));
    if (result.outcome.on_the_edge)
        said << tr("on the edge of stalling");
    return said.join(QStringLiteral(" · "));
}

QString driversLine(const Result& result)
{
    constexpr qsizetype most = 3;
    QStringList said;
    for (std::size_t rank = 0; rank < 2; ++rank)
        for (const auto* band : {&result.peak_band, &result.target_band, &result.cycles_band})
            if (*band && rank < (*band)->drivers.size() && said.size() < most) {
                const QString driver = asDriver((*band)->drivers[rank]);
                if (!said.contains(driver))
                    said << driver;
            }
    return said.isEmpty() ? QString() : tr("Hangs most on: %1").arg(said.join(QStringLiteral(", ")));
}

QString readingAt(const Result& result, double hour, UnitSystem units)
{
    const std::size_t index = result.nearest(hour);
    QStringList said = {tr("at %1").arg(clockText(result.time_h[index]))};
    for (const Curve curve : all_curves)
        said << tr("%1 %2").arg(nameOf(curve), valueText(result[curve][index], unitOf(curve), units));
    return said.join(QStringLiteral(", "));
}

} // namespace siphonwright::warming
