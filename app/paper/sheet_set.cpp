#include "app/paper/sheet_set.h"

#include "app/commissioning/page.h"
#include "app/language/tr.h"
#include "app/paper/insets.h"
#include "app/paper/pages.h"

#include <QStringList>

#include <algorithm>
#include <iterator>
#include <memory>

namespace siphonwright::paper {

std::optional<SheetSet> setByNames(const QString& names)
{
    SheetSet set;
    set.drawing = false;
    for (const QString& typed : names.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QString name = typed.trimmed().toLower();
        if (name == QLatin1String("all"))
            set = {true, true, true, true, true, true};
        else if (name == QLatin1String("drawing"))
            set.drawing = true;
        else if (name == QLatin1String("fitting"))
            set.fitting = true;
        else if (name == QLatin1String("checklist"))
            set.checklist = true;
        else if (name == QLatin1String("parts"))
            set.parts = true;
        else if (name == QLatin1String("estimate"))
            set.estimate = true;
        else if (name == QLatin1String("assumptions"))
            set.assumptions = true;
        else
            return std::nullopt;
    }
    const bool any =
        set.drawing || set.fitting || set.checklist || set.parts || set.estimate || set.assumptions;
    return any ? std::optional(set) : std::nullopt;
}

namespace {

std::vector<sheet::FurtherPage> checklistPages(const Sketch& sketch, const Analysis& analysis,
                                               sheet::Paper paper)
{
    std::vector<sheet::FurtherPage> pages;
    const sheet::Options options = commissioning::pageOptions(paper);
    const auto job = std::make_shared<const std::pair<Sketch, Analysis>>(sketch, analysis);
    const int count = commissioning::pageCount(sketch, analysis, options);
    for (int page = 0; page < count; ++page) {
        const auto paint = [job, options, page](QPainter& painter, const QString& place) {
            commissioning::paintPage(painter, job->first, job->second, options, page, place);
        };
        pages.push_back({sheet::pageLayout(options), [paint](QPainter& painter) { paint(painter, {}); },
                         commissioning::pageTitle(), commissioning::pageHolds(), 0, paint});
    }
    return pages;
}

} // namespace

bool isPriced(const Sketch& sketch)
{
    if (!sketch.quote)
        return false;
    const std::vector<PricedItem>& items = (*sketch.quote)->prices.items;
    return std::any_of(items.begin(), items.end(),
                       [](const PricedItem& item) { return item.price_minor.has_value(); });
}

std::vector<sheet::FurtherPage> pagesOf(const Sketch& sketch, const Analysis& analysis, SheetSet set,
                                        sheet::Options& options)
{
    set.fitting = set.fitting && !set.drawing;
    std::vector<sheet::FurtherPage> behind = pagesBehind(sketch, analysis, set, options.paper);
    if (!set.drawing)
        return behind;
    if (!options.student)
        options.insets = insetsOf(sketch, analysis.layout);
    options = sheet::followedBy(sheet::tiled(std::move(options), sketch, analysis), sketch, analysis, behind);
    std::vector<sheet::FurtherPage> pages = sheet::drawingPages(sketch, analysis, options);
    int number = 1 + options.notes_sheets;
    for (sheet::FurtherPage& page : behind) {
        const QString place = tr("Page %1, sheet %2/%3").arg(page.page).arg(++number).arg(options.sheets);
        if (page.paint_placed)
            page.paint = [paint = page.paint_placed, place](QPainter& painter) { paint(painter, place); };
    }
    pages.insert(pages.end(), std::make_move_iterator(behind.begin()), std::make_move_iterator(behind.end()));
    return pages;
}

std::vector<sheet::FurtherPage> pagesBehind(const Sketch& sketch, const Analysis& analysis,
                                            const SheetSet& set, sheet::Paper paper)
{
    std::vector<sheet::FurtherPage> pages;
    const bool drawn = !sketch.hoses.empty() || !sketch.heaters.empty();
    int number = 1;
    const auto add = [&](const std::vector<sheet::FurtherPage>& more) {
        for (sheet::FurtherPage page : more) {
            page.page = number;
            pages.push_back(std::move(page));
        }
    };
    if (set.fitting && drawn)
        add(pagesBehind(sketch, Kind::fitting, paper));
    if (set.checklist) {
        ++number;
        add(checklistPages(sketch, analysis, paper));
    }
    const bool estimate = set.estimate && isPriced(sketch);
    number += (set.parts && drawn) || estimate ? 1 : 0;
    if (set.parts && drawn)
        add(pagesBehind(sketch, Kind::parts_list, paper));
    if (estimate)
        add(pagesBehind(sketch, Kind::for_customer, paper));
    if (set.assumptions) {
        ++number;
        add(pagesBehind(sketch, Kind::assumptions, paper));
    }
    return pages;
}

} // namespace siphonwright::paper
