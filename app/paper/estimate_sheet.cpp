#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/paper/pages.h"

#include "core/paperwork/money.h"

#include <algorithm>

/// The estimate: for the customer, prices as sold; internal, list prices and mark-up beside them.
namespace siphonwright::paper {

namespace {

QString amountText(const std::optional<std::int64_t>& minor, const Quote& quote)
{
    return minor ? decimalWords(*minor, quote.currency.minor_digits, Grouping::thousands) : QString();
}

QString percentText(const std::optional<std::int64_t>& thousandths)
{
    return thousandths ? tr("%1 %").arg(decimalWords(*thousandths, 3, Grouping::none, true))
                       : tr("not entered");
}

std::vector<FlowTable::Column> columnsOf(const Job& job)
{
    std::vector<FlowTable::Column> columns{{tr("Item"), 11, Anchor::right},
                                           {tr("Description"), 0, Anchor::left},
                                           {tr("Quantity"), 22, Anchor::right}};
    if (job.kind == Kind::internal) {
        columns.push_back({tr("List price"), 21, Anchor::right});
        columns.push_back({tr("At list"), 23, Anchor::right});
    }
    columns.push_back({tr("Price"), 21, Anchor::right});
    columns.push_back({tr("Amount"), 26, Anchor::right});
    return columns;
}

QString descriptionOf(const EstimateLine& line, const Job& job)
{
    QString text = words(line.text, job.units);
    if (!line.size.pattern.empty())
        text += QStringLiteral(", ") + words(line.size, job.units);
    if (job.kind != Kind::internal || line.task.empty())
        return text;
    const std::vector<JobTask> tasks = tasksOf(job.sketch);
    const auto task =
        std::find_if(tasks.begin(), tasks.end(), [&](const JobTask& other) { return other.id == line.task; });
    if (task == tasks.end())
        return text;
    if (job.quote.vehicles > 1)
        text += tr("; first %1 h, each further %2 h")
                    .arg(decimalWords(task->hours_hundredths, 2), decimalWords(task->repeat_hundredths, 2));
    return task->usual ? text + tr("; own estimate") : text;
}

void layLines(FlowTable& table, const Job& job, LineGroup group, const QString& title)
{
    const auto& lines = job.work.estimate.lines;
    const auto in_it = [group](const EstimateLine& line) { return line.group == group; };
    if (std::none_of(lines.begin(), lines.end(), in_it))
        return;
    table.group(title);
    for (const EstimateLine& line : lines) {
        if (!in_it(line))
            continue;
        QStringList cells{line.number == 0 ? QString() : QString::number(line.number),
                          descriptionOf(line, job), quantityText(line)};
        if (job.kind == Kind::internal)
            cells << amountText(line.list_minor, job.quote) << amountText(line.list_amount_minor, job.quote);
        cells << amountText(line.price_minor, job.quote)
              << (line.amount_minor
                      ? amountText(line.amount_minor, job.quote)
                      : QStringLiteral("▲ ") + (line.task.empty() ? words(line.missing) : tr("no rate")));
        table.row(cells);
    }
}

/// A sum at the right, its name beside it.
void laySum(Flow& flow, const QString& name, const QString& sum, Weight weight)
{
    const double size = weight == Weight::strong ? heading_mm : body_mm;
    flow.text(flow.right() - 42, flow.y() + size * 1.4, name, Anchor::right, size, weight);
    flow.text(flow.right() - 1, flow.y() + size * 1.4, sum, Anchor::right, size, weight);
    flow.down(size * 2.1);
}

void laySums(Flow& flow, const Job& job)
{
    constexpr double sums_mm = 46;
    flow.need(sums_mm);
    flow.down(2);
    const Estimate& estimate = job.work.estimate;
    const auto sum = [&](const QString& name, Sum which, Weight weight = Weight::regular) {
        laySum(flow, name, sumText(estimate, which, job.quote), weight);
    };
    if (job.kind == Kind::internal) {
        sum(tr("Materials at list price"), Sum::list);
        sum(tr("Mark-up of %1, line by line").arg(percentText(job.quote.mark_up_thousandths)), Sum::mark_up);
    }
    sum(tr("Materials"), Sum::materials);
    sum(tr("Labour"), Sum::labour);
    sum(tr("Travel, consumables, disposal"), Sum::other);
    flow.line(flow.right() - 90, flow.right(), flow.y(), drawing::thin_mm);
    flow.down(0.8);
    sum(tr("Subtotal"), Sum::subtotal);
    sum(tr("Tax, %1").arg(percentText(job.quote.tax_thousandths)), Sum::tax);
    flow.line(flow.right() - 90, flow.right(), flow.y(), drawing::edge_mm);
    flow.down(0.8);
    const bool complete = estimate.status == EstimateStatus::complete;
    sum(complete ? tr("Total") : tr("Total of what is priced, incomplete"), Sum::total, Weight::strong);
    flow.line(flow.right() - 90, flow.right(), flow.y(), drawing::thick_mm);
}

QString alternatePower(const Alternate& other, UnitSystem units)
{
    return other.power_W ? inWords(*other.power_W, Unit::watt, units) : tr("power not entered");
}

} // namespace

void layEstimate(Flow& flow, const Job& job)
{
    if (job.work.estimate.status == EstimateStatus::refused) {
        flow.paragraph(words(job.work.estimate.message), heading_mm, Weight::strong);
        return;
    }
    FlowTable table(flow, columnsOf(job));
    table.head();
    layLines(table, job, LineGroup::materials, tr("Materials"));
    layLines(table, job, LineGroup::labour, tr("Labour"));
    layLines(table, job, LineGroup::other, tr("Other"));
    laySums(flow, job);
    if (job.kind == Kind::internal) {
        const std::string& name = job.quote.prices.name;
        flow.down(2);
        flow.paragraph(
            tr("Price list: %1%2. Each line is rounded half away from zero before lines are added.")
                .arg(name.empty() ? tr("none loaded") : words(name),
                     job.quote.prices.date.empty() ? QString()
                                                   : tr(", of %1").arg(words(job.quote.prices.date))),
            small_mm);
        return;
    }
    if (job.quote.validity_days > 0) {
        flow.down(3);
        flow.paragraph(tr("This estimate holds for %1 days from its date.").arg(job.quote.validity_days));
    }
    if (!job.quote.exclusions.empty()) {
        flow.heading(tr("Not included"));
        flow.paragraph(words(job.quote.exclusions));
    }
}

void layMissing(Flow& flow, const Job& job)
{
    const std::vector<std::string>& missing = job.work.estimate.missing;
    if (missing.empty())
        return;
    flow.heading(tr("Not in the total"));
    for (const std::string& what : missing)
        flow.paragraph(QStringLiteral("▲ ") + words(what));
}

void layAlternates(Flow& flow, const Job& job)
{
    if (job.work.others.empty())
        return;
    flow.heading(tr("Other heaters, the rest of the job the same"));
    std::vector<FlowTable::Column> columns{{QString(), 0, Anchor::left},
                                           {tr("Materials"), 30, Anchor::right}};
    if (job.kind == Kind::internal)
        columns.push_back({tr("Mark-up"), 28, Anchor::right});
    columns.push_back({tr("Subtotal"), 30, Anchor::right});
    columns.push_back({tr("Total with tax"), 34, Anchor::right});
    FlowTable table(flow, columns);
    table.head();
    const auto row = [&](const QString& name, const Estimate& estimate) {
        QStringList cells{name, sumText(estimate, Sum::materials, job.quote)};
        if (job.kind == Kind::internal)
            cells << sumText(estimate, Sum::mark_up, job.quote);
        cells << sumText(estimate, Sum::subtotal, job.quote) << sumText(estimate, Sum::total, job.quote);
        if (estimate.status == EstimateStatus::refused)
            cells = {name, words(estimate.message)};
        table.row(cells);
    };
    row(tr("As drawn"), job.work.estimate);
    for (std::size_t i = 0; i < job.work.others.size(); ++i) {
        const Alternate& other = job.quote.alternates[i];
        row(tr("%1, %2").arg(words(other.name), alternatePower(other, job.units)), job.work.others[i]);
    }
    // What the drawn one lacks is said before.
    const std::vector<std::string>& drawn = job.work.estimate.missing;
    for (std::size_t i = 0; i < job.work.others.size(); ++i)
        for (const std::string& missing : job.work.others[i].missing)
            if (std::find(drawn.begin(), drawn.end(), missing) == drawn.end())
                flow.paragraph(tr("▲ %1: %2").arg(words(job.quote.alternates[i].name), words(missing)),
                               small_mm);
}

} // namespace siphonwright::paper
