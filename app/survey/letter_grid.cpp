#include "app/survey/letter_grid.h"

#include "app/language/in_words.h"
#include "app/panels/quantity_edit.h"
#include "app/survey/survey_access.h"

#include "core/sketch/draw_survey.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright::survey {

namespace {

enum Column {
    letter_column,
    what_column,
    from_column,
    height_column,
    along_column,
    across_column,
    drawn_column
};

constexpr int edit_width_px = 104;
constexpr double most_slope_deg = 45; // as in the file

QString text(std::string_view words)
{
    return inWords(words);
}

QString length(double mm, UnitSystem units)
{
    return inWords(mm, Unit::mm, units);
}

double lowest(const std::vector<Vec2>& outline, double sign)
{
    double z = outline.front().z;
    for (const Vec2 corner : outline)
        z = sign * corner.z < sign * z ? corner.z : z;
    return z;
}

const Port* portOf(const Sketch& sketch, PortRole role)
{
    const auto found = std::find_if(sketch.ports.begin(), sketch.ports.end(),
                                    [role](const Port& port) { return port.role == role; });
    return found == sketch.ports.end() ? nullptr : &*found;
}

std::optional<Vec3> tankPlace(const Sketch& sketch, Fact<double> SurgeTank::*mark)
{
    if (!sketch.tank)
        return std::nullopt;
    const Vec3 at = sketch.tank->position;
    if (!mark)
        return at;
    const Fact<double>& z = *sketch.tank.*mark;
    return z.known() ? std::optional(Vec3{at.x, at.y, *z.value}) : std::nullopt;
}

/// Where a letter's place is drawn now.
std::optional<Vec3> drawnPlace(const Sketch& sketch, char letter)
{
    const bool jacket = sketch.engine && !sketch.engine->jacket.empty();
    const auto onJacket = [&](double sign) -> std::optional<Vec3> {
        if (!jacket)
            return std::nullopt;
        const std::optional<SurveyPoint> point =
            sketch.survey ? surveyPoint(*sketch.survey, letter) : std::nullopt;
        const double z = lowest(sketch.engine->jacket, sign);
        // Its station is the one that it was measured at: the jacket's underside is drawn level.
        const SurveyAxes axes(sketch.survey.value_or(Survey{}), sketch);
        const Vec3 middle = {sketch.engine->jacket.front().x, 0, z};
        const std::optional<Vec3> at = point ? axes.drawn(*point, middle) : std::nullopt;
        return Vec3{at ? at->x : middle.x, 0, z};
    };
    switch (letter) {
    case 'A':
        return onJacket(1);
    case 'B':
        return onJacket(-1);
    case 'C':
    case 'D': {
        const Port* port = portOf(sketch, letter == 'C' ? PortRole::supply : PortRole::return_);
        return port ? std::optional(port->position) : std::nullopt;
    }
    case 'E':
        return sketch.engine && sketch.engine->thermostat ? std::optional(sketch.engine->thermostat->position)
                                                          : std::nullopt;
    case 'F':
        return tankPlace(sketch, nullptr);
    case 'G':
        return tankPlace(sketch, &SurgeTank::cold_min_mm);
    case 'H':
        return tankPlace(sketch, &SurgeTank::cold_full_mm);
    case 'J':
        return tankPlace(sketch, &SurgeTank::hot_mm);
    default:
        return std::nullopt;
    }
}

std::optional<double> drawnLength(const Sketch& sketch, char letter)
{
    if (letter == 'K' && sketch.engine && !sketch.engine->jacket.empty()) {
        const auto [left, right] =
            std::minmax_element(sketch.engine->jacket.begin(), sketch.engine->jacket.end(),
                                [](Vec2 a, Vec2 b) { return a.x < b.x; });
        return right->x - left->x;
    }
    const Port* supply = portOf(sketch, PortRole::supply);
    const Port* back = portOf(sketch, PortRole::return_);
    if (letter == 'N' && supply && back)
        return distance(supply->position, back->position);
    return std::nullopt;
}

QString drawnPlaceWords(const Sketch& sketch, const SurveyLetter& letter, UnitSystem units)
{
    const Survey survey = sketch.survey.value_or(Survey{});
    const std::optional<SurveyPoint> typed = surveyPoint(survey, letter.letter);
    const std::optional<Vec3> at = drawnPlace(sketch, letter.letter);
    if (!at)
        return LetterGrid::tr("not drawn");
    const SurveyFrom from = typed ? typed->from : SurveyFrom::frame_rail;
    const std::optional<SurveyPoint> now = SurveyAxes(survey, sketch).measured(*at, from);
    if (!now)
        return LetterGrid::tr("from the floor only with L");
    QStringList words = {length(*now->height_mm, units)};
    if (letter.along)
        words << length(*now->along_mm, units);
    if (letter.across)
        words << length(*now->across_mm, units);
    return words.join(QStringLiteral(", "));
}

} // namespace

