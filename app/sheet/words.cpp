#include "app/sheet/words.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/analysis/margin_text.h"
#include "core/layout/wording.h"
#include "core/paperwork/electrical_load.h"
#include "core/paperwork/parts.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace siphonwright::sheet {

namespace {

QString severityWord(Severity severity)
{
    switch (severity) {
    case Severity::stop:
        return tr("Stop");
    case Severity::caution:
        return tr("Caution");
    case Severity::advice:
        return tr("Advice");
    }
    return {};
}

/// Who cuts by the sheet and who orders by the parts list take the same figures.
QString hoseRow(const Sketch& sketch, const HoseCut& cut, UnitSystem units)
{
    const QString bore = cut.bore_mm ? inWords(*cut.bore_mm, Unit::mm, units) : tr("not entered");
    const QString length = inWords(cut.length_mm, Unit::mm, units);
    const double allowance_mm = quoteOf(sketch).cut_allowance_mm;
    const QString row =
        allowance_mm > 0 ? tr("%1: bore %2, cut %3 (%4 of it allowance)")
                               .arg(inWords(cut.name), bore, length, inWords(allowance_mm, Unit::mm, units))
                         : tr("%1: bore %2, cut %3").arg(inWords(cut.name), bore, length);
    const QString pieces = piecesWords(cut, units);
    return pieces.isEmpty() ? row : tr("%1; from A to B: %2").arg(row, pieces);
}

/// A name that tells a figure already is not followed by it.
QString heaterRow(const Heater& heater, UnitSystem units)
{
    const QString name = inWords(heater.name);
    QString row = name;
    const auto add = [&](const Fact<double>& fact, Unit unit) {
        const QString text = fact.known() ? inWords(*fact.value, unit, units) : QString();
        if (!text.isEmpty() && !name.split(QStringLiteral(", ")).contains(text))
            row += QStringLiteral(", ") + text;
    };
    add(heater.power_W, Unit::watt);
    add(heater.rated_V, Unit::volt);
    return row;
}

/// The row of the parts list that a cut is in.
bool isOf(const HoseCut& cut, const PartRow& row)
{
    const bool used = std::any_of(row.used.begin(), row.used.end(), [&](const UsedAt& at) {
        return at.part == PartRef{PartKind::hose, cut.hose, 0};
    });
    return used && (cut.bore_mm ? !row.size.quantities.empty() && row.size.quantities[0].value == *cut.bore_mm
                                : !row.missing.empty());
}

/// A sentence for what the sketch has in place of the rule book.
QString choiceRow(const LimitChange& change, UnitSystem units)
{
    const Rule* rule = ruleById(change.rule);
    const QString title = rule ? inWords(rule->title) : QString::fromStdString(change.rule);
    const QString reason =
        change.reason.empty() ? tr("no reason given") : QString::fromStdString(change.reason);
    if (change.off)
        return tr("Not judged by choice: %1 (%2).").arg(title, reason);
    if (!rule)
        return {};
    QStringList limits;
    const auto add = [&](const QString& pattern, const std::optional<double>& now,
                         const std::optional<double>& own) {
        if (now)
            limits += own ? tr("%1 instead of %2")
                                .arg(pattern.arg(inWords(*now, rule->unit, units)),
                                     inWords(*own, rule->unit, units))
                          : pattern.arg(inWords(*now, rule->unit, units));
    };
    const bool over = rule->sense == Sense::over;
    add(over ? tr("advice over %1") : tr("advice under %1"), change.advice, rule->limits.advice);
    add(over ? tr("caution over %1") : tr("caution under %1"), change.caution, rule->limits.caution);
    add(over ? tr("stop over %1") : tr("stop under %1"), change.stop, rule->limits.stop);
    return limits.isEmpty() ? QString()
                            : tr("%1: %2 (%3).").arg(title, limits.join(QStringLiteral(", ")), reason);
}

/// "ethylene glycol 50 %".
QString coolantWords(const Sketch& sketch)
{
    const Coolant& coolant = sketch.coolant;
    QString kind = tr("kind not known");
    if (coolant.glycol == Glycol::none)
        return tr("plain water");
    if (coolant.glycol == Glycol::ethylene)
        kind = tr("ethylene glycol");
    else if (coolant.glycol == Glycol::propylene)
        kind = tr("propylene glycol");
    return coolant.volume_percent.known()
               ? QStringLiteral("%1 %2").arg(
                     kind, inWords(*coolant.volume_percent.value, Unit::percent, unitsOf(sketch)))
               : tr("%1, strength not entered").arg(kind);
}

/// A chamber's volume is its manual's; where that is not entered, its cylinder's.
double chamberVolume(const Heater& heater)
{
    const double r = heater.chamber_bore_mm / 2;
    const double cylinder_ml =
        3.14159265358979323846 * r * r * (heater.chamber_top_mm - heater.chamber_bottom_mm) / 1000;
    return heater.chamber_volume_ml.value.value_or(cylinder_ml);
}

} // namespace

