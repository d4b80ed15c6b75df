#pragma once

#include <cstddef>
#include <utility>

/// How many members an aggregate has, counted by the compiler, so that a member nobody described is noticed.
namespace siphonwright::test {

/// Stands for a value of any member's type.
struct Anything {
    template <class T>
    operator T() const; // NOLINT(google-explicit-constructor): has to convert by itself
};

template <class T, std::size_t... I>
constexpr bool takes(std::index_sequence<I...> /*count*/)
{
    return requires
    {
        T{(static_cast<void>(I), Anything{})...};
    };
}

template <class T, std::size_t N = 1>
constexpr std::size_t memberCount()
{
    if constexpr (takes<T>(std::make_index_sequence<N + 1>{}))
        return memberCount<T, N + 1>();
    else
        return N;
}

} // namespace siphonwright::test
