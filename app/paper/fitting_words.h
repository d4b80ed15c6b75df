#pragma once

#include "app/paper/hose_strip.h"
#include "app/paper/pages.h"

#include <QString>
#include <QStringList>

#include <cstddef>
#include <vector>

/// What is said of hoses, ports and heaters to somebody who fits them, on the drawing and on pages of its
/// own.
namespace siphonwright::paper {

struct HoseWords {
    QString title; ///< name, item, bore
    QString cut;   ///< empty: it has no length
    QString ends;
    QString rise;
};
HoseWords wordsOf(const Job& job, const ResolvedHose& hose, const HoseStrip& strip);

/// Where, thread, what is screwed in, hose end, sealant.
std::vector<QStringList> rowsOfEnds(const Job& job);

struct HeaterWords {
    QString title;
    QStringList lines;
};
HeaterWords wordsOf(const Job& job, const Layout& layout, std::size_t index);

/// Why the electrical load is not known in full.
QStringList missingOfLoad(const Job& job);

} // namespace siphonwright::paper
