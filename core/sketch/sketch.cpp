#include "core/sketch/sketch.h"

#include <algorithm>

namespace siphonwright {

namespace {

const Hose& plain(const Shared<Hose>& hose)
{
    return *hose;
}
const Area& plain(const Shared<Area>& area)
{
    return *area;
}
template <class T>
const T& plain(const T& part)
{
    return part;
}

template <class Parts>
auto find(const Parts& parts, const Id& id) -> decltype(&plain(parts.front()))
{
    const auto at =
        std::find_if(parts.begin(), parts.end(), [&id](const auto& part) { return plain(part).id == id; });
    return at == parts.end() ? nullptr : &plain(*at);
}

} // namespace

const Port* Sketch::port(const Id& id) const
{
    return find(ports, id);
}

const Heater* Sketch::heater(const Id& id) const
{
    return find(heaters, id);
}

const Hose* Sketch::hose(const Id& id) const
{
    return find(hoses, id);
}

const Area* Sketch::area(const Id& id) const
{
    return find(areas, id);
}

} // namespace siphonwright
