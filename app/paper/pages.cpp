#include "app/paper/pages.h"

#include "app/language/tr.h"
#include "app/sheet/sheet.h"

#include <QBuffer>
#include <QPdfWriter>

#include <algorithm>
#include <memory>

namespace siphonwright::paper {

namespace {

sheet::Options pageOf(sheet::Paper paper)
{
    sheet::Options options;
    options.orientation = QPageLayout::Portrait;
    options.paper = paper == sheet::Paper::letter || paper == sheet::Paper::tabloid ? sheet::Paper::letter
                                                                                    : sheet::Paper::a4;
    return options;
}

bool priced(Kind kind)
{
    return kind == Kind::for_customer || kind == Kind::internal;
}

/// Label and value under each other at the right; returns the height taken.
double layReferences(Flow& flow, const Job& job, double top)
{
    const std::vector<std::pair<QString, std::string>> all{
        {tr("Number"), job.quote.number},
        {tr("Revision"), job.quote.revision},
        {tr("Date"), job.quote.date},
        {tr("Drawing"), job.sketch.sheet.identification_number},
    };
    double y = top;
    for (const auto& [name, value] : all) {
        if (value.empty())
            continue;
        const double label_right = flow.right() - 42;
        flow.text(label_right, y, name, Anchor::right, small_mm, Weight::regular, true);
        const QStringList lines = drawing::wrapped(words(value), 39, body_mm);
        for (qsizetype i = 0; i < std::min<qsizetype>(lines.size(), 2); ++i, y += body_mm * line_share)
            flow.text(label_right + 3, y, lines[i], Anchor::left, body_mm, Weight::strong);
    }
    return y - top;
}

/// A block of text as typed, its first line strong; returns the height taken.
double layBlock(Flow& flow, const std::string& text, double x, double top, double width, double first_mm)
{
    double y = top;
    bool first = true;
    constexpr int most_lines = 8;
    int lines_left = most_lines;
    for (const QString& piece : words(text).split(QLatin1Char('\n'))) {
        const double size = first ? first_mm : body_mm;
        const Weight weight = first ? Weight::strong : Weight::regular;
        for (const QString& line : drawing::wrapped(piece, width, size, weight)) {
            if (lines_left-- <= 0)
                return y - top;
            flow.text(x, y, line, Anchor::left, size, weight);
            y += size * line_share;
        }
        first = false;
    }
    return y - top;
}

} // namespace

QString titleOf(Kind kind)
{
    switch (kind) {
    case Kind::parts_list:
        return tr("Parts list");
    case Kind::for_customer:
        return tr("Estimate");
    case Kind::internal:
        return tr("Estimate, internal");
    case Kind::fitting:
        return tr("Cutting and fitting");
    case Kind::assumptions:
        return tr("Assumptions and sources");
    }
    return {};
}

QString holdsOf(Kind kind)
{
    switch (kind) {
    case Kind::parts_list:
        return tr("parts, cuts");
    case Kind::for_customer:
    case Kind::internal:
        return tr("prices");
    case Kind::fitting:
        return tr("hoses with clips and bends, run profiles, ports, threads, heaters, electrical load, "
                  "coolant, tag");
    case Kind::assumptions:
        return tr("what the figures rest on");
    }
    return {};
}

Pages::Pages(const Sketch& sketch, Kind kind, sheet::Paper paper)
    : title_(titleOf(kind)), paper_(paper), flow_(sheet::pageSize(pageOf(paper)))
{
    Job job{sketch, quoteOf(sketch), paperworkOf(sketch), unitsOf(sketch), kind};
    if (kind == Kind::for_customer) {
        job.work.estimate = forCustomer(std::move(job.work.estimate));
        for (Estimate& other : job.work.others)
            other = forCustomer(std::move(other));
    }
    layHead(flow_, job);
    // The flow keeps no reference to the job: what it repeats is text.
    QString name = job.quote.number.empty() ? title_ : title_ + QLatin1Char(' ') + words(job.quote.number);
    // A loose page is known by what it belongs to.
    for (const std::string& of : {sketch.sheet.identification_number, sketch.sheet.title})
        if (!of.empty())
            name += QStringLiteral(", ") + words(of);
    flow_.onNewPage([this, name] {
        flow_.text(flow_.left(), flow_.y() + body_mm, name, Anchor::left, body_mm, Weight::strong);
        flow_.down(8);
    });
    if (kind == Kind::parts_list) {
        layPartsList(flow_, job);
        layCutPlan(flow_, job);
    } else if (kind == Kind::fitting) {
        layFitting(flow_, job);
    } else if (kind == Kind::assumptions) {
        layAssumptions(flow_, job);
    } else {
        layEstimate(flow_, job);
        layMissing(flow_, job);
        layAlternates(flow_, job);
    }
    // Among what is fitted they stand before it.
    if (kind != Kind::assumptions && kind != Kind::fitting)
        layCautions(flow_, job);
    flow_.onNewPage({});
}

QPageLayout Pages::layout() const
{
    return sheet::pageLayout(pageOf(paper_));
}

void Pages::paint(QPainter& painter, int page, const QString& place) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    flow_.paint(painter, page);
    const QSizeF size = flow_.pageSize();
    const double baseline = size.height() - 10;
    const drawing::Palette ink = drawing::Palette::paper();
    painter.setPen(QPen(ink.ink, drawing::hairline_mm));
    painter.drawLine(QPointF(Flow::left_mm, baseline - 4),
                     QPointF(size.width() - Flow::right_mm, baseline - 4));
    drawing::paintWeightedText(
        painter, {Flow::left_mm, baseline},
        tr("Siphonwright. The figures are estimates; the heater's and the engine's own "
           "manuals rule over them."),
        Anchor::left, ink.ink, small_mm, Weight::regular);
    drawing::paintWeightedText(painter, {size.width() - Flow::right_mm, baseline},
                               place.isEmpty() ? tr("Page %1 of %2").arg(page + 1).arg(count()) : place,
                               Anchor::right, ink.ink, small_mm, Weight::regular);
    painter.restore();
}

