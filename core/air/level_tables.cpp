#include "core/air/level_tables.h"

#include <utility>

namespace siphonwright {
namespace {

/// Tables kept, of some 2 kB each: more than the fills over one envelope of grades make. The older half then
/// goes.
constexpr std::size_t most_kept = 512;

} // namespace

LevelTable LevelTables::of(const std::vector<MonotonePart>& parts, double from_mm, double to_mm)
{
    std::vector<BorePart> bore = borePartsOf(parts, from_mm, to_mm);
    std::uint64_t mark = bore.size();
    for (const BorePart& part : bore)
        mark = part.mixedInto(mark);
    for (const Kept& kept : kept_) {
        if (kept.mark != mark || kept.made->bore != bore)
            continue;
        ++again_;
        return kept.made->table;
    }
    ++made_;
    if (kept_.size() >= most_kept)
        kept_.erase(kept_.begin(), kept_.begin() + most_kept / 2);
    LevelTable table(bore);
    kept_.push_back({mark, std::make_shared<const Made>(Made{std::move(bore), table})});
    return table;
}

} // namespace siphonwright
