#pragma once

#include "core/sketch/sketch.h"

/// Finding a part of a sketch by id, to change it.
namespace siphonwright {

template <class Part>
const Id& idOf(const Part& part)
{
    return part.id;
}
template <class Part>
const Id& idOf(const Shared<Part>& part)
{
    return part->id;
}

/// The part of this id in a list, or null.
template <class List>
auto byId(List& list, const Id& id) -> decltype(list.data())
{
    for (auto& part : list)
        if (idOf(part) == id)
            return &part;
    return nullptr;
}

} // namespace siphonwright
