#include "app/panels/access.h"

#include "app/language/in_words.h"

#include <algorithm>

namespace siphonwright::panels {

namespace {

template <class T>
Access<T> optionalAccess(std::optional<T> Sketch::*member)
{
    return {[member](const Sketch& sketch) { return sketch.*member ? &*(sketch.*member) : nullptr; },
            [member](Sketch& sketch, const std::function<void(T&)>& change) {
                if (sketch.*member)
                    change(*(sketch.*member));
            }};
}

template <class T>
const T* findById(const std::vector<T>& parts, const Id& id)
{
    const auto found = std::find_if(parts.begin(), parts.end(), [&](const T& part) { return part.id == id; });
    return found == parts.end() ? nullptr : &*found;
}

template <class T>
Access<T> listAccess(std::vector<T> Sketch::*member, const Id& id)
{
    return {[member, id](const Sketch& sketch) { return findById(sketch.*member, id); },
            [member, id](Sketch& sketch, const std::function<void(T&)>& change) {
                for (T& part : sketch.*member)
                    if (part.id == id)
                        change(part);
            }};
}

template <class T>
Access<T> sharedAccess(std::vector<Shared<T>> Sketch::*member, const Id& id)
{
    return {[member, id](const Sketch& sketch) -> const T* {
                for (const Shared<T>& part : sketch.*member)
                    if (part->id == id)
                        return &*part;
                return nullptr;
            },
            [member, id](Sketch& sketch, const std::function<void(T&)>& change) {
                for (Shared<T>& part : sketch.*member)
                    if (part->id == id)
                        part.edit(change);
            }};
}

} // namespace

Access<Engine> engineAccess()
{
    return optionalAccess(&Sketch::engine);
}

Access<SurgeTank> tankAccess()
{
    return optionalAccess(&Sketch::tank);
}

Access<ThermostatHousing> thermostatAccess()
{
    return {[](const Sketch& sketch) {
                return sketch.engine && sketch.engine->thermostat ? &*sketch.engine->thermostat : nullptr;
            },
            [](Sketch& sketch, const std::function<void(ThermostatHousing&)>& change) {
                if (sketch.engine && sketch.engine->thermostat)
                    change(*sketch.engine->thermostat);
            }};
}

Access<Port> portAccess(const Id& id)
{
    return listAccess(&Sketch::ports, id);
}

Access<Heater> heaterAccess(const Id& id)
{
    return listAccess(&Sketch::heaters, id);
}

Access<Hose> hoseAccess(const Id& id)
{
    return sharedAccess(&Sketch::hoses, id);
}

Access<Dimension> dimensionAccess(const Id& id)
{
    return listAccess(&Sketch::dimensions, id);
}

Access<Area> areaAccess(const Id& id)
{
    return sharedAccess(&Sketch::areas, id);
}

Access<Sketch> sketchAccess()
{
    return {[](const Sketch& sketch) { return &sketch; },
            [](Sketch& sketch, const std::function<void(Sketch&)>& change) { change(sketch); }};
}

QStringList positionLabels()
{
    return {FormText::tr("Along"), FormText::tr("Height over datum"), FormText::tr("Away from viewer")};
}

std::vector<EndChoice> endChoices(const Sketch& sketch)
{
    std::vector<EndChoice> choices;
    const auto add = [&choices](const QString& name, HoseEnd end) {
        EndChoice choice;
        choice.name = name;
        choice.end = std::move(end);
        choices.push_back(std::move(choice));
    };
    add(FormText::tr("nothing: open end"), HoseEnd());
    for (const Port& port : sketch.ports) {
        HoseEnd end;
        end.port = port.id;
        add(inWords(port.name.empty() ? port.id : port.name), end);
    }
    for (const Heater& heater : sketch.heaters) {
        const QString name = inWords(heater.name.empty() ? heater.id : heater.name);
        HoseEnd end;
        end.heater = heater.id;
        end.nozzle = NozzleKind::inlet;
        add(FormText::tr("%1, inlet").arg(name), end);
        end.nozzle = NozzleKind::outlet;
        add(FormText::tr("%1, outlet").arg(name), end);
    }
    return choices;
}

Field linkTo(const QString& label, const PartRef& target)
{
    Field row;
    row.kind = Field::Kind::link;
    row.label = label;
    row.target = target;
    return row;
}

QStringList sourceWords()
{
    return {FormText::tr("measured"), FormText::tr("manual"), FormText::tr("typical"),
            FormText::tr("assumed")};
}

} // namespace siphonwright::panels
