#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/shared.h"

#include <algorithm>
#include <cstddef>
#include <string>

/// Names of parts that tell them apart within their list.
namespace siphonwright {

template <class Part>
const std::string& nameIn(const Part& part)
{
    return part.name;
}
template <class Part>
const std::string& nameIn(const Shared<Part>& part)
{
    return part->name;
}

/// The name, or where it is taken, the same with the next number that is free: "Return hose 2".
template <class List>
std::string nameFree(const List& list, const std::string& name)
{
    const auto taken = [&](const std::string& wanted) {
        return std::any_of(list.begin(), list.end(),
                           [&](const auto& part) { return nameIn(part) == wanted; });
    };
    if (name.empty() || !taken(name))
        return name;
    std::string stem = name;
    const std::size_t last = stem.find_last_not_of("0123456789");
    if (last != std::string::npos && last + 1 < stem.size() && stem[last] == ' ')
        stem.erase(last);
    for (int n = 2;; ++n) {
        std::string next = stem + " " + exactText(n);
        if (!taken(next))
            return next;
    }
}

} // namespace siphonwright
