#pragma once

#include "app/headless/headless.h"

#include <QString>
#include <QStringList>
#include <QTextStream>

namespace siphonwright::test {

/// The path of a sample.
/// \param name without its ending
inline QString sample(const char* name)
{
    return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QString::fromLatin1(name));
}

struct Run {
    int code = -1;
    QString out;
    QString err;
};

/// The program without its window.
inline Run run(const QStringList& arguments)
{
    Run result;
    QTextStream out(&result.out);
    QTextStream err(&result.err);
    result.code = runHeadless(arguments, out, err);
    return result;
}

} // namespace siphonwright::test
