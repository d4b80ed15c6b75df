#pragma once

#include <memory>
#include <utility>

namespace siphonwright {

/// A value behind a shared immutable pointer: copies are cheap, and two copies of an untouched value are
/// known to be equal without looking inside. Never empty.
template <class T>
class Shared {
public:
    Shared() : value_(std::make_shared<const T>(T{})) {}
    explicit Shared(T value) : value_(std::make_shared<const T>(std::move(value))) {}

    const T& operator*() const { return *value_; }
    const T* operator->() const { return value_.get(); }
    /// Same object, not only an equal one: what was computed from it still holds.
    bool same(const Shared& other) const { return value_ == other.value_; }

    /// Replace by a changed copy: `hose.edit([](Hose& h) { h.wall_mm = 4; })`.
    template <class Change>
    void edit(Change&& change)
    {
        T copy = *value_;
        std::forward<Change>(change)(copy);
        value_ = std::make_shared<const T>(std::move(copy));
    }

    friend bool operator==(const Shared& a, const Shared& b) { return a.value_ == b.value_ || *a == *b; }

private:
    std::shared_ptr<const T> value_;
};

} // namespace siphonwright