QString partWord(ItemKind kind)
{
    switch (kind) {
    case ItemKind::bleed:
        return tr("bleed");
    case ItemKind::drain:
        return tr("drain");
    case ItemKind::lift_check_valve:
    case ItemKind::swing_check_valve:
        return tr("check valve");
    case ItemKind::reducer:
        return tr("reducer");
    case ItemKind::elbow:
        return tr("elbow");
    default:
        return tr("valve");
    }
}

QString piecesWords(const HoseCut& cut, UnitSystem units)
{
    if (cut.parts.empty())
        return {};
    const UnitChoice tape = units == UnitSystem::metric ? UnitChoice::metric : UnitChoice::inch;
    const std::vector<double> long_mm = piecesOnTape(cut, tape);
    QStringList words{inWords(long_mm.front(), Unit::mm, units)};
    for (std::size_t i = 0; i < cut.parts.size(); ++i) {
        const HosePart& part = cut.parts[i];
        // With what lies between the stops of a part the pieces come to the whole.
        const double between_mm = onTape(part.to_mm, tape) - onTape(part.from_mm, tape);
        const QString name = partWord(part.kind);
        words << (between_mm > 0 ? QStringLiteral("%1 %2").arg(name, inWords(between_mm, Unit::mm, units))
                                 : name)
              << inWords(long_mm[i + 1], Unit::mm, units);
    }
    return words.join(QStringLiteral(", "));
}

Section findingsSection(const Sketch& sketch, const Analysis& analysis)
{
    Section section{tr("Findings"), {}, 6, 3}; // their numbers stand on the drawing
    for (std::size_t i = 0; i < analysis.findings.size(); ++i) {
        const Finding& finding = analysis.findings[i];
        const QString text = inWords(finding.text, unitsOf(sketch));
        section.items.push_back({QStringLiteral("%1: %2").arg(severityWord(finding.severity), text),
                                 finding.severity, int(i) + 1});
    }
    if (section.items.empty())
        section.items.push_back({tr("None in what was judged."), std::nullopt, 0});
    return section;
}

Section notJudgedSection(const Analysis& analysis)
{
    Section section{tr("Not judged, for want of a fact"), {}, 1};
    std::map<std::string, bool> said;
    for (const NotJudged& one : analysis.not_judged) {
        QString missing = inWords(one.missing);
        if (missing.isEmpty() || !said.emplace(one.missing, true).second)
            continue;
        missing[0] = missing[0].toUpper();
        section.items.push_back({missing + QLatin1Char('.'), std::nullopt, 0});
    }
    return section;
}

Section marginsSection(const Sketch& sketch, const Analysis& analysis)
{
    Section section{tr("Margins"), {}, 2};
    if (!analysis.proof || analysis.layout.hoses.empty())
        return section;
    const UnitSystem units = unitsOf(sketch);
    const auto add = [&section](const QString& text) { section.items.push_back({text, std::nullopt, 0}); };
    add(inWords(textOf(analysis.proof->sound), units));
    for (const SagMargin& margin : analysis.proof->sag)
        add(inWords(textOf(margin, sketch), units));
    add(tr("Judged on grades to %1 nose up and down, %2 left and right.")
            .arg(inWords(sketch.site.envelope_along_percent, Unit::percent, units),
                 inWords(sketch.site.envelope_across_percent, Unit::percent, units)));
    if (!analysis.unconfirmed.empty())
        add(tr("Not confirmed: %1.").arg(inWords(listOf(analysis.unconfirmed))));
    return section;
}

