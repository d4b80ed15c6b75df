#pragma once

#include "core/proposing/hose_search.h"
#include "core/proposing/propose.h"

#include <vector>

/// Which rules removed the last candidates, where no layout is left.
namespace siphonwright {

/// How far a candidate came, in the order in which a layout is put together.
enum class SearchStage { bore, ports, heater, return_, supply, loop, proof };

/// What removed candidates at each stage.
class RuleConflict {
public:
    void add(SearchStage stage, const RemovedBy& removed, std::size_t times = 1);
    void add(SearchStage stage, const Finding& finding);
    /// Is there anything at this stage or past it?
    bool reached(SearchStage stage) const;
    /// The rules at the farthest stage: those that removed who came farthest through it first.
    std::vector<RuleInWay> farthest(const Sketch& sketch) const;

private:
    struct Entry {
        SearchStage stage;
        std::string rule;
        int depth;
        PartRef by;
        std::size_t times;
    };
    std::vector<Entry> entries_;
};

} // namespace siphonwright
