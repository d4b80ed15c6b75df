#pragma once

#include "core/analysis/analysis.h"

#include <QMarginsF>
#include <QPageLayout>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <vector>

class QPainter;

/// The layout sheet: one page at true scale with title block, elevation, heights, findings, parts, cautions.
namespace siphonwright::sheet {

enum class Paper { a4, a3, letter, tabloid };
struct Options {
    Paper paper = Paper::a4;
    QPageLayout::Orientation orientation = QPageLayout::Landscape;
    bool colour = false;
    bool running = true;      ///< how the loops run, beside each heater
    bool tint = false;        ///< hoses by temperature
    bool third_angle = false; ///< third-angle projection instead of first-angle (ISO 5456-2)
    /// For a class that is to find the fault: no findings, balloons, pockets, margins or results, but the
    /// notes and room to write.
    bool student = false;
};

QSizeF pageSize(const Options& options); ///< mm, turned
QPageLayout pageLayout(const Options& options);

/// 1:n of the drawing on this page: the largest of ISO 5455's reductions that fits.
int scaleDenominator(const Sketch& sketch, const Analysis& analysis, const Options& options);

/// Paint the page. The painter's unit is 1 mm on paper, origin at the page's top left corner.
void paintPage(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options);

/// A page behind the drawing's. `paint` has 1 mm on paper as its unit, origin at the page's top left corner.
struct FurtherPage {
    QPageLayout layout;
    std::function<void(QPainter&)> paint;
};

/// Write by the file's suffix: .pdf, .svg or .png; further pages go into a PDF only. @return sentences saying
/// what went wrong; empty: done.
QStringList exportTo(const QString& path, const Sketch& sketch, const Analysis& analysis,
                     const Options& options, const std::vector<FurtherPage>& further = {});

/// "a4" ... as typed on the command line, any case; nothing if it is none of them.
std::optional<Paper> paperByName(const QString& name);

} // namespace siphonwright::sheet
