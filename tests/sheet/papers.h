#pragma once

#include "tests/random_runs.h"

#include "app/sheet/sheet.h"

#include <vector>

namespace siphonwright::test {

inline sheet::Options on(sheet::Paper paper, QPageLayout::Orientation orientation)
{
    sheet::Options options;
    options.paper = paper;
    options.orientation = orientation;
    return options;
}

/// Every paper, both ways up; some where few are wanted.
inline std::vector<sheet::Options> everyPaper()
{
    using sheet::Paper;
    std::vector<sheet::Options> all;
    for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter, Paper::tabloid})
        for (const auto orientation : {QPageLayout::Landscape, QPageLayout::Portrait})
            all.push_back(on(paper, orientation));
    return someOf(all, 5);
}

} // namespace siphonwright::test
