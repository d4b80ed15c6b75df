#include "tests/sketch/full_sketch.h"

namespace siphonwright::test {

namespace {

Engine fullEngine()
{
    Engine engine;
    engine.name = "Bus 12, in-line six";
    engine.serial_number = "E-6120 \"b\"";
    engine.arrangement = Arrangement::slanted_inline;
    engine.outline = {{-600, 0}, {600, 0}, {600, 820.5}, {-600, 820.5}};
    engine.jacket = {{-450, 220}, {450, 220}, {450, 700}, {-450, 700}};
    engine.jacket_y_from_mm = -161.25;
    engine.jacket_y_to_mm = 158.75;
    engine.jacket_source = Source::typical;
    engine.displacement_l = {8.3, Source::manual};
    engine.mass_kg = {612, Source::manual};
    engine.material = {Material::aluminium, Source::measured};
    engine.coolant_volume_l = {11.5, Source::typical};
    engine.front = EngineEnd::right;
    engine.heading_deg = 180;
    engine.mount_angle_deg = 3.5;
    engine.lean_deg = -12;
    engine.thermostat = ThermostatHousing{
        {430, 20, 720}, Source::measured, {ThermostatSide::inlet, Source::manual}, {false, Source::measured}};
    return engine;
}

Port fullPort()
{
    Port port;
    port.id = "port-1";
    port.name = "Block drain";
    port.role = PortRole::return_;
    port.kind = PortKind::lower_hose_tee;
    port.cabin_line_open = false;
    port.position = {-400, -160, 235};
    port.position_source = Source::measured;
    port.axis = {270, -15};
    port.stub = {42, StubElbow{{180, 5}, 22, 35}};
    port.thread = "3/8-18";
    port.bore_mm = {12.7, Source::measured};
    return port;
}

Heater fullHeater()
{
    Heater heater;
    heater.id = "heater-1";
    heater.name = "Tank heater";
    heater.serial_number = "H-0471";
    heater.position = {-150, -260, -80};
    heater.position_source = Source::manual;
    heater.tilt_deg = 45;
    heater.turn_deg = -30;
    heater.allowed_positions = {AllowedPositions{false, true, true}, Source::manual};
    heater.length_mm = 254;
    heater.diameter_mm = 76.2;
    heater.chamber_bottom_mm = -120;
    heater.chamber_top_mm = 118;
    heater.chamber_bore_mm = 70;
    heater.element_top_mm = {95, Source::assumed};
    heater.inlet = {
        {38, 1, -110}, {10, 20}, {28, StubElbow{{90, 1}, 18, 25}}, "3/4-14", {15.8, Source::manual}};
    heater.outlet = {{2, 3, 127}, {5, 90}, {31, StubElbow{{80, 2}, 19, 26}}, "1-11", {19.05, Source::manual}};
    heater.power_W = {1500, Source::manual};
    heater.rated_V = {240, Source::manual};
    heater.actual_V = {230, Source::measured};
    heater.phases = 3;
    heater.thermostat = HeaterThermostat::remote;
    heater.on_degC = {38, Source::manual};
    heater.off_degC = {49, Source::manual};
    heater.cut_out = CutOut{105, false};
    heater.chamber_volume_ml = {900, Source::typical};
    heater.manual_min_bore_mm = {15.875, Source::manual};
    heater.manual_min_drop_mm = {152.4, Source::manual};
    heater.mounting = {Mounting::engine, Source::measured};
    return heater;
}

Hose fullHose()
{
    Hose hose;
    hose.id = "hose-1";
    hose.name = "Return";
    hose.role = HoseRole::return_;
    hose.from = {"", "heater-1", NozzleKind::outlet, {1, 2, 3}, 16, 31};
    hose.to = {"port-1", "", NozzleKind::outlet, {4, 5, 6}, 17, 32};
    hose.points = {{{-150, -260, 180}, 120, BendKind::moulded_elbow},
                   {{-380, -200, 230.1}, 95, BendKind::metal_elbow}};
    hose.bore_mm = {19.05, Source::measured};
    hose.wall_mm = 4.5;
    hose.min_bend_radius_mm = {110, Source::manual};
    hose.insulation_mm = 13;
    hose.clips_mm = {150, 0.1};
    hose.parts = {{InlineKind::swing_check_valve, 210, 70, 17.5, false}};
    return hose;
}

Area fullArea()
{
    return {"area-1", "Turbo", Hazard::turbo, {{0, 500}, {120, 500}, {60, 640}}, -80, 90, 150};
}

Survey fullSurvey()
{
    const auto at = [](double height_mm, double along_mm) {
        return SurveyPoint{height_mm, SurveyFrom::floor, along_mm, -35};
    };
    Survey survey;
    survey.by = "Technician";
    survey.date = "2024-02-28";
    survey.jacket_lowest = at(900, 50);
    survey.jacket_highest = at(1380, 40);
    survey.supply_port =
        SurveyPort{at(920, 60), PortKind::core_plug, "M18 x 1.5", 14, SurveyFacing::left, -10};
    survey.return_port =
        SurveyPort{at(1300, 850), PortKind::head_port, "1/2-14", 15.5, SurveyFacing::rear, 5};
    survey.thermostat = at(1410, -20);
    survey.tank_cap = at(1620, -300);
    survey.mark_cold_min = at(1500, -300);
    survey.mark_cold_full = at(1530, -301);
    survey.mark_hot = at(1555, -302);
    survey.block_length_mm = 900;
    survey.rail_over_floor_mm = 640;
    survey.ride_drop_mm = 70;
    survey.ports_apart_mm = 870;
    survey.floor_slope_deg = 0.5;
    survey.rail_slope_deg = -1.5;
    survey.engine_slope_deg = 3;
    survey.thermostat_side = ThermostatSide::inlet;
    survey.supply_V = 230;
    survey.glycol = Glycol::propylene;
    survey.glycol_percent = 45;
    survey.coolant_colour = "green";
    survey.notes = "Parked at the gate.";
    return survey;
}

SheetDetails fullSheet()
{
    return {"Coolant heater, bus 12",
            "Tank heater on the frame",
            "YB-0012",
            "B",
            "2024-02-29",
            "Invented yard of buses",
            "Workshop",
            "Bay 3",
            "Draughtsperson",
            "Foreman",
            "Layout",
            "Route 7",
            "Bus 12",
            "YBUS0012",
            "Return hose under the rail"};
}

Quote fullQuote()
{
    Quote quote;
    quote.number = "E-0012";
    quote.revision = "C";
    quote.date = "2024-03-01";
    quote.validity_days = 45;
    quote.company = "Invented workshop\n1 Yard Lane";
    quote.customer = "Invented yard of buses\n7 Depot Road";
    quote.exclusions = "Electrical outlet";
    quote.currency = {"XTS", "¤", 3};
    quote.tax_thousandths = 8875;
    quote.mark_up_thousandths = 25'000;
    quote.labour_rate_minor = 95'000;
    quote.labour = {{"drain", "", 125, 75, true}, {"own-1", "Move the horn", 50, 40, true}};
    quote.vehicles = 3;
    quote.travel_minor = 60'000;
    quote.consumables_minor = 0;
    quote.disposal_minor = 12'500;
    quote.prices = {"Invented list", "2024-01-01", {{"clamp-27", "Hose clamp", PriceUnit::foot, 2950}}};
    quote.rolls = {{19.05, 7620}};
    quote.cut_allowance_mm = 12.5;
    quote.charge_whole_rolls = true;
    quote.alternates = {{"With 2000 W", "heater-1", 2000, "heater-2000", 250'000}};
    return quote;
}

} // namespace

Sketch fullSketch()
{
    Sketch sketch;
    sketch.sheet = fullSheet();
    sketch.units = UnitChoice::inch;
    sketch.engine = fullEngine();
    sketch.tank = SurgeTank{{500, 10, 800},
                            Source::measured,
                            {780, Source::measured},
                            {810, Source::measured},
                            {835, Source::typical}};
    sketch.ports = {fullPort()};
    sketch.heaters = {fullHeater()};
    sketch.hoses = {Shared<Hose>(fullHose())};
    sketch.coolant = {
        Glycol::propylene, {50, Source::measured}, {103, Source::manual}, "distilled", "organic", "orange"};
    sketch.site = {{-10, Source::measured}, {-35, Source::typical}, {4.5, Source::assumed}, 2.5, -1.5, 4, 1.5,
                   {240, Source::measured}};
    sketch.areas = {Shared<Area>(fullArea())};
    sketch.ground_z_mm = -640;
    sketch.photo = Shared<Photo>(Photo{"iVBORw0KGgo=", {-700, 900}, 1.25, 2, 0.35, true});
    sketch.readings = {
        {"2024-02-29T06:30:00Z", "heater-1", -9.5, 4, 38.5, 21, 12.5, 6.25, 231, -15, true, "steady"}};
    sketch.checklist = {{{"mix", "2024-02-28T15:10:00Z", "Apprentice", "Half and half", "Bay closes early"}},
                        {{"2024-02-29T06:00:00Z", "heater-1", false}}};
    sketch.notes = "Drain before cutting.\nBleed at the \"high\" end – twice.";
    sketch.limits = {{"heater-drop", 200, 150, 100, true, "The heater's manual"}};
    sketch.assumptions = {{"hose-end-loss", 1.2, "Own measurement"}};
    sketch.plan = {-20, 40, 8};
    sketch.fill = {FillStart::all_empty, FillBy::vacuum, 250, {12, Source::measured}, 15, 3.5};
    sketch.survey = fullSurvey();
    sketch.supply = {240,  3,  "10 AWG", ConductorMaterial::aluminium, 35,
                     0.31, 10, 4,        {{-12.5, 30}, {-25, 12}}};
    sketch.coolant_plan = {Glycol::ethylene, 50, 38, 22, {12, 15, 90, 180, 7.4}};
    sketch.quote = Shared<Quote>(fullQuote());
    sketch.dimensions = {{"dimension-1",
                          DimensionKind::vertical,
                          {PartKind::hose_point, "hose-1", 1, {10, 0, 20}},
                          {PartKind::nothing, "", 0, {300, 0, 250}},
                          -45}};
    return sketch;
}

} // namespace siphonwright::test
