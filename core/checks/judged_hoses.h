#pragma once

#include "core/checks/rules.h"

#include <cstddef>
#include <memory>
#include <unordered_map>
#include <vector>

namespace siphonwright {

/// What one rule says of one hose looked at by itself.
struct HoseVerdict {
    std::vector<Finding> findings;
    std::vector<NotJudged> not_judged;
    std::vector<Unconfirmed> unconfirmed;
    std::optional<Margin> margin;

    bool empty() const;
};

/// What the rules that look at each hose by itself said of every hose, kept from one judging to the next: an
/// unchanged hose in unchanged surroundings is not judged again. It only saves time; verdicts taken over are
/// those that judging would give.
class JudgedHoses {
public:
    /// Begin with what was judged before; null: nothing was. What can still hold is looked up, and only that.
    JudgedHoses(const Sketch& sketch, const Layout& layout, const JudgedHoses* before);

    /// What a rule said of this hose, by its place in the layout; null if it has to be judged.
    std::shared_ptr<const HoseVerdict> verdict(const Rule& rule, std::size_t hose) const;
    void remember(const Rule& rule, std::size_t hose, std::shared_ptr<const HoseVerdict> verdict);

private:
    using ByHose = std::vector<std::shared_ptr<const HoseVerdict>>;

    void takeOver(const JudgedHoses& before);

    std::shared_ptr<const Sketch> around_; ///< all that a rule can see beside the hoses
    Vec3 up_;
    std::vector<std::shared_ptr<const Route>> routes_;
    std::vector<ByHose> by_rule_; ///< by the rule's place in the book
};

/// Facts that are gathered each once, in the order in which they came. A few are looked through one by one;
/// many by their hash.
class OnceEach {
public:
    explicit OnceEach(std::vector<Unconfirmed>& list) : list_(list) {}
    void add(const Unconfirmed& fact);

private:
    std::vector<Unconfirmed>& list_;
    std::unordered_multimap<std::size_t, std::size_t> by_hash_;
    std::size_t hashed_ = 0;
};

} // namespace siphonwright
