#pragma once

#include "core/sketch/file.h"

#include <QDir>
#include <QFile>
#include <QStringList>

#include <stdexcept>
#include <string>
#include <variant>

namespace siphonwright::test {

inline QString sampleFolder()
{
    return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/");
}

/// Names of all samples, without their ending.
inline QStringList sampleNames()
{
    QStringList names;
    for (const QString& file :
         QDir(sampleFolder()).entryList({QStringLiteral("*.siphon")}, QDir::Files, QDir::Name))
        names << file.chopped(7);
    return names;
}

inline Sketch sampleOf(const QString& name)
{
    QFile file(sampleFolder() + name + QStringLiteral(".siphon"));
    if (!file.open(QIODevice::ReadOnly))
        throw std::runtime_error("no such sample");
    const QByteArray text = file.readAll();
    return std::get<Sketch>(readSketch({text.constData(), static_cast<std::size_t>(text.size())}));
}

} // namespace siphonwright::test