QString drawnWords(const Sketch& sketch, const SurveyLetter& letter)
{
    const UnitSystem units = panels::unitsOf(sketch);
    const Survey survey = sketch.survey.value_or(Survey{});
    const bool measured = letter.isPoint() ? surveyPoint(survey, letter.letter).has_value()
                                           : surveyNumber(survey, letter.letter).has_value();
    QStringList words;
    if (letter.isPoint())
        words << drawnPlaceWords(sketch, letter, units);
    else if (const std::optional<double> drawn = drawnLength(sketch, letter.letter))
        words << length(*drawn, units);
    if (!measured)
        words << LetterGrid::tr("not measured");
    return words.join(QStringLiteral("; "));
}

LetterGrid::LetterGrid(Document& document, QWidget* parent) : QWidget(parent), document_(document)
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(8, 4, 8, 4);
    grid->setHorizontalSpacing(6);
    grid->setVerticalSpacing(3);
    grid->setColumnStretch(drawn_column, 1);
    addHeads(*grid);
    int row = 1;
    for (const SurveyLetter& letter : surveyLetters()) {
        addName(*grid, row, letter);
        if (letter.isPoint())
            addPlace(*grid, row, letter);
        else if (letter.unit == Unit::degree)
            addSlope(*grid, row, letter);
        else
            addLength(*grid, row, letter);
        ++row;
    }
    grid->setRowStretch(row, 1);
    connect(&document_, &Document::changed, this, &LetterGrid::refresh);
    refresh();
}

void LetterGrid::addHeads(QGridLayout& grid)
{
    const QStringList heads = {QString(),
                               tr("Place"),
                               tr("Measured from"),
                               tr("Height"),
                               tr("Station"),
                               tr("Across"),
                               tr("Drawn: height, station, across")};
    for (int i = 0; i < heads.size(); ++i) {
        auto* head = new QLabel(heads[i], this);
        head->setWordWrap(true);
        head->setProperty("role", QStringLiteral("faint"));
        grid.addWidget(head, 0, i);
    }
}

void LetterGrid::addName(QGridLayout& grid, int row, const SurveyLetter& letter)
{
    auto* sign = new QLabel(QStringLiteral("<b>%1</b>").arg(QLatin1Char(letter.letter)), this);
    auto* what = new QLabel(text(letter.what), this);
    what->setWordWrap(true);
    what->setToolTip(text(letter.how));
    auto* drawn = new QLabel(this);
    drawn->setObjectName(QStringLiteral("survey-drawn-%1").arg(QLatin1Char(letter.letter)));
    drawn->setWordWrap(true);
    grid.addWidget(sign, row, letter_column);
    grid.addWidget(what, row, what_column);
    grid.addWidget(drawn, row, drawn_column);
    refreshers_.emplace_back([this, drawn, &letter] {
        const QString words = drawnWords(document_.sketch(), letter);
        drawn->setText(words);
        drawn->setEnabled(!words.endsWith(tr("not measured")));
    });
}

panels::QuantityEdit* LetterGrid::addEdit(const SurveyLetter& letter, const QString& column, Unit unit)
{
    auto* edit = new panels::QuantityEdit(unit, this);
    edit->setObjectName(QStringLiteral("survey-%1-%2").arg(QLatin1Char(letter.letter)).arg(column));
    edit->setAccessibleName(tr("%1, %2: %3").arg(QLatin1Char(letter.letter)).arg(text(letter.what), column));
    edit->setMayBeEmpty(true);
    edit->setPlaceholderText(QStringLiteral("–"));
    edit->setMaximumWidth(edit_width_px);
    return edit;
}

void LetterGrid::change(const SurveyLetter& letter, const std::function<void(Survey&)>& edit)
{
    document_.apply(tr("Survey, %1").arg(QLatin1Char(letter.letter)),
                    [&](Sketch& sketch) { surveyAccess().change(sketch, edit); });
}

