#pragma once

#include "app/document/disk.h"
#include "app/sheet/inset.h"

#include "core/analysis/analysis.h"

#include <QImage>
#include <QMarginsF>
#include <QPageLayout>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

class QPainter;

/// The layout sheet: one page at true scale with title block, elevation, heights, findings, parts, cautions.
namespace siphonwright::sheet {

enum class Paper { a4, a3, letter, tabloid };

struct LaidSheets; // lay_out.h

/// A document on the sheets behind the drawing.
struct Behind {
    QString title;
    QString holds; ///< what is found in it
    int first_sheet = 2;
    int last_sheet = 2;
    int page = 0; ///< of the set; 0: it has no number
};

struct Options {
    Paper paper = Paper::a4;
    QPageLayout::Orientation orientation = QPageLayout::Landscape;
    bool colour = false;
    bool running = true;      ///< how the loops run, beside each heater
    bool tint = false;        ///< hoses by temperature
    bool photo = false;       ///< the photograph under the drawing, grey unless in colour
    bool third_angle = false; ///< third-angle projection instead of first-angle (ISO 5456-2)
    /// For a class that is to find the fault: no findings, balloons, pockets, margins or results, but the
    /// notes and room to write.
    bool student = false;
    /// 1:n as wanted; nothing: the largest that fits. Larger than what fits: the drawing goes over several
    /// pages, `across` by `down`, to be trimmed at the marks and joined.
    std::optional<int> scale;
    int across = 1;
    int down = 1;
    int sheets = 1;                         ///< of the whole set, for the title block
    int notes_sheets = 0;                   ///< of them, with what of page 1 has no room beside the drawing
    bool says_whole = false;                ///< the drawing says that there are none, though it need not
    std::vector<Inset> insets;              ///< in order of need: into the room that the views leave
    std::shared_ptr<const LaidSheets> laid; ///< by followedBy(), of which nothing may change then; null: none
    std::vector<Behind> behind;             ///< what the drawing refers to
    double png_dpi = 200;                   ///< of a PNG, 20 to 1200
    QImage logo;                            ///< of the legal owner; null: none
};

/// With the pages that its scale takes; at most `most_tiles` either way.
Options tiled(Options options, const Sketch& sketch, const Analysis& analysis);
constexpr int most_tiles = 8;
constexpr double tile_margin_mm = 10; ///< round what is printed of the drawing on each of several pages

QSizeF paperSize(const Options& options); ///< mm, turned
/// Of the whole drawing, mm: one paper, or what several joined give.
QSizeF pageSize(const Options& options);
QPageLayout pageLayout(const Options& options);

/// 1:n of the drawing on this page: the largest of ISO 5455's reductions that fits.
int scaleDenominator(const Sketch& sketch, const Analysis& analysis, const Options& options);

/// Paint the page. The painter's unit is 1 mm on paper, origin at the page's top left corner.
void paintPage(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options);

/// A page of a set. `paint` has 1 mm on paper as its unit, origin at the page's top left corner.
struct FurtherPage {
    QPageLayout layout;
    std::function<void(QPainter&)> paint;
    QString title; ///< of the document that it belongs to; empty: the drawing
    QString holds; ///< in short, what that document tells
    int page = 0;  ///< of the set, of which the drawing is page 1; 0: none
    /// The same with words for its foot in place of the document's own count of pages; empty: as `paint`.
    std::function<void(QPainter&, const QString& place)> paint_placed = {};
};

/// With the count of sheets, those of page 1 among them, and the list of what stands behind the drawing.
Options followedBy(Options options, const Sketch& sketch, const Analysis& analysis,
                   const std::vector<FurtherPage>& behind);

/// Page 1: the drawing as the sheets that it takes, one or several to be joined; and those with the notes and
/// insets that have no room on it. They refer to what is given.
std::vector<FurtherPage> drawingPages(const Sketch& sketch, const Analysis& analysis, const Options& options);

/// Write pages by the file's suffix: .pdf, or .svg or .png, of which each page after the first is a file of
/// its own with its number behind its name: sheet-2.png. \param put each in its place. @return sentences
/// saying what went wrong; empty: done.
QStringList write(const QString& path, const std::vector<FurtherPage>& pages, const Sketch& sketch,
                  double png_dpi, const PutFile& put = putFile);

/// The drawing, and further pages behind it.
QStringList exportTo(const QString& path, const Sketch& sketch, const Analysis& analysis,
                     const Options& options, const std::vector<FurtherPage>& further = {});

/// "a4" ... as typed on the command line, any case; nothing if it is none of them.
std::optional<Paper> paperByName(const QString& name);

} // namespace siphonwright::sheet