Section choicesSection(const Sketch& sketch)
{
    Section section{tr("Judged otherwise than the rule book"), {}, 3};
    for (const LimitChange& change : sketch.limits)
        if (const QString row = choiceRow(change, unitsOf(sketch)); !row.isEmpty())
            section.items.push_back({row, std::nullopt, 0});
    return section;
}

Section partsSection(const Sketch& sketch, const Analysis& analysis)
{
    const UnitSystem units = unitsOf(sketch);
    Section section{tr("Parts and cut lengths"), {}, 4};
    const auto add = [&section](const QString& text) { section.items.push_back({text, std::nullopt, 0}); };
    const PartsList parts = partsOf(sketch, analysis.layout);
    const auto numbered = [&parts](const PartRef& part, ItemKind kind, const QString& text) {
        for (const PartRow& row : parts.rows)
            for (const UsedAt& used : row.used)
                if (row.kind == kind && used.part == part)
                    return QStringLiteral("[%1] %2").arg(row.number).arg(text);
        return text;
    };
    for (const Heater& heater : sketch.heaters)
        add(numbered(refOf(heater), ItemKind::heater, heaterRow(heater, units)));
    const auto add_part = [&](const PartRow& part) {
        QString name = inWords(nameOf(part.kind));
        if (!part.size.pattern.empty())
            name += QStringLiteral(", ") + inWords(part.size, units);
        const QString amount = inWords(static_cast<double>(*part.thousandths), Unit::mm, units);
        add(QStringLiteral("[%1] %2")
                .arg(part.number)
                .arg(part.unit == PriceUnit::each ? tr("%1 x %2").arg(*part.thousandths / 1000).arg(name)
                                                  : QStringLiteral("%1: %2").arg(name, amount)));
    };
    for (const PartRow& part : parts.rows) {
        // Coolant is told with the electrical load.
        if (part.kind == ItemKind::heater || part.unit == PriceUnit::litre || !part.thousandths)
            continue;
        if (part.kind != ItemKind::hose) {
            add_part(part);
            continue;
        }
        for (const HoseCut& cut : parts.cuts)
            if (isOf(cut, part))
                add(QStringLiteral("[%1] %2").arg(part.number).arg(hoseRow(sketch, cut, units)));
        section.at_least = std::max(section.at_least, section.items.size()); // nobody cuts without them
        section.keeps = 1;
    }
    return section;
}

Section supplySection(const Sketch& sketch, const Analysis& analysis)
{
    const UnitSystem units = unitsOf(sketch);
    Section section{tr("Electrical load and coolant"), {}, 2};
    const auto add = [&section](const QString& text) { section.items.push_back({text, std::nullopt, 0}); };
    const auto figure = [&](const std::optional<double>& value, Unit unit) {
        return value ? inWords(*value, unit, units) : tr("not known");
    };
    if (!sketch.heaters.empty()) {
        const ElectricalLoad load = electricalLoadOf(sketch);
        add(tr("All heaters %1, current %2, continuous load (125 %) %3.")
                .arg(figure(load.power_W, Unit::watt), figure(load.current_A, Unit::ampere),
                     figure(load.continuous_A, Unit::ampere)));
    }
    double volume_ml = 0;
    for (const ResolvedHose& hose : analysis.layout.hoses)
        volume_ml += hose->volume_ml;
    for (const Heater& heater : sketch.heaters)
        volume_ml += chamberVolume(heater);
    if (volume_ml > 0)
        add(tr("New hoses and heaters hold about %1 of coolant: %2.")
                .arg(inWords(volume_ml / 1000, Unit::litre, units), coolantWords(sketch)));
    return section;
}

