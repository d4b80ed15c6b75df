#include "core/commissioning/checklist_text.h"

#include "core/layout/wording.h"
#include "core/paperwork/coolant_mix.h"
#include "core/paperwork/parts.h"
#include "core/running/fill_words.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// The limit in force of a rule that has one: the most severe.
double limitOf(const char* rule, const Sketch& sketch)
{
    const Limits limits = limitsOf(*ruleById(rule), sketch);
    return limits.stop.value_or(limits.caution.value_or(limits.advice.value_or(0)));
}

/// What a step says, as it is put together.
class Text {
public:
    Text(const Sketch& sketch, const Analysis& analysis)
        : sketch_(sketch),
          analysis_(analysis),
          filling_(analysis.proof && analysis.proof->filling.missing.empty() ? &analysis.proof->filling
                                                                             : nullptr)
    {}

    std::vector<Message> of(std::string_view step)
    {
        if (step == "lock-out-power")
            lockOut();
        else if (step == "drain-flush")
            drain();
        else if (step == "mount")
            mount();
        else if (step == "route")
            route();
        else if (step == "open-valves")
            valves();
        else if (step == "mix")
            mix();
        else if (step == "fill")
            fill();
        else if (step == "run-engine")
            runEngine();
        else
            ofLater(step);
        return std::move(out_);
    }

private:
    void say(std::string pattern, std::vector<Quantity> quantities = {}, std::vector<std::string> words = {})
    {
        out_.push_back({std::move(pattern), std::move(quantities), std::move(words)});
    }

    void ofLater(std::string_view step)
    {
        if (step == "cool")
            say("Wait until a bare hand can stay on the upper hose.");
        else if (step == "inspect")
            inspect();
        else if (step == "top-up")
            topUp();
        else if (step == "connect")
            connect();
        else if (step == "energise")
            energise();
        else if (step == "verify")
            verify();
        else if (step == "recheck")
            recheck();
    }

    void lockOut()
    {
        for (const Heater& heater : sketch_.heaters)
            if (heater.actual_V.known())
                say("{a}: {0}. Measure that no conductor carries it any more.",
                    {{*heater.actual_V.value, Unit::volt}}, {nameOfHeater(heater)});
            else
                say("{a}: its voltage is not entered. Measure that no conductor is live.", {},
                    {nameOfHeater(heater)});
    }

    void drain()
    {
        if (const std::optional<double> litres = litresInEngine(sketch_, Assumptions(sketch_)))
            say("The engine holds about {0}: have vessels for it.", {{*litres, Unit::litre}});
        else
            say("How much the engine holds is not entered: have vessels enough.");
        say("Flush until the water runs clear: sediment settles in the heater, the lowest place.");
    }

    void mount()
    {
        for (const Heater& heater : sketch_.heaters) {
            const auto heights =
                std::find_if(analysis_.layout.heaters.begin(), analysis_.layout.heaters.end(),
                             [&](const HeaterHeights& one) { return one.id == heater.id; });
            if (analysis_.layout.jacket && heights != analysis_.layout.heaters.end())
                say("{a}: its top {0} under the lowest point of the water jacket.",
                    {{analysis_.layout.jacket->lowest_mm - heights->body_top_mm, Unit::mm}},
                    {nameOfHeater(heater)});
            if (heater.mounting.value == Mounting::engine)
                say("{a} is drawn on the engine: it would shake with it. The frame is better.", {},
                    {nameOfHeater(heater)});
        }
    }

    void route()
    {
        for (const ResolvedHose& hose : analysis_.layout.hoses) {
            if (hose->cut_length_mm <= 0)
                continue;
            // The figure that parts list and drawing give, too.
            const double allowance_mm = quoteOf(sketch_).cut_allowance_mm;
            const double cut_mm = hose->cut_length_mm + allowance_mm;
            if (hose->bore_known)
                say("{a}: cut {0}, of which {1} is allowance; bore {2}.",
                    {{cut_mm, Unit::mm}, {allowance_mm, Unit::mm}, {hose->bore_mm, Unit::mm}},
                    {nameOfHose(*hose->hose)});
            else
                say("{a}: cut {0}, of which {1} is allowance; its bore is not entered.",
                    {{cut_mm, Unit::mm}, {allowance_mm, Unit::mm}}, {nameOfHose(*hose->hose)});
        }
        pieces();
        if (analysis_.count(Severity::stop) > 0)
            say("Mend what still stops the job first (findings: {0}).",
                {{double(analysis_.count(Severity::stop)), Unit::none}});
    }

