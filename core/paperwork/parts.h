#pragma once

#include "core/layout/layout.h"
#include "core/quantity/quantity.h"
#include "core/sketch/part.h"
#include "core/sketch/quote.h"
#include "core/sketch/sketch.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What a drawn job takes, for one vehicle. It counts what is drawn: a hose end that is on nothing, a valve
/// nobody drew, are not in it. What was not entered is said in the row and never guessed.
namespace siphonwright {

/// In the order of the list.
enum class ItemKind {
    heater,
    mounting_kit,
    hose,
    hose_end,
    adapter,
    core_plug_adapter,
    radiator_hose_tee,
    cabin_line_tee,
    elbow,
    moulded_elbow,
    reducer,
    isolation_valve,
    bleed,
    drain,
    lift_check_valve,
    swing_check_valve,
    clamp,
    clip,
    insulation,
    sealant,
    antifreeze,
    distilled_water
};
/// Its word in keys and files: "isolation-valve".
std::string_view keyOf(ItemKind kind);
/// What people call it: "Isolation valve".
std::string_view nameOf(ItemKind kind);

/// A place on the drawing where an item is used.
struct UsedAt {
    PartRef part;
    Message name; ///< "Return hose 2: 1245 mm"
    friend bool operator==(const UsedAt&, const UsedAt&) = default;
};

struct PartRow {
    std::size_t number = 0; ///< item number, from 1
    ItemKind kind = ItemKind::heater;
    /// Key of its price: kind and size, millimetres whatever people see: "clamp-27.05". Empty where the size
    /// is not known.
    std::string item;
    Message size;        ///< empty pattern: it has none
    std::string missing; ///< what is not entered, so that it cannot be ordered: "bore not entered"
    std::optional<std::int64_t> thousandths; ///< of pieces, metres or litres; nothing: not known
    PriceUnit unit = PriceUnit::each;        ///< each, metre or litre
    std::vector<Message> notes;
    std::vector<UsedAt> used;
    friend bool operator==(const PartRow&, const PartRow&) = default;
};

/// Where a cut is parted for what sits in it, from the cut's own end towards A: the hose between is left out,
/// since the part's body comes there.
struct HosePart {
    ItemKind kind = ItemKind::isolation_valve;
    double from_mm = 0;
    double to_mm = 0;
    friend bool operator==(const HosePart&, const HosePart&) = default;
};

/// A length of hose to cut off the roll.
struct HoseCut {
    Id hose;
    std::string name;
    std::optional<double> bore_mm; ///< nothing: not entered
    double wall_mm = 0;
    double length_mm = 0;        ///< with engagement at both ends and the allowance
    std::vector<HosePart> parts; ///< in order; none: it stays one piece
    friend bool operator==(const HoseCut&, const HoseCut&) = default;
};

struct PartsList {
    std::vector<PartRow> rows;
    std::vector<HoseCut> cuts;
    std::vector<Message> not_counted; ///< what is drawn but not finished: open ends
    friend bool operator==(const PartsList&, const PartsList&) = default;
};

/// \param layout the sketch's own, resolved
PartsList partsOf(const Sketch& sketch, const Layout& layout);

/// A length as a tape shows it, mm: rounded to 1 mm or 1/16 in.
double onTape(double mm, UnitChoice units);
/// How long the pieces of a cut are, mm, from A to B, one more than it has parts; on the tape, so that with
/// what sits between them they add up to the cut as it is written.
std::vector<double> piecesOnTape(const HoseCut& cut, UnitChoice units);

/// From the hose's cut end at A, over the hose end that it is pushed onto, to a place along the hose itself:
/// what a tape shows. An end that is on nothing yet will be pushed on, too, as the cut length has it.
double fromCutEnd(const Hose& hose, double along_mm);

/// The stops of a part in a hose, from the hose's cut end at A.
HosePart stopsOf(const InlinePart& part, const Hose& hose);

/// Price key of a heater; empty where power or rated voltage is not entered.
std::string heaterKey(const Heater& heater);

/// What is entered for parts and estimate, or the usual figures where nothing was begun.
const Quote& quoteOf(const Sketch& sketch);

} // namespace siphonwright
