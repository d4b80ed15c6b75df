#pragma once

#include "core/sketch/format/describe_sketch.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace siphonwright {

/// Counts the bytes that values of the document keep outside of themselves, by the description that reader
/// and writer are made from, so that no member is forgotten. What a Shared value points at is counted with
/// each that points there: too much rather than too little.
class MemoryCount {
public:
    void object(std::string_view /*name*/, std::string_view /*meaning*/) {}

    template <class M>
    void operator()(const Field& /*field*/, const M& member)
    {
        add(member);
    }

    void add(const std::string& text)
    {
        const std::size_t within = std::string().capacity();
        bytes_ += text.capacity() > within ? text.capacity() + 1 : 0;
    }
    template <class T>
    void add(const std::optional<T>& value)
    {
        if (value)
            add(*value);
    }
    template <class T>
    void add(const Shared<T>& shared)
    {
        bytes_ += sizeof(T);
        add(*shared);
    }
    template <class T>
    void add(const std::vector<T>& list)
    {
        bytes_ += list.capacity() * sizeof(T);
        for (const T& item : list)
            add(item);
    }
    template <class T>
    void add(const Fact<T>& fact)
    {
        add(fact.value);
    }
    template <class T>
    void add(const T& value)
    {
        if constexpr (std::is_class_v<T>)
            describe(*this, value);
    }

    std::size_t bytes() const { return bytes_; }

private:
    std::size_t bytes_ = 0;
};

/// What a value takes of memory, its own size and what hangs on it.
template <class T>
std::size_t memoryOf(const T& value)
{
    MemoryCount count;
    count.add(value);
    return sizeof(T) + count.bytes();
}

} // namespace siphonwright
