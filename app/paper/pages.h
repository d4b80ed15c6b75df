#pragma once

#include "app/paper/flow.h"
#include "app/paper/paperwork.h"
#include "app/sheet/sheet.h"

#include <QCoreApplication>
#include <QPageLayout>
#include <QString>

/// Parts list, estimate, what is needed to cut and fit, and assumptions on paper: upright pages of A4 or
/// Letter.
namespace siphonwright::paper {

enum class Kind { parts_list, for_customer, internal, fitting, assumptions };

/// A document laid out in pages.
class Pages {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::paper)

public:
    /// \param paper A3 and Tabloid count as the A4 and Letter that they fold to
    Pages(const Sketch& sketch, Kind kind, sheet::Paper paper);

    int count() const { return flow_.count(); }
    QString title() const { return title_; }
    QPageLayout layout() const;
    /// The painter's unit is 1 mm on paper, origin at the page's top left corner.
    /// \param place  what the foot says of the page in a set; empty: its number among these
    void paint(QPainter& painter, int page, const QString& place = {}) const;

private:
    QString title_;
    sheet::Paper paper_;
    Flow flow_;
};

QString titleOf(Kind kind);
/// What a document tells, for the drawing that refers to it.
QString holdsOf(Kind kind);

/// A document as pages behind a layout sheet.
std::vector<sheet::FurtherPage> pagesBehind(const Sketch& sketch, Kind kind, sheet::Paper paper);

/// Write as PDF. \return sentences saying what went wrong; empty: done.
QStringList exportTo(const QString& path, const Pages& pages, const PutFile& put = putFile);

// The parts of a document, each from the flow's place down.
struct Job {
    const Sketch& sketch;
    const Quote& quote;
    Paperwork work;
    UnitSystem units;
    Kind kind;
};
void layHead(Flow& flow, const Job& job);
void layPartsList(Flow& flow, const Job& job);
void layCutPlan(Flow& flow, const Job& job);
void layEstimate(Flow& flow, const Job& job);
void layAlternates(Flow& flow, const Job& job);
void layMissing(Flow& flow, const Job& job);
void layCautions(Flow& flow, const Job& job);
void layFitting(Flow& flow, const Job& job);
void layToFillIn(Flow& flow, const Job& job);
void layTag(Flow& flow, const Job& job);
void layAssumptions(Flow& flow, const Job& job);

} // namespace siphonwright::paper
