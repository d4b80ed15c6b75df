#pragma once

#include "tests/sketch/member_count.h"

#include "core/analysis/analysis.h"

#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

/// Every figure of a live analysis, whatever struct it is a member of: the compiler counts the members, so
/// that a new one cannot be forgotten.
namespace siphonwright::test {

// clang-format off
template <class T, class Visit>
void eachMember(const T& whole, Visit&& visit)
{
    constexpr std::size_t count = std::is_empty_v<T> ? 0 : memberCount<T>();
    static_assert(count <= 22, "write the next case");
    if constexpr (count == 1) {
        const auto& [m1] = whole;
        (visit(m1));
    }
    else if constexpr (count == 2) {
        const auto& [m1, m2] = whole;
        (visit(m1), visit(m2));
    }
    else if constexpr (count == 3) {
        const auto& [m1, m2, m3] = whole;
        (visit(m1), visit(m2), visit(m3));
    }
    else if constexpr (count == 4) {
        const auto& [m1, m2, m3, m4] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4));
    }
    else if constexpr (count == 5) {
        const auto& [m1, m2, m3, m4, m5] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5));
    }
    else if constexpr (count == 6) {
        const auto& [m1, m2, m3, m4, m5, m6] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6));
    }
    else if constexpr (count == 7) {
        const auto& [m1, m2, m3, m4, m5, m6, m7] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7));
    }
    else if constexpr (count == 8) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8));
    }
    else if constexpr (count == 9) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9));
    }
    else if constexpr (count == 10) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10));
    }
    else if constexpr (count == 11) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11));
    }
    else if constexpr (count == 12) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12));
    }
    else if constexpr (count == 13) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13));
    }
    else if constexpr (count == 14) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14));
    }
    else if constexpr (count == 15) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15));
    }
    else if constexpr (count == 16) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15, m16] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15), visit(m16));
    }
    else if constexpr (count == 17) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15, m16, m17] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15), visit(m16), visit(m17));
    }
    else if constexpr (count == 18) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15, m16, m17, m18] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15), visit(m16), visit(m17), visit(m18));
    }
    else if constexpr (count == 19) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15, m16, m17, m18, m19] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15), visit(m16), visit(m17), visit(m18), visit(m19));
    }
    else if constexpr (count == 20) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15, m16, m17, m18, m19, m20] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15), visit(m16), visit(m17), visit(m18), visit(m19), visit(m20));
    }
    else if constexpr (count == 21) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15, m16, m17, m18, m19, m20, m21] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15), visit(m16), visit(m17), visit(m18), visit(m19), visit(m20), visit(m21));
    }
    else if constexpr (count == 22) {
        const auto& [m1, m2, m3, m4, m5, m6, m7, m8, m9, m10, m11, m12, m13, m14, m15, m16, m17, m18, m19, m20, m21, m22] = whole;
        (visit(m1), visit(m2), visit(m3), visit(m4), visit(m5), visit(m6), visit(m7), visit(m8), visit(m9), visit(m10), visit(m11), visit(m12), visit(m13), visit(m14), visit(m15), visit(m16), visit(m17), visit(m18), visit(m19), visit(m20), visit(m21), visit(m22));
    }
}
// clang-format on

/// Takes an analysis apart into numbers, and into text for what is none.
class Figures {
public:
    explicit Figures(const Analysis& analysis)
    {
        step(analysis.grade);
        step(analysis.layout.plumb.up());
        step(analysis.layout.hoses);
        step(analysis.layout.levels);
        step(analysis.layout.jacket);
        step(analysis.layout.heaters);
        step(analysis.running.block_degC);
        step(analysis.running.loops);
        step(analysis.findings);
        step(analysis.not_judged);
        step(analysis.margins);
        step(analysis.unconfirmed);
    }

    const std::vector<double>& numbers() const { return numbers_; }
    /// What is no floating-point number: ids, enumerators, counts, patterns; equal wherever the analysis says
    /// the same in other figures.
    std::uint64_t rest() const { return rest_; }
    /// Where the first stands that is no number, by members and items counted from 0 below those that the
    /// constructor names: "2/0/1"; empty where there is none.
    const std::string& noNumberAt() const { return no_number_at_; }
    /// Equal only to the bit.
    std::uint64_t digest() const
    {
        std::uint64_t all = rest_;
        for (const double number : numbers_)
            all = mixed(all, std::bit_cast<std::uint64_t>(number));
        return all;
    }

private:
    /// FNV-1a (Fowler, Noll and Vo) by whole words.
    static std::uint64_t mixed(std::uint64_t so_far, std::uint64_t next)
    {
        constexpr std::uint64_t prime = 0x100000001b3;
        return ((so_far ^ next) * prime) ^ (so_far >> 29U);
    }
    void whole(std::uint64_t number) { rest_ = mixed(rest_, number); }

    void add(double number)
    {
        numbers_.push_back(number);
        if (!std::isnan(number) || !no_number_at_.empty())
            return;
        for (const std::size_t step : steps_)
            no_number_at_ += (no_number_at_.empty() ? "" : "/") + std::to_string(step);
    }
    template <class T>
    void step(const T& inside)
    {
        add(inside);
        ++steps_.back();
    }
    template <class T>
    requires(std::is_integral_v<T> || std::is_enum_v<T>) void add(T number)
    {
        whole(static_cast<std::uint64_t>(number));
    }
    void add(const std::string& text) { whole(std::hash<std::string>{}(text)); }
    template <class T>
    void add(const std::optional<T>& value)
    {
        whole(value.has_value());
        if (value)
            add(*value);
    }
    template <class T>
    void add(const std::vector<T>& list)
    {
        whole(list.size());
        steps_.push_back(0);
        for (const T& item : list)
            step(item);
        steps_.pop_back();
    }
    template <class... T>
    void add(const std::variant<T...>& form)
    {
        whole(form.index());
        std::visit([this](const auto& inside) { this->add(inside); }, form);
    }
    void add(const std::shared_ptr<const LoopResistance>& /*tables, whose results are beside it*/) {}
    void add(const std::shared_ptr<const Route>& route) { add(*route); }
    void add(const Shared<Hose>& hose) { add(hose->id); }
    void add(const Centreline& line)
    {
        add(line.length());
        add(line.pieces());
        add(line.bends());
    }
    template <class T>
    requires std::is_aggregate_v<T>
    void add(const T& part)
    {
        steps_.push_back(0);
        eachMember(part, [this](const auto& member) { this->step(member); });
        steps_.pop_back();
    }

    std::vector<double> numbers_;
    std::vector<std::size_t> steps_ = {0};
    std::string no_number_at_;
    std::uint64_t rest_ = 0xcbf29ce484222325;
};

} // namespace siphonwright::test
