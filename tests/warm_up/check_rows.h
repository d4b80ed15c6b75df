#pragma once

#include <QFile>
#include <QString>
#include <QStringList>

#include <limits>
#include <vector>

namespace siphonwright::test {

/// A row of tests/warm_up/data/*.csv: an expected value with its inputs and its source.
struct CheckRow {
    QString id;
    QString quantity;
    QString inputs; ///< "name=value;name=value"
    double expected = 0;
    double tolerance = 0; ///< absolute, whatever the file says it in
    QString source;

    /// The number after "name=", as far as it is one; NaN where there is none.
    double input(const char* name) const
    {
        const QString wanted = QString::fromLatin1(name) + u'=';
        for (const QString& part : inputs.split(u';')) {
            if (!part.trimmed().startsWith(wanted))
                continue;
            return part.trimmed().mid(wanted.size()).split(u' ').first().toDouble();
        }
        return std::numeric_limits<double>::quiet_NaN();
    }
};

/// Cells of one line; a cell in quotes may hold commas.
inline QStringList cellsOf(const QString& line)
{
    QStringList cells = {QString()};
    bool quoted = false;
    for (const QChar c : line) {
        if (c == u'"')
            quoted = !quoted;
        else if (c == u',' && !quoted)
            cells.append(QString());
        else
            cells.last().append(c);
    }
    return cells;
}

/// The rows whose id begins so. An unreadable file has none, which the caller's count shows.
inline std::vector<CheckRow> readCheckRows(const char* file_name, const char* id_start)
{
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/tests/warm_up/data/") +
               QString::fromLatin1(file_name));
    std::vector<CheckRow> rows;
    if (!file.open(QIODevice::ReadOnly))
        return rows;
    file.readLine();
    while (!file.atEnd()) {
        const QStringList cells = cellsOf(QString::fromUtf8(file.readLine()).trimmed());
        if (cells.size() < 7 || !cells[0].startsWith(QString::fromLatin1(id_start)))
            continue;
        CheckRow row{cells[0], cells[1], cells[2], cells[3].toDouble(), 0, cells[6]};
        const QStringList tolerance = cells[5].split(u':');
        row.tolerance = tolerance[1].toDouble() * (tolerance[0] == u"rel" ? qAbs(row.expected) : 1);
        rows.push_back(row);
    }
    return rows;
}

} // namespace siphonwright::test
