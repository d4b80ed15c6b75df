#pragma once

#include "tests/sheet/sample_files.h"

#include <QTest>

namespace siphonwright::test {

/// A row for each, with its name in the column "sample".
inline void addSampleRows()
{
    QTest::addColumn<QString>("sample");
    for (const QString& name : sampleNames())
        QTest::addRow("%s", qPrintable(name)) << name;
}

} // namespace siphonwright::test