    /// What sits in a hose parts it.
    void pieces()
    {
        for (const HoseCut& cut : partsOf(sketch_, analysis_.layout).cuts)
            if (cut.parts.size() == 1) {
                const std::vector<double> long_mm = piecesOnTape(cut, sketch_.units);
                say("{a}: in two pieces from A to B, {0} and {1}; between them: {b}.",
                    {{long_mm[0], Unit::mm}, {long_mm[1], Unit::mm}},
                    {cut.name, std::string(nameOf(cut.parts.front().kind))});
            } else if (cut.parts.size() > 1) {
                say("{a}: in {0} pieces; their lengths are with the drawing.",
                    {{double(cut.parts.size() + 1), Unit::none}}, {cut.name});
            }
    }

    /// What a hose starts on; the end's letter on paper where that is nothing.
    std::string startOf(const Hose& hose) const
    {
        if (const Port* port = sketch_.port(hose.from.port))
            return nameOfPort(*port);
        const Heater* heater = sketch_.heater(hose.from.heater);
        return heater ? nameOfHeater(*heater) : "A";
    }

    void valves()
    {
        bool any = false;
        for (const Shared<Hose>& hose : sketch_.hoses)
            for (const InlinePart& part : hose->parts)
                if (part.kind == InlineKind::isolation_valve) {
                    any = true;
                    say(part.open
                            ? "Open: the valve in {a}, {0} from its cut end at {b}."
                            : "Open: the valve in {a}, {0} from its cut end at {b}. It is drawn closed.",
                        {{fromCutEnd(*hose, part.along_mm), Unit::mm}}, {nameOfHose(*hose), startOf(*hose)});
                }
        if (!any)
            say("No isolation valve is drawn.");
        for (const Port& port : sketch_.ports)
            if (port.kind == PortKind::cabin_line)
                say("Open the shut-off of {a}.", {}, {nameOfPort(port)});
    }

    void mix()
    {
        if (sayMixPlan())
            return;
        const Coolant& coolant = sketch_.coolant;
        if (!coolant.volume_percent.known() || coolant.glycol == Glycol::unknown)
            say("Kind and share of antifreeze are not entered.");
        else if (coolant.glycol == Glycol::none)
            say("Plain water is drawn: it freezes.");
        else
            say("{0} antifreeze by volume ({a} glycol), at most {1}; the rest deionised or distilled water.",
                {{*coolant.volume_percent.value, Unit::percent}, {60, Unit::percent}},
                {coolant.glycol == Glycol::ethylene ? "ethylene" : "propylene"});
        if (filling_)
            say("Hoses and heater hold {0} more than the engine.", {{heldByNewParts_l(), Unit::litre}});
        else
            say("How much hoses and heater take is not computed.");
    }

    /// The figure that parts list and drawing give, too.
    double heldByNewParts_l() const
    {
        return coolantMixOf(sketch_, analysis_.layout, Assumptions(sketch_)).new_l();
    }

    /// Where another mixture is wanted: what to drain and to add.
    bool sayMixPlan()
    {
        if (!sketch_.coolant_plan.wanted_percent)
            return false;
        const CoolantMix mix = coolantMixOf(sketch_, analysis_.layout, Assumptions(sketch_));
        if (!mix.plan)
            return false;
        if (mix.plan->rounds.empty()) {
            out_.push_back(mix.plan->message);
            return true;
        }
        const bool ethylene = wantedGlycol(sketch_) == Glycol::ethylene;
        say("To come to {0} of antifreeze ({a} glycol): drain {1}, add {2} of antifreeze and {3} of "
            "distilled "
            "water{b}.",
            {{mix.plan->percent, Unit::percent},
             {mix.plan->drain_l, Unit::litre},
             {mix.plan->antifreeze_l, Unit::litre},
             {mix.plan->water_l, Unit::litre}},
            {ethylene ? "ethylene" : "propylene",
             mix.plan->rounds.size() > 1 ? ", in " + std::to_string(mix.plan->rounds.size()) + " rounds"
                                         : ""});
        return true;
    }