void LetterGrid::addPlace(QGridLayout& grid, int row, const SurveyLetter& letter)
{
    auto* from = new QComboBox(this);
    from->addItems({tr("frame rail"), tr("floor")});
    from->setObjectName(QStringLiteral("survey-%1-from").arg(QLatin1Char(letter.letter)));
    from->setAccessibleName(tr("%1: measured from").arg(QLatin1Char(letter.letter)));
    from->setFocusPolicy(Qt::StrongFocus);
    grid.addWidget(from, row, from_column);
    const auto now = [this, &letter, from] {
        SurveyPoint point;
        point.from = SurveyFrom(from->currentIndex());
        const std::optional<Survey>& survey = document_.sketch().survey;
        return survey ? surveyPoint(*survey, letter.letter).value_or(point) : point;
    };
    connect(from, &QComboBox::activated, this, [this, &letter, now](int chosen) {
        SurveyPoint point = now();
        point.from = SurveyFrom(chosen);
        change(letter, [&](Survey& survey) { setSurveyPoint(survey, letter.letter, point); });
    });
    refreshers_.emplace_back([this, from, &letter] {
        const std::optional<Survey>& survey = document_.sketch().survey;
        if (const auto point = survey ? surveyPoint(*survey, letter.letter) : std::nullopt)
            from->setCurrentIndex(int(point->from));
    });
    struct Typed {
        bool asked;
        Column column;
        const char* name;
        std::optional<double> SurveyPoint::*member;
    };
    for (const Typed& typed : {Typed{letter.height, height_column, "height", &SurveyPoint::height_mm},
                               Typed{letter.along, along_column, "station", &SurveyPoint::along_mm},
                               Typed{letter.across, across_column, "across", &SurveyPoint::across_mm}}) {
        if (!typed.asked)
            continue;
        panels::QuantityEdit* edit = addEdit(letter, QString::fromLatin1(typed.name), Unit::mm);
        const auto member = typed.member;
        edit->setRange(-100'000, 100'000);
        grid.addWidget(edit, row, typed.column);
        connect(edit, &panels::QuantityEdit::committed, this, [this, &letter, edit, now, member] {
            SurveyPoint point = now();
            point.*member = edit->value();
            change(letter, [&](Survey& survey) { setSurveyPoint(survey, letter.letter, point); });
        });
        refreshers_.emplace_back([this, edit, &letter, member] {
            const std::optional<Survey>& survey = document_.sketch().survey;
            const auto point = survey ? surveyPoint(*survey, letter.letter) : std::nullopt;
            edit->setUnits(panels::unitsOf(document_.sketch()));
            edit->setValue(point ? *point.*member : std::nullopt);
        });
    }
}

void LetterGrid::addLength(QGridLayout& grid, int row, const SurveyLetter& letter)
{
    panels::QuantityEdit* edit = addEdit(letter, QStringLiteral("length"), Unit::mm);
    edit->setRange(0, 100'000);
    grid.addWidget(edit, row, height_column);
    connect(edit, &panels::QuantityEdit::committed, this, [this, &letter, edit] {
        change(letter, [&](Survey& survey) { setSurveyNumber(survey, letter.letter, edit->value()); });
    });
    refreshers_.emplace_back([this, edit, &letter] {
        const std::optional<Survey>& survey = document_.sketch().survey;
        edit->setUnits(panels::unitsOf(document_.sketch()));
        edit->setValue(survey ? surveyNumber(*survey, letter.letter) : std::nullopt);
    });
}

/// Kept in degrees; typed as the inclinometer reads, in degrees or percent (rise over run).
void LetterGrid::addSlope(QGridLayout& grid, int row, const SurveyLetter& letter)
{
    auto* unit = new QComboBox(this);
    unit->addItems({tr("degrees"), tr("percent")});
    unit->setObjectName(QStringLiteral("survey-%1-unit").arg(QLatin1Char(letter.letter)));
    unit->setAccessibleName(tr("%1: typed in").arg(QLatin1Char(letter.letter)));
    panels::QuantityEdit* degrees = addEdit(letter, QStringLiteral("degrees"), Unit::degree);
    panels::QuantityEdit* percent = addEdit(letter, QStringLiteral("percent"), Unit::percent);
    degrees->setRange(-most_slope_deg, most_slope_deg);
    percent->setRange(-100, 100);
    percent->hide();
    grid.addWidget(unit, row, from_column);
    grid.addWidget(degrees, row, height_column);
    grid.addWidget(percent, row, height_column);
    connect(unit, &QComboBox::currentIndexChanged, this, [degrees, percent](int chosen) {
        degrees->setVisible(chosen == 0);
        percent->setVisible(chosen == 1);
    });
    connect(degrees, &panels::QuantityEdit::committed, this, [this, &letter, degrees] {
        change(letter, [&](Survey& survey) { setSurveyNumber(survey, letter.letter, degrees->value()); });
    });
    connect(percent, &panels::QuantityEdit::committed, this, [this, &letter, percent] {
        std::optional<double> value = percent->value();
        if (value)
            value = std::atan(*value / 100) * 180 / std::numbers::pi;
        change(letter, [&](Survey& survey) { setSurveyNumber(survey, letter.letter, value); });
    });
    refreshers_.emplace_back([this, degrees, percent, &letter] {
        const std::optional<Survey>& survey = document_.sketch().survey;
        std::optional<double> value = survey ? surveyNumber(*survey, letter.letter) : std::nullopt;
        degrees->setValue(value);
        if (value)
            value = 100 * std::tan(*value * std::numbers::pi / 180);
        percent->setValue(value);
    });
}

void LetterGrid::refresh()
{
    for (const auto& one : refreshers_)
        one();
}

} // namespace siphonwright::survey
