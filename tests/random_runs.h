#pragma once

#include <QtCore/QtGlobal>

#include <algorithm>

namespace siphonwright::test {

/// How many random cases a test tries: all of them where SIPHONWRIGHT_ALL_RUNS is set, a quarter of the usual
/// where SIPHONWRIGHT_FEW_RUNS is, as under sanitizers.
inline int runs(int usual, int all)
{
    if (qEnvironmentVariableIsSet("SIPHONWRIGHT_ALL_RUNS"))
        return all;
    return qEnvironmentVariableIsSet("SIPHONWRIGHT_FEW_RUNS") ? std::max(1, usual / 4) : usual;
}

} // namespace siphonwright::test
