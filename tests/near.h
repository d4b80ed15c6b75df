#pragma once

#include <QTest>

#include <cmath>

namespace siphonwright::test {

/// Compare within an absolute tolerance. QCOMPARE on doubles is relative 1e-12, which says nothing near zero.
/// NaN is never near anything.
inline bool near(double actual, double expected, double tolerance)
{
    if (std::abs(actual - expected) <= tolerance)
        return true;
    qWarning("actual %.12g, expected %.12g, off by %.3g, allowed %.3g", actual, expected,
             std::abs(actual - expected), tolerance);
    return false;
}

} // namespace siphonwright::test

#define VERIFY_NEAR(actual, expected, tolerance)                                                             \
    QVERIFY(siphonwright::test::near(actual, expected, tolerance))
