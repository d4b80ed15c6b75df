#pragma once

#include "app/language/in_words.h"
#include "app/panels/field.h"

#include "core/quantity/quantity.h"

#include <QCoreApplication>
#include <QString>

/// What the figures of this folder are made of.
namespace siphonwright::sizing {

/// Translation context of the figures.
struct FigureText {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::sizing::FigureText)
};

inline QString text(double value, Unit unit, const Sketch& sketch)
{
    return inWords(value, unit, panels::unitsOf(sketch));
}

inline QString text(const Message& message, const Sketch& sketch)
{
    return inWords(message, panels::unitsOf(sketch));
}

/// Core's half sentences ("the bore is not entered") as whole ones.
inline QString sentence(const std::string& half)
{
    QString out = inWords(half);
    if (!out.isEmpty())
        out[0] = out[0].toUpper();
    return out.endsWith(QLatin1Char('.')) ? out : out + QLatin1Char('.');
}

inline QString warning(const QString& what)
{
    return FigureText::tr("▲ %1").arg(what);
}

} // namespace siphonwright::sizing