Section behindSection(const Options& options)
{
    Section section{tr("Further sheets"), {}, 2};
    const auto add = [&section](const QString& text) { section.items.push_back({text, std::nullopt, 0}); };
    const auto sheets = [](int first, int last) {
        return first == last ? tr("Sheet %1").arg(first) : tr("Sheets %1 to %2").arg(first).arg(last);
    };
    if (options.notes_sheets > 0)
        add(tr("%1: the rest of page 1.").arg(sheets(2, 1 + options.notes_sheets)));
    else if (options.says_whole)
        add(tr("%1: all of page 1.").arg(sheets(1, 1)));
    for (const Behind& one : options.behind) {
        const QString where = sheets(one.first_sheet, one.last_sheet);
        add(one.page > 0 ? tr("%1: page %2, %3 (%4).").arg(where).arg(one.page).arg(one.title, one.holds)
                         : QStringLiteral("%1: %2 (%3).").arg(where, one.title, one.holds));
    }
    if (options.behind.empty())
        add(tr("None printed with this one; there are checklist, parts and estimate, and assumptions."));
    return section;
}

std::vector<std::pair<PartRef, std::size_t>> itemNumbers(const Sketch& sketch, const Analysis& analysis)
{
    std::vector<std::pair<PartRef, std::size_t>> items;
    for (const PartRow& row : partsOf(sketch, analysis.layout).rows) {
        for (const UsedAt& used : row.used) {
            const bool named = row.kind == ItemKind::heater || row.kind == ItemKind::hose ||
                               used.part.kind == PartKind::port || used.part.kind == PartKind::inline_part;
            // What is at every port alike is in the list and in the table of ports.
            const bool alike = row.kind == ItemKind::hose_end || row.kind == ItemKind::sealant ||
                               row.kind == ItemKind::clamp || row.kind == ItemKind::elbow;
            const std::pair<PartRef, std::size_t> item{used.part, row.number};
            if (named && !alike && std::find(items.begin(), items.end(), item) == items.end())
                items.push_back(item);
        }
    }
    return items;
}

Section complaintSection(const Sketch& sketch)
{
    Section section{tr("What is known"), {}, 1, true};
    for (const QString& line :
         QString::fromStdString(sketch.notes).split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        section.items.push_back({line.trimmed(), std::nullopt, 0, 0});
    return section;
}

Section questionsSection()
{
    return {tr("To be answered"),
            {{tr("Where does air stay when this is filled, and about how much?"), std::nullopt, 0, 3},
             {tr("Does it circulate, and which way?"), std::nullopt, 0, 2},
             {tr("What would you change, and why?"), std::nullopt, 0, 4}},
            3,
            true};
}

Section cautionsSection()
{
    Section section{tr("Cautions"), {}, 9, 2};
    const char* const cautions[] = {
        QT_TRANSLATE_NOOP("siphonwright::sheet",
                          "Qualified technicians only. Disconnect and lock out power while working; "
                          "inhibit a generator's automatic start."),
        QT_TRANSLATE_NOOP("siphonwright::sheet",
                          "Chock wheels, block air suspension; never work under an unsupported "
                          "vehicle."),
        QT_TRANSLATE_NOOP("siphonwright::sheet", "Open the cap only cold: hot coolant under pressure."),
        QT_TRANSLATE_NOOP("siphonwright::sheet", "Never energise without coolant in the chamber."),
        QT_TRANSLATE_NOOP("siphonwright::sheet",
                          "Heater off before a valve is closed: both closed is a sealed vessel."),
        QT_TRANSLATE_NOOP("siphonwright::sheet", "Run the engine outdoors or with extraction."),
        QT_TRANSLATE_NOOP("siphonwright::sheet",
                          "Grounded supply, local electrical code, licensed electrician."),
        QT_TRANSLATE_NOOP("siphonwright::sheet",
                          "Antifreeze is poisonous: catch it and dispose of it properly."),
        QT_TRANSLATE_NOOP("siphonwright::sheet",
                          "The heater's and the engine's own manuals rule over this sheet; its figures "
                          "are estimates from stated assumptions."),
    };
    for (const char* caution : cautions)
        section.items.push_back({tr(caution), std::nullopt, 0});
    return section;
}

} // namespace siphonwright::sheet
