#pragma once

#include "app/sheet/sheet.h"

#include "core/analysis/analysis.h"

#include <QStringList>

class QPainter;

/// The checklist on paper: steps with boxes, cautions and numbers, then a table for readings taken by hand.
namespace siphonwright::commissioning {

/// Upright pages of the paper chosen; the rest of the options does not bear on them.
sheet::Options pageOptions(sheet::Paper paper);

QString pageTitle();
/// What it tells, for the drawing that refers to it.
QString pageHolds();

/// How many pages the checklist takes.
int pageCount(const Sketch& sketch, const Analysis& analysis, const sheet::Options& options);

/// Paint one page, from 0. The painter's unit is 1 mm on paper, origin at the page's top left corner.
void paintPage(QPainter& painter, const Sketch& sketch, const Analysis& analysis,
               const sheet::Options& options, int page, const QString& place = {});

/// Write all pages as PDF. @return sentences saying what went wrong; empty: done.
QStringList exportTo(const QString& path, const Sketch& sketch, const Analysis& analysis,
                     const sheet::Options& options, const PutFile& put = putFile);

} // namespace siphonwright::commissioning
