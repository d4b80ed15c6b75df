#pragma once

#include "tests/random_runs.h"

#include "core/sketch/file.h"

#include <QDir>
#include <QFile>
#include <QString>
#include <QStringList>

#include <variant>

/// The samples of the project.
namespace siphonwright::test {

/// An empty drawing where the file cannot be read.
inline Sketch sketchAt(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const auto read = readSketch(file.readAll().toStdString());
    const Sketch* sketch = std::get_if<Sketch>(&read);
    return sketch ? *sketch : Sketch();
}

/// \param name "sound-bus.siphon"
inline Sketch sampleNamed(const QString& name)
{
    return sketchAt(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/") + name);
}

/// All of them; every fourth where few cases are wanted (tests/random_runs.h), since each is set on every
/// paper.
inline QStringList sampleNames()
{
    const QDir samples(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    return someOf(samples.entryList({QStringLiteral("*.siphon")}, QDir::Files, QDir::Name), 4);
}

} // namespace siphonwright::test
