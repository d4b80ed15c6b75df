#include "app/language/default_names.h"

#include "app/language/in_words.h"

#include <QString>

#include <algorithm>
#include <cstddef>
#include <string>

namespace siphonwright::language {

namespace {

template <class Part>
const Part& partOf(const Part& part)
{
    return part;
}
template <class Part>
const Part& partOf(const Shared<Part>& part)
{
    return *part;
}

template <class Part>
void rename(Part& part, const std::string& name)
{
    part.name = name;
}
template <class Part>
void rename(Shared<Part>& part, const std::string& name)
{
    part.edit([&name](Part& changed) { changed.name = name; });
}

template <class List>
auto withId(const List& list, const Id& id)
{
    return std::find_if(list.begin(), list.end(), [&id](const auto& one) { return partOf(one).id == id; });
}

template <class List>
std::string notInUse(const List& list, const std::string& stem)
{
    std::string name = stem;
    const auto is_used = [&](const auto& one) { return partOf(one).name == name; };
    for (int n = 2; std::any_of(list.begin(), list.end(), is_used); ++n)
        name = stem + ' ' + std::to_string(n);
    return name;
}

template <class Part>
bool isNamedAlike(const Part& a, const Part& b)
{
    return partOf(a).id == partOf(b).id && partOf(a).name == partOf(b).name;
}

template <class List>
void nameNew(List& list, const List& before)
{
    for (std::size_t i = 0; i < list.size(); ++i) {
        auto& one = list[i];
        const std::string& name = partOf(one).name;
        if (name.empty() || (i < before.size() && isNamedAlike(one, before[i])))
            continue;
        const auto was = withId(before, partOf(one).id);
        if (was != before.end() && partOf(*was).name == name)
            continue;
        const std::string said = inWords(name).toStdString();
        if (said == name)
            continue;
        // A drag makes its part anew at each step: it keeps the name of the step before.
        if (was == before.end())
            rename(one, notInUse(list, said));
        else if (partOf(*was).name.rfind(said, 0) == 0)
            rename(one, partOf(*was).name);
    }
}

} // namespace

void nameNewParts(Sketch& sketch, const Sketch& before)
{
    nameNew(sketch.ports, before.ports);
    nameNew(sketch.heaters, before.heaters);
    nameNew(sketch.hoses, before.hoses);
    nameNew(sketch.areas, before.areas);
}

} // namespace siphonwright::language
