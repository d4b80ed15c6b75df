#include "app/document/document.h"
#include "app/headless/commands.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/paperwork/money.h"
#include "core/paperwork/parts_csv.h"
#include "core/paperwork/price_list.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QTextStream>

#include <algorithm>
#include <array>

/// What a drawn job takes: parts, cuts, materials at list price, and what of it is not known.
namespace siphonwright::headless {

namespace {

QString q(std::string_view text)
{
    return inWords(text);
}

/// The reason, where the list could not be taken.
QString takePricesFrom(const QString& path, Sketch& sketch)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return file.errorString();
    const auto read = readPriceList(file.read(qint64(largest_csv_bytes) + 1).toStdString());
    if (const auto* problem = std::get_if<CsvProblem>(&read))
        return q(problem->text());
    return q(
        takePrices(sketch, std::get<PriceListFile>(read), QFileInfo(path).completeBaseName().toStdString()));
}

QString writeCsv(const QString& path, const std::string& text)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) ||
        file.write(text.data(), qint64(text.size())) != qint64(text.size()) || !file.commit())
        return tr("%1 could not be written: %2").arg(path, file.errorString());
    return {};
}

using Cells = std::array<QString, 5>; ///< number, what, quantity, price, amount

class PartsWords {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::headless)

public:
    PartsWords(const Sketch& sketch, QTextStream& out)
        : sketch_(sketch),
          units_(unitsOf(sketch)),
          parts_(partsOf(sketch, resolve(sketch, plumbOf(sketch)))),
          estimate_(estimateOf(sketch, parts_)),
          out_(out)
    {}

    void write() const
    {
        if (parts_.rows.empty()) {
            out_ << tr("  Nothing is drawn that takes parts.") << '\n';
            return;
        }
        writeTable();
        for (const Message& left_out : parts_.not_counted)
            out_ << "  " << inWords(left_out, units_) << '\n';
        for (const BorePlan& plan : cutPlansOf(sketch_, parts_))
            writePlan(plan);
        writeSum();
    }
    const PartsList& parts() const { return parts_; }

private:
    QString money(std::int64_t minor) const { return q(moneyText(minor, quoteOf(sketch_).currency)); }
    QString length(std::int64_t hundredths) const
    {
        return inWords(double(hundredths) / double(hundredths_per_mm), Unit::mm, units_);
    }

    Cells cellsOf(const PartRow& row) const
    {
        QString what = q(nameOf(row.kind));
        if (!row.size.pattern.empty())
            what += QStringLiteral(", ") + inWords(row.size, units_);
        if (!row.missing.empty())
            what += QStringLiteral(" (%1)").arg(q(row.missing));
        Cells cells{QString::number(row.number), what, QStringLiteral("0"), {}, {}};
        for (const EstimateLine& line : estimate_.lines) {
            if (line.number != row.number)
                continue;
            cells[2] = line.thousandths ? q(decimalText(*line.thousandths, 3, Grouping::none, true)) +
                                              QLatin1Char(' ') + q(line.unit)
                                        : tr("not known");
            cells[3] = line.list_minor ? money(*line.list_minor) : QStringLiteral("–");
            cells[4] = line.list_amount_minor ? money(*line.list_amount_minor) : tr("not priced");
        }
        return cells;
    }

    void writeTable() const
    {
        std::vector<Cells> table{{tr("Item"), tr("Part"), tr("Quantity"), tr("List price"), tr("Amount")}};
        for (const PartRow& row : parts_.rows)
            table.push_back(cellsOf(row));
        std::array<qsizetype, 5> widths{};
        for (const Cells& cells : table)
            for (std::size_t i = 0; i < cells.size(); ++i)
                widths[i] = std::max(widths[i], cells[i].size());
        for (const Cells& cells : table)
            out_ << QStringLiteral("  %1  %2  %3  %4  %5\n")
                        .arg(cells[0], int(widths[0]))
                        .arg(cells[1], -int(widths[1]))
                        .arg(cells[2], int(widths[2]))
                        .arg(cells[3], int(widths[3]))
                        .arg(cells[4], int(widths[4]));
    }

    void writePlan(const BorePlan& bore) const
    {
        const QString name = bore.bore_mm ? tr("Hose of %1").arg(inWords(*bore.bore_mm, Unit::mm, units_))
                                          : tr("Hose without a bore");
        if (!bore.plan.planned()) {
            out_ << tr("  %1: not planned. %2").arg(name, q(bore.plan.message)) << '\n';
            return;
        }
        out_ << (bore.plan.status == CutStatus::least
                     ? tr("  %1: %2 from rolls of %3, the least there is; %4 left over.")
                     : tr("  %1: %2 from rolls of %3; %4 left over. No plan needs less than %5."))
                    .arg(name, length(bore.plan.cut), length(bore.plan.bought), length(bore.plan.waste()))
                    .arg(length(bore.plan.least_possible))
             << '\n';
    }

    void writeSum() const
    {
        if (estimate_.status == EstimateStatus::refused) {
            out_ << "  " << q(estimate_.message) << '\n';
            return;
        }
        const auto unpriced =
            std::count_if(estimate_.lines.begin(), estimate_.lines.end(), [](const EstimateLine& line) {
                return line.group == LineGroup::materials && !line.amount_minor;
            });
        const QString sum = money(estimate_.list_minor);
        out_ << (unpriced == 0 ? tr("  Materials at list price: %1.").arg(sum)
                 : unpriced == 1
                     ? tr("  Materials at list price: %1, incomplete: one item is not priced.").arg(sum)
                     : tr("  Materials at list price: %1, incomplete: %2 items are not priced.")
                           .arg(sum)
                           .arg(unpriced))
             << '\n';
    }

    const Sketch& sketch_;
    UnitSystem units_;
    PartsList parts_;
    Estimate estimate_;
    QTextStream& out_;
};

} // namespace

int parts(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command =
        understood(arguments,
                   {"parts",
                    {},
                    {{"--prices", QT_TRANSLATE_NOOP("siphonwright::headless", "the name of a price list")},
                     {"--csv", QT_TRANSLATE_NOOP("siphonwright::headless", "the name of a file to write")}}},
                   err);
    const std::optional<Sketch> read = command ? opened(command->files[0], err) : std::nullopt;
    if (!read)
        return not_understood;
    const QString& name = command->files[0];
    const std::optional<QString> prices = command->value("--prices");
    const std::optional<QString> csv = command->value("--csv");
    Sketch sketch = *read;
    if (prices) {
        const QString problem = takePricesFrom(*prices, sketch);
        if (!problem.isEmpty()) {
            err << *prices << ": " << problem << '\n';
            return not_understood;
        }
    }
    const PartsWords words(sketch, out);
    if (csv) {
        const QString problem = writeCsv(*csv, csvOf(words.parts(), sketch, unitsOf(sketch)));
        if (!problem.isEmpty()) {
            err << name << ": " << problem << '\n';
            return not_understood;
        }
    }
    const std::int64_t vehicles = quoteOf(sketch).vehicles;
    out << name << (vehicles == 1 ? QString() : tr(", for %1 vehicles").arg(vehicles)) << '\n';
    words.write();
    if (csv)
        out << tr("  %1 written.").arg(*csv) << '\n';
    return nothing_stops;
}

} // namespace siphonwright::headless