    void fill()
    {
        if (!filling_) {
            say("Filling is not computed: fill to the cold full mark.");
            return;
        }
        const Quantity taken{filling_->coolant_ml / 1000, Unit::litre};
        switch (sketch_.fill.by) {
        case FillBy::filler:
            say("At the filler, slowly, {0} into hoses, fittings and heater.", {taken});
            break;
        case FillBy::vacuum:
            say("Under vacuum, {0} into hoses, fittings and heater.", {taken});
            break;
        case FillBy::below:
            say("From below, {0} into hoses, fittings and heater.", {taken});
            break;
        }
        double air_ml = 0;
        for (const PocketFound& pocket : filling_->pockets)
            air_ml += pocket.volume_ml;
        constexpr double told_ml = 50; // less reads as no air in tenths of a litre
        if (air_ml >= told_ml)
            say("Air takes up another {0} until it is let out.", {{air_ml / 1000, Unit::litre}});
        if (filling_->drained_ml)
            say("{0} was let out of the engine before: {1} to pour in altogether.",
                {{*filling_->drained_ml / 1000, Unit::litre}, {filling_->refill_ml / 1000, Unit::litre}});
        bleeds();
    }

    /// Each pocket that filling leaves: where, and what lets it out.
    void bleeds()
    {
        bool any = false;
        for (const PocketFound& pocket : filling_->pockets) {
            if (!pocket.closes_bore)
                continue;
            any = true;
            say("Bleed {a} at its crest, {0} up and {1} along it: {2} of air stay there.",
                {{analysis_.layout.plumb.height(pocket.at), Unit::mm},
                 {pocket.along_mm, Unit::mm},
                 {pocket.volume_ml, Unit::ml}},
                {placeOf(pocket, sketch_)});
        }
        if (!any)
            say("Filled as drawn no air stays that closes a bore.");
    }

    void runEngine()
    {
        const Assumptions assumed(sketch_);
        say("Until the upper hose turns hot, at about {0}; cabin heater open.",
            {{assumed[Assumed::running_coolant], Unit::degC}});
        if (!filling_)
            return;
        for (const PocketFound& pocket : filling_->pockets)
            if (pocket.closes_bore)
                out_.push_back(clearingOf(pocket));
    }

    void inspect()
    {
        say("Every clamp, thread and valve, with light and mirror; the heater's fastening; hoses off what is "
            "hot or moves.");
        std::int64_t clamps = 0;
        for (const PartRow& row : partsOf(sketch_, analysis_.layout).rows)
            if (row.kind == ItemKind::clamp)
                clamps += row.thousandths.value_or(0) / 1000;
        say("{0} clamps: two on each end of each piece of hose.", {{double(clamps), Unit::none}});
    }

    void topUp()
    {
        if (filling_)
            out_.push_back(topUpOf(*filling_));
        if (sketch_.tank && sketch_.tank->cold_full_mm.known())
            say("To the cold full mark.");
        else
            say("The cold full mark is not entered: to the tank's own mark.");
    }

    void connect()
    {
        for (const Heater& heater : sketch_.heaters) {
            const std::optional<double> power_W = actualPower_W(heater);
            if (!power_W || !heater.actual_V.known() || !(*heater.actual_V.value > 0)) {
                say("{a}: power or voltage is not entered, so its current is not known.", {},
                    {nameOfHeater(heater)});
                continue;
            }
            const double volts = *heater.actual_V.value;
            const double amperes = *power_W / (heater.phases == 3 ? std::sqrt(3.0) * volts : volts);
            say(heater.phases == 3 ? "{a}: {0} at {1}, three phases, {2} in each conductor."
                                   : "{a}: {0} at {1}, {2}.",
                {{*power_W, Unit::watt}, {volts, Unit::volt}, {amperes, Unit::ampere}},
                {nameOfHeater(heater)});
        }
        say("These are load figures for the electrician, not an instruction to wire.");
    }

