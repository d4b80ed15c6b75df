#include "core/paperwork/parts.h"

#include "core/layout/wording.h"
#include "core/paperwork/part_rows.h"

#include <array>

namespace siphonwright {
namespace {

struct KindWords {
    std::string_view key;
    std::string_view name;
};
constexpr std::array<KindWords, 22> kind_words{{{"heater", "Tank heater"},
                                                {"mounting-kit", "Mounting kit"},
                                                {"hose", "Hose"},
                                                {"hose-end", "Hose end"},
                                                {"adapter", "Adapter"},
                                                {"core-plug-adapter", "Core plug adapter"},
                                                {"radiator-hose-tee", "Tee for lower radiator hose"},
                                                {"cabin-line-tee", "Tee for cabin heater line"},
                                                {"elbow", "Elbow"},
                                                {"moulded-elbow", "Moulded elbow"},
                                                {"reducer", "Reducer"},
                                                {"isolation-valve", "Isolation valve"},
                                                {"bleed", "Bleed"},
                                                {"drain", "Drain"},
                                                {"lift-check-valve", "Lift check valve"},
                                                {"swing-check-valve", "Swing check valve"},
                                                {"clamp", "Hose clamp"},
                                                {"clip", "Hose clip"},
                                                {"insulation", "Hose insulation"},
                                                {"sealant", "Thread sealant"},
                                                {"antifreeze", "Antifreeze concentrate"},
                                                {"distilled-water", "Distilled water"}}};
static_assert(kind_words.size() == static_cast<std::size_t>(ItemKind::distilled_water) + 1);

void noteOpenEnds(const Hose& hose, std::vector<Message>& not_counted)
{
    for (const HoseEnd* end : {&hose.from, &hose.to})
        if (!end->connected())
            not_counted.push_back(
                {end == &hose.from ? "The start of {a} is on nothing: what it is pushed onto is not counted."
                                   : "The end of {a} is on nothing: what it is pushed onto is not counted.",
                 {},
                 {nameOfHose(hose)}});
}

} // namespace

std::string_view keyOf(ItemKind kind)
{
    return kind_words.at(static_cast<std::size_t>(kind)).key;
}

std::string_view nameOf(ItemKind kind)
{
    return kind_words.at(static_cast<std::size_t>(kind)).name;
}

const Quote& quoteOf(const Sketch& sketch)
{
    static const Quote usual;
    return sketch.quote ? **sketch.quote : usual;
}

PartsList partsOf(const Sketch& sketch, const Layout& layout)
{
    PartsList list;
    PartRows rows;
    addHeaters(sketch, rows);
    addConnections(sketch, rows);
    for (const ResolvedHose& hose : layout.hoses) {
        addHose(sketch, hose, layout.plumb, rows);
        for (const HosePiece& piece : piecesOf(*hose, quoteOf(sketch).cut_allowance_mm))
            list.cuts.push_back({hose.id(), nameOfHose(*hose->hose), piece.bore_mm, hose->hose->wall_mm,
                                 piece.cut_length_mm, piece.parts});
        noteOpenEnds(*hose->hose, list.not_counted);
    }
    addCoolant(sketch, layout, rows);
    list.rows = rows.take();
    return list;
}

} // namespace siphonwright