void layHead(Flow& flow, const Job& job)
{
    const double top = flow.y();
    flow.text(flow.right(), top + title_mm, titleOf(job.kind), Anchor::right, title_mm, Weight::strong);
    const double half = flow.width() / 2 - 6;
    // The drawing's owner may be the customer, so an estimate does not take him for who makes it.
    const bool by_owner = job.quote.company.empty() && !priced(job.kind);
    const std::string& company = by_owner ? job.sketch.sheet.legal_owner : job.quote.company;
    const double left = layBlock(flow, company, flow.left(), top + heading_mm, half, heading_mm);
    const double references = layReferences(flow, job, top + title_mm + 7);
    flow.down(std::max(left + 4, references + title_mm + 7));
    flow.line(flow.left(), flow.right(), flow.y(), drawing::thick_mm);
    flow.down(6);
    const double under = flow.y();
    double customer = 0;
    if (priced(job.kind)) {
        const std::string& to = job.quote.customer.empty() ? job.sketch.sheet.customer : job.quote.customer;
        customer = layBlock(flow, to, flow.left(), under, half, body_mm);
    }
    double y = under;
    const double x = !priced(job.kind) ? flow.left() : flow.left() + flow.width() / 2;
    const auto say = [&](const QString& text, Weight weight) {
        for (const QString& line : drawing::wrapped(text, flow.right() - x, body_mm, weight)) {
            flow.text(x, y, line, Anchor::left, body_mm, weight);
            y += body_mm * line_share;
        }
    };
    say(words(job.sketch.sheet.title), Weight::strong);
    say(words(job.sketch.sheet.supplementary_title), Weight::regular);
    say(words(job.sketch.sheet.vehicle), Weight::regular);
    say(job.quote.vehicles == 1 ? tr("For one vehicle")
                                : tr("For %1 identical vehicles").arg(job.quote.vehicles),
        Weight::regular);
    flow.down(std::max(customer, y - under) + 2);
}

QStringList exportTo(const QString& path, const Pages& pages, const PutFile& put)
{
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&file);
        writer.setTitle(pages.title());
        writer.setCreator(QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION));
        writer.setResolution(1200);
        writer.setPageLayout(pages.layout());
        QPainter painter;
        if (!painter.begin(&writer))
            return {tr("%1: the pages could not be drawn.").arg(path)};
        const double per_mm = writer.logicalDpiX() / 25.4;
        painter.scale(per_mm, per_mm);
        for (int page = 0; page < pages.count(); ++page) {
            if (page > 0)
                writer.newPage();
            pages.paint(painter, page);
        }
    }
    return put(path, file.data());
}

std::vector<sheet::FurtherPage> pagesBehind(const Sketch& sketch, Kind kind, sheet::Paper paper)
{
    const auto pages = std::make_shared<const Pages>(sketch, kind, paper);
    std::vector<sheet::FurtherPage> out;
    for (int i = 0; i < pages->count(); ++i)
        out.push_back(
            {pages->layout(), [pages, i](QPainter& painter) { pages->paint(painter, i); }, titleOf(kind),
             holdsOf(kind), 0,
             [pages, i](QPainter& painter, const QString& place) { pages->paint(painter, i, place); }});
    return out;
}

} // namespace siphonwright::paper
