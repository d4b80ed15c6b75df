#pragma once

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

inline QStringList sampleNames()
{
    const QDir samples(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    return samples.entryList({QStringLiteral("*.siphon")}, QDir::Files, QDir::Name);
}

} // namespace siphonwright::test
