#include "core/sketch/file.h"

#include <QFile>
#include <QTest>

#include <string>
#include <variant>

using namespace siphonwright;

/// version-N.siphon is a drawing as a released program of format version N wrote it, with everything a
/// drawing can have. These files are never changed; a new format version adds its own.
class TestReleasedFormats : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyReleasedVersionHasASampleThatOpens_data();
    void everyReleasedVersionHasASampleThatOpens();
};

void TestReleasedFormats::everyReleasedVersionHasASampleThatOpens_data()
{
    QTest::addColumn<int>("version");
    for (int version = 1; version <= format_version; ++version)
        QTest::addRow("version %d", version) << version;
}

void TestReleasedFormats::everyReleasedVersionHasASampleThatOpens()
{
    QFETCH(int, version);
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/tests/formats/version-%1.siphon").arg(version));
    QVERIFY2(file.open(QIODevice::ReadOnly), qPrintable(file.fileName()));
    const std::string text = file.readAll().toStdString();
    QVERIFY(text.find("\"version\": " + std::to_string(version)) != std::string::npos);
    const auto read = readSketch(text);
    if (const auto* problems = std::get_if<Problems>(&read))
        QFAIL(problems->front().text().c_str());
    const auto& sketch = std::get<Sketch>(read);
    // Nothing of it was passed over: the sample has a part of every kind.
    QVERIFY(sketch.engine && sketch.tank && sketch.photo && sketch.survey && sketch.quote);
    QVERIFY(!sketch.ports.empty() && !sketch.heaters.empty() && !sketch.hoses.empty());
    QVERIFY(!sketch.areas.empty() && !sketch.readings.empty() && !sketch.notes.empty());
    QVERIFY(!sketch.limits.empty() && !sketch.assumptions.empty());
    const auto written = writeSketch(sketch);
    QVERIFY(std::holds_alternative<std::string>(written));
    const auto again = readSketch(std::get<std::string>(written));
    QVERIFY(std::holds_alternative<Sketch>(again));
    QVERIFY(std::get<Sketch>(again) == sketch);
}

QTEST_GUILESS_MAIN(TestReleasedFormats)
#include "test_released_formats.moc"
