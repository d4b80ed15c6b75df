#pragma once

#include <QFile>
#include <QProcess>
#include <QStringList>

#include <cmath>
#include <limits>
#include <vector>

/// Published values to hold physics against: tables in tests/physics/data, and other people's programs.
namespace siphonwright::test {

inline QString physicsFile(const QString& name)
{
    return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/tests/physics/") + name;
}

/// Cells of one line; a quoted cell may hold commas.
inline QStringList csvCells(const QString& line)
{
    QStringList cells;
    QString cell;
    bool quoted = false;
    for (const QChar letter : line) {
        if (letter == u'"') {
            quoted = !quoted;
        } else if (letter == u',' && !quoted) {
            cells.push_back(cell);
            cell.clear();
        } else {
            cell += letter;
        }
    }
    cells.push_back(cell);
    return cells;
}

/// Lines under the heading; none when the file cannot be read.
inline std::vector<QStringList> readCsv(const QString& name)
{
    QFile file(physicsFile(name));
    std::vector<QStringList> rows;
    if (!file.open(QIODevice::ReadOnly))
        return rows;
    file.readLine();
    while (!file.atEnd())
        rows.push_back(csvCells(QString::fromUtf8(file.readLine()).trimmed()));
    return rows;
}

/// The number after `name=` among inputs such as "Re=1000;D=0.019 m"; not a number when there is none.
inline double input(const QString& inputs, const QString& name)
{
    for (const QString& pair : inputs.split(u';'))
        if (pair.startsWith(name + u'='))
            return pair.mid(name.size() + 1).section(u' ', 0, 0).toDouble();
    return std::numeric_limits<double>::quiet_NaN();
}

struct PythonAnswer {
    QString problem; ///< empty when the script ended well
    std::vector<QStringList> rows;
};

/// What a script of tests/physics prints, as rows of comma-separated cells. The system's own Python, because
/// that is where Debian puts its packages; a script names the package that it misses.
inline PythonAnswer runPython(const QString& script)
{
    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"), {physicsFile(script)});
    PythonAnswer answer;
    if (!python.waitForFinished(300'000)) {
        answer.problem = QStringLiteral("/usr/bin/python3: ") + python.errorString();
        return answer;
    }
    if (python.exitStatus() != QProcess::NormalExit || python.exitCode() != 0) {
        answer.problem = script + QStringLiteral(": ") + QString::fromUtf8(python.readAllStandardError());
        return answer;
    }
    for (const QString& line :
         QString::fromUtf8(python.readAllStandardOutput()).split(u'\n', Qt::SkipEmptyParts))
        answer.rows.push_back(line.split(u','));
    return answer;
}

} // namespace siphonwright::test
