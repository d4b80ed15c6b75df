#include "app/demonstration/event_words.h"

#include "core/layout/wording.h"

namespace siphonwright::demonstration {

namespace {

std::string hoseOf(const Throat& throat, const std::vector<HeaterLoop>& loops)
{
    const HeaterLoop& loop = loops[throat.loop];
    const ResolvedHose* hose = throat.part == LoopPart::return_hose ? loop.return_ : loop.supply;
    return nameOfHose(*(*hose)->hose);
}

/// What a cell is called where coolant runs into it or out of it.
std::string nameOfCell(const Cell& cell, const std::vector<HeaterLoop>& loops)
{
    if (cell.part == LoopPart::jacket)
        return "the engine";
    const HeaterLoop& loop = loops[cell.loop];
    if (cell.part == LoopPart::chamber)
        return nameOfHeater(*loop.heater);
    return nameOfHose(*(*(cell.part == LoopPart::supply ? loop.supply : loop.return_))->hose);
}

constexpr double worth_saying_ml = 0.5;

bool sealedBeside(const Throat& throat, const FillFrame& then)
{
    for (const std::size_t side : {throat.left, throat.right}) {
        const CellView& cell = then.cells[side];
        if (side > 0 && cell.sealed && cell.gas_ml > worth_saying_ml)
            return true;
    }
    return false;
}

std::optional<Message> spilling(const FillEvent& event, const Throat& throat, const FillNetwork& network,
                                const FillFrame& then, const std::vector<HeaterLoop>& loops)
{
    const std::size_t from = event.to_right ? throat.left : throat.right;
    const std::size_t into = event.to_right ? throat.right : throat.left;
    switch (throat.kind) {
    case ThroatKind::crest:
        return sealedBeside(throat, then)
                   ? Message{"Coolant spills over the hump in {a}; the air behind it is sealed.",
                             {},
                             {hoseOf(throat, loops)}}
                   : Message{"Coolant spills over the hump in {a}.", {}, {hoseOf(throat, loops)}};
    case ThroatKind::opening:
        return Message{"Coolant runs from {a} into {b}.",
                       {},
                       {nameOfCell(network.cells[from], loops), nameOfCell(network.cells[into], loops)}};
    case ThroatKind::valve:
        return Message{"Coolant runs through the valve in {a}.", {}, {hoseOf(throat, loops)}};
    default:
        return std::nullopt;
    }
}

std::optional<Message> sealing(const Throat& throat, const FillNetwork& network, const FillFrame& then,
                               const std::vector<HeaterLoop>& loops)
{
    const bool sealed = sealedBeside(throat, then);
    switch (throat.kind) {
    case ThroatKind::hollow:
        return sealed ? Message{"Coolant closes the dip in {a}: the air beyond it is sealed.",
                                {},
                                {hoseOf(throat, loops)}}
                      : Message{"Coolant closes the dip in {a}.", {}, {hoseOf(throat, loops)}};
    case ThroatKind::crest:
        return Message{"Coolant fills the hump in {a} to its crown.", {}, {hoseOf(throat, loops)}};
    case ThroatKind::opening: {
        const std::string left = nameOfCell(network.cells[throat.left], loops);
        const std::string right = nameOfCell(network.cells[throat.right], loops);
        return sealed ? Message{"Coolant covers the opening between {a} and {b}; air that is still in there "
                                "is sealed.",
                                {},
                                {left, right}}
                      : Message{"Coolant covers the opening between {a} and {b}.", {}, {left, right}};
    }
    default:
        return std::nullopt;
    }
}

} // namespace

std::optional<Message> wordsFor(const FillEvent& event, const FillNetwork& network, const FillFrame& then,
                                const std::vector<HeaterLoop>& loops)
{
    if (event.kind == FillEventKind::vacuum_released)
        return Message{"The vacuum is let go: what air is left shrinks to a fraction.", {}, {}};
    if (event.kind == FillEventKind::element_covered) {
        const Cell& cell = network.cells[network.elements[event.throat].cell];
        return Message{"Coolant covers the element of {a}.", {}, {nameOfCell(cell, loops)}};
    }
    if (event.kind == FillEventKind::bleed_closes) {
        const Cell& cell = network.cells[network.bleeds[event.throat].cell];
        return Message{"Coolant has come to the bleed in {a}: it is shut.", {}, {nameOfCell(cell, loops)}};
    }
    const Throat& throat = network.throats[event.throat];
    switch (event.kind) {
    case FillEventKind::spills:
        return spilling(event, throat, network, then, loops);
    case FillEventKind::seals:
        return sealing(throat, network, then, loops);
    case FillEventKind::bubbles:
        return Message{"Air bubbles out of {a}.",
                       {},
                       {nameOfCell(network.cells[event.to_right ? throat.left : throat.right], loops)}};
    case FillEventKind::valve_opened:
        return Message{"The valve in {a} is opened.", {}, {hoseOf(throat, loops)}};
    default:
        return std::nullopt;
    }
}

} // namespace siphonwright::demonstration
