#pragma once

#include <QtCore/QtGlobal>

#include <algorithm>

namespace siphonwright::test {

/// Are few cases wanted, as under sanitizers?
inline bool fewRuns()
{
    return qEnvironmentVariableIsSet("SIPHONWRIGHT_FEW_RUNS");
}

/// Of rows that repeat one thing, every so manieth from the first on where few cases are wanted; all
/// otherwise.
template <typename List>
List someOf(const List& all, int every)
{
    List out;
    int index = 0;
    for (const auto& one : all)
        if (index++ % (fewRuns() ? every : 1) == 0)
            out.push_back(one);
    return out;
}

/// How many random cases a test tries: all of them where SIPHONWRIGHT_ALL_RUNS is set, a quarter of the usual
/// where SIPHONWRIGHT_FEW_RUNS is, as under sanitizers.
inline int runs(int usual, int all)
{
    if (qEnvironmentVariableIsSet("SIPHONWRIGHT_ALL_RUNS"))
        return all;
    return fewRuns() ? std::max(1, usual / 4) : usual;
}

} // namespace siphonwright::test
