#pragma once

#include "core/air/level_table.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <vector>

namespace siphonwright {

/// Level tables made before, for whoever fills much the same loops again and again: a drag, the grades of an
/// envelope. A table is a pure function of the bore that it is of and is had again where that is the same to
/// the last bit, so that results do not depend on what is kept. To be used by one thread at a time.
class LevelTables {
public:
    /// The table of a bore, made or had again.
    LevelTable of(const std::vector<MonotonePart>& parts, double from_mm, double to_mm);

    /// How many tables have been made, and had again.
    std::size_t made() const { return made_; }
    std::size_t again() const { return again_; }

private:
    struct Made {
        std::vector<BorePart> bore;
        LevelTable table;
    };
    struct Kept {
        std::uint64_t mark = 0; ///< of its bore: what differs in it is another
        std::shared_ptr<const Made> made;
    };
    std::vector<Kept> kept_;
    std::size_t made_ = 0;
    std::size_t again_ = 0;
};

} // namespace siphonwright