    void energise()
    {
        valves();
        say("Both hose ends of the heater full, level at the mark. Note the time.");
        for (const Heater& heater : sketch_.heaters)
            if (const LoopOutcome* outcome = outcomeOf(heater.id); outcome && outcome->return_warm_s)
                say("{a}: the return hose is warm to the hand at the engine after about {0} min.",
                    {{std::ceil(*outcome->return_warm_s / 60), Unit::none}}, {nameOfHeater(heater)});
    }

    const LoopOutcome* outcomeOf(const Id& heater) const
    {
        return analysis_.proof ? analysis_.proof->warm_up.loopOf(heater) : nullptr;
    }

    void verify()
    {
        say("Readings after 15, 30, 60 and 120 min: ambient, inlet, outlet, return hose, current, level.");
        say("Limits: outlet at most {0} the whole time, at most {1} cycles an hour.",
            {{limitOf("outlet-over-limit", sketch_), Unit::degC},
             {limitOf("cycles-over-4", sketch_), Unit::none}});
        for (const Heater& heater : sketch_.heaters)
            expected(heater);
        if (analysis_.proof && analysis_.proof->warm_up.result.target_s)
            say("Engine at its target of {0} after about {1}.",
                {{sketch_.plan.target_degC, Unit::degC},
                 {std::round(*analysis_.proof->warm_up.result.target_s / 360) / 10, Unit::hour}});
        else
            say("The target of {0} is not reached, or not computed.",
                {{sketch_.plan.target_degC, Unit::degC}});
    }

    /// With bands where there are any, else the nominal figures.
    void expected(const Heater& heater)
    {
        const LoopOutcome* outcome = outcomeOf(heater.id);
        if (!outcome || !outcome->peak_outlet_degC) {
            say("{a}: what to expect is not computed.", {}, {nameOfHeater(heater)});
            return;
        }
        for (const HeaterBands& bands : analysis_.proof->bands)
            if (bands.heater == heater.id && bands[Banded::peak_outlet_degC] &&
                bands[Banded::cycles_per_hour]) {
                const ResultBand& peak = *bands[Banded::peak_outlet_degC];
                const ResultBand& cycles = *bands[Banded::cycles_per_hour];
                say("Expected of {a}: outlet {0} at its hottest ({1-2}), cycles in the worst hour: {3} "
                    "({4-5}).",
                    {{*outcome->peak_outlet_degC, Unit::degC},
                     {peak.low, Unit::degC},
                     {peak.high, Unit::degC},
                     {outcome->cycles_per_hour, Unit::none},
                     {std::round(cycles.low), Unit::none},
                     {std::round(cycles.high), Unit::none}},
                    {nameOfHeater(heater)});
                return;
            }
        say("Expected of {a}: outlet {0} at its hottest, cycles in the worst hour: {1}.",
            {{*outcome->peak_outlet_degC, Unit::degC}, {outcome->cycles_per_hour, Unit::none}},
            {nameOfHeater(heater)});
    }

    void recheck()
    {
        say("Level, clamps, and the return hose warm at the engine.");
        if (sketch_.site.coldest_ambient_degC.known())
            say("Best after a night near {0}.", {{*sketch_.site.coldest_ambient_degC.value, Unit::degC}});
    }

    const Sketch& sketch_;
    const Analysis& analysis_;
    const Filling* filling_;
    std::vector<Message> out_;
};

} // namespace

std::vector<Message> textOf(const WorkStep& step, const Sketch& sketch, const Analysis& analysis)
{
    return Text(sketch, analysis).of(step.id);
}

} // namespace siphonwright
