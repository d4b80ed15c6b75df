#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

namespace siphonwright::panels {

/// One row of a form: what it is called, how it is read from a sketch and how it is put back. Reading a part
/// that is gone gives nothing; writing it changes nothing.
struct Field {
    enum class Kind { heading, quantity, text, paragraph, choice, remark, link };
    Kind kind = Kind::remark;
    QString label;
    QString tip;

    Unit unit = Unit::none;
    bool may_be_empty = false; ///< a quantity or choice that can be "not entered"
    double least = std::numeric_limits<double>::lowest();
    double most = std::numeric_limits<double>::max();
    std::vector<std::pair<QString, double>> stock; ///< usual values
    std::function<std::optional<double>(const Sketch&)> number;
    std::function<void(Sketch&, std::optional<double>)> set_number;

    std::function<QString(const Sketch&)> text; ///< also what a remark says
    std::function<void(Sketch&, const QString&)> set_text;

    QStringList choices;
    std::function<int(const Sketch&)> choice; ///< -1: not entered
    std::function<void(Sketch&, int)> set_choice;

    PartRef target; ///< what a link selects

    std::function<Source(const Sketch&)> source; ///< empty: the row has no source
    std::function<void(Sketch&, Source)> set_source;
};
using Form = std::vector<Field>;
void append(Form& form, Form more);

/// How a part of the sketch is found, and how it is changed in place.
template <class Part>
struct Access {
    std::function<const Part*(const Sketch&)> read;
    std::function<void(Sketch&, const std::function<void(Part&)>&)> change;
};

inline UnitSystem unitsOf(const Sketch& sketch)
{
    return sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
}

/// The rows for what is selected: title of the part and its form.
struct PartForm {
    QString title;
    Form form;
};
PartForm formFor(const Sketch& sketch, const PartRef& part);

Form engineForm(const Sketch& sketch);
Form jacketForm();
Form thermostatForm();
Form tankForm();
Form portForm(const Id& id);
Form heaterForm(const Id& id);
Form hoseForm(const Sketch& sketch, const Id& id);
Form hosePointForm(const Id& id, std::size_t index);
Form hoseEndForm(const Sketch& sketch, const Id& id, std::size_t end);
Form inlinePartForm(const Id& id, std::size_t index);
Form clipForm(const Id& id, std::size_t index);
Form areaForm(const Id& id);
Form cornerForm(const PartRef& part);
Form groundForm();
Form dimensionForm(const Id& id);
Form photoForm();
Form sheetForm(); ///< with nothing selected: sheet details, units, coolant, site, notes

/// "typical", ... as shown beside a fact.
QStringList sourceWords();

} // namespace siphonwright::panels
