#pragma once

#include "app/language/in_words.h"
#include "app/sheet/plan.h"

#include "core/analysis/analysis.h"
#include "core/layout/wording.h"

#include <QRectF>
#include <QString>
#include <QStringList>

#include <algorithm>
#include <utility>
#include <vector>

/// What the side elevation of a sheet has to name, and how often.
namespace siphonwright::test {

/// Without item numbers, and without the ground, which is named beside the view in any case; one that is
/// wanted twice stands there twice. Found from sketch and analysis, not by the painter.
inline QStringList namesWanted(const Sketch& sketch, const Analysis& analysis)
{
    const UnitSystem units = sheet::unitsOf(sketch);
    QStringList names{QStringLiteral("Datum")};
    if (sketch.engine)
        names << inWords(sketch.engine->name);
    if (sketch.engine && sketch.engine->thermostat)
        names << QStringLiteral("Thermostat");
    if (sketch.tank)
        names << QStringLiteral("Surge tank");
    for (const Shared<Area>& area : sketch.areas)
        names << inWords(area->name);
    for (const Heater& heater : sketch.heaters)
        names << inWords(heater.name);
    for (const Port& port : sketch.ports)
        names << inWords(port.name);
    const auto& hoses = analysis.layout.hoses;
    for (const ResolvedHose& hose : hoses) {
        const bool alone = std::count_if(hoses.begin(), hoses.end(), [&](const ResolvedHose& other) {
                               return other.role() == hose.role();
                           }) == 1;
        const QString name = !alone                            ? inWords(nameOfHose(*hose->hose))
                             : hose.role() == HoseRole::supply ? QStringLiteral("Supply")
                                                               : QStringLiteral("Return");
        names << name + QLatin1Char(' ') + inWords(hose->bore_mm, Unit::mm, units);
    }
    for (const auto& [part, number] : sheet::itemNumbers(sketch, analysis))
        if (part.kind == PartKind::inline_part)
            names << QStringLiteral("[%1]").arg(number);
    if (!analysis.proof)
        return names;
    for (const SagMargin& margin : analysis.proof->sag)
        if (margin.droop.margin_mm)
            names << QStringLiteral("may sag ") + inWords(*margin.droop.margin_mm, Unit::mm, units);
    constexpr double least_named_ml = 2;
    if (analysis.proof->filling.missing.empty())
        for (const PocketFound& pocket : analysis.proof->filling.pockets)
            if (pocket.volume_ml >= least_named_ml)
                names << inWords(pocket.volume_ml, Unit::ml, units) + QStringLiteral(" of air");
    names.removeAll(QString());
    return names;
}

/// Does a text say a name, with whatever stands behind it: an item number, where it is, what becomes of it?
inline bool says(const QString& text, const QString& name)
{
    if (!text.startsWith(name))
        return false;
    const QString behind = text.mid(name.size());
    return behind.isEmpty() || behind.startsWith(QLatin1String(" [")) || behind.startsWith(u',') ||
           behind.startsWith(u':');
}

/// A row of the key: its letter or letters, and what they stand for.
inline std::pair<QString, QString> keyRowOf(const QString& text)
{
    const qsizetype gap = text.indexOf(QLatin1String("  "));
    return gap == 1 || gap == 2 ? std::pair(text.left(gap), text.mid(gap + 2))
                                : std::pair<QString, QString>();
}

/// The names that neither stand in the view nor in a key whose letter stands there.
/// \param Text  has the members text and box, in device units as `view` and `key`, which may be null
template <class Text>
QStringList namesLost(const QStringList& wanted, const std::vector<Text>& texts, const QRectF& view,
                      const QRectF& key)
{
    QStringList in_view;
    QStringList said_there;
    for (const Text& one : texts) {
        const bool inside = view.contains(one.box.center());
        if (inside && !one.text.isEmpty())
            in_view << one.text;
        if (!one.text.isEmpty() && (inside || key.contains(one.box.center())))
            said_there << one.text;
    }
    const auto isSaid = [&](const QString& text, const QString& name) {
        const auto [letter, said] = keyRowOf(text);
        return says(text, name) || (!letter.isEmpty() && says(said, name) && in_view.contains(letter));
    };
    QStringList lost;
    QStringList distinct = wanted;
    distinct.removeDuplicates();
    for (const QString& name : distinct) {
        const auto said = std::count_if(said_there.begin(), said_there.end(),
                                        [&](const QString& text) { return isSaid(text, name); });
        if (said < wanted.count(name))
            lost
                << QStringLiteral("%1: said %2 times, wanted %3").arg(name).arg(said).arg(wanted.count(name));
    }
    return lost;
}

} // namespace siphonwright::test
