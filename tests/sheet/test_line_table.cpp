#include "tests/sheet/ink_recorder.h"
#include "tests/sheet/papers.h"
#include "tests/sheet/sample_rows.h"

#include "app/drawing/line_table.h"
#include "app/drawing/text.h"
#include "app/paper/sheet_set.h"
#include "app/sheet/lay_out.h"
#include "app/sheet/plan.h"
#include "app/sheet/sheet.h"

#include <QPainter>
#include <QSet>
#include <QTest>

#include <algorithm>
#include <functional>

using namespace siphonwright;
using test::Inked;

namespace {

constexpr double pixels_per_mm = 10;

std::vector<Inked> inkOf(const QSizeF& page_mm, const std::function<void(QPainter&)>& paint)
{
    test::InkRecorder recorder((page_mm * pixels_per_mm).toSize());
    QPainter painter(&recorder);
    painter.scale(pixels_per_mm, pixels_per_mm);
    paint(painter);
    painter.end();
    return recorder.inked();
}

template <class Table>
bool isIn(const Table& table, double value_mm)
{
    return std::any_of(table.begin(), table.end(),
                       [value_mm](double one) { return std::abs(one - value_mm) < 0.002; });
}

/// What is drawn as a stroke of its true width, mm on paper: hoses, their bores and walls, the gap where one
/// crosses another, metal tubes. Each by itself: at a small scale these widths lie among those of lines, and
/// a range would let a wrong line through.
std::vector<double> trueWidths(const Sketch& sketch, const Analysis& analysis, int denominator)
{
    const double n = denominator;
    std::vector<double> found;
    const auto tube = [&](double bore_mm) {
        const double outside = bore_mm + 5;
        found.push_back(outside / n);
        found.push_back((outside - 2 * std::min(drawing::edge_mm * n, outside / 4)) / n);
    };
    for (const ResolvedHose& hose : analysis.layout.hoses) {
        const double outside = hose->outsideDiameter();
        const double wall = hose->hose->wall_mm;
        found.push_back(outside / n);
        found.push_back((outside - 2 * std::min(drawing::medium_mm * n, outside / 5)) / n);
        found.push_back((hose->bore_mm + 2 * std::min(drawing::hairline_mm * n, wall / 2)) / n);
        found.push_back(hose->bore_mm / n);
        constexpr double crossing_gap_mm = 0.6;
        found.push_back((outside + 2 * hose->hose->insulation_mm) / n + 2 * crossing_gap_mm);
        tube(hose->hose->from.bore_mm);
        tube(hose->hose->to.bore_mm);
    }
    for (const Port& port : sketch.ports)
        tube(port.bore_mm.value.value_or(15));
    for (const Heater& heater : sketch.heaters)
        for (const Nozzle* nozzle : {&heater.inlet, &heater.outlet})
            tube(nozzle->bore_mm.value.value_or(15));
    return found;
}

/// Pens and text heights that are in no row of the table.
QStringList strangersIn(const std::vector<Inked>& inked, const std::vector<double>& true_widths)
{
    QStringList strangers;
    for (const Inked& one : inked) {
        const double width_mm = one.width / pixels_per_mm;
        const double capitals_mm = one.capitals / pixels_per_mm;
        if (one.what == Inked::What::stroke && !isIn(drawing::line_widths_mm, width_mm) &&
            !isIn(true_widths, width_mm))
            strangers << QStringLiteral("a line %1 mm wide at %2, %3")
                             .arg(width_mm, 0, 'f', 3)
                             .arg(one.box.center().x() / pixels_per_mm, 0, 'f', 1)
                             .arg(one.box.center().y() / pixels_per_mm, 0, 'f', 1);
        if (one.what == Inked::What::text && !isIn(drawing::text_heights_mm, capitals_mm))
            strangers << QStringLiteral("\"%1\" %2 mm high").arg(one.text).arg(capitals_mm, 0, 'f', 3);
    }
    strangers.removeDuplicates();
    return strangers;
}

/// Every paper, two of them upright; where few are wanted one each way.
std::vector<sheet::Options> papersInTurn()
{
    using test::on;
    const std::vector<sheet::Options> all{
        on(sheet::Paper::a4, QPageLayout::Landscape), on(sheet::Paper::a3, QPageLayout::Portrait),
        on(sheet::Paper::letter, QPageLayout::Portrait), on(sheet::Paper::tabloid, QPageLayout::Landscape)};
    return test::someOf(all, 2);
}

QSet<int> hundredths(const std::vector<Inked>& inked, Inked::What what)
{
    QSet<int> found;
    for (const Inked& one : inked)
        if (one.what == what)
            found << int(
                std::lround((what == Inked::What::text ? one.capitals : one.width) / pixels_per_mm * 100));
    return found;
}

} // namespace

class TestLineTable : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// The series as ISO 128 and ISO 3098 have them: each about 1.4 times the one before.
    void theTableIsOfTheSeries()
    {
        const auto steps = [](const auto& table) {
            for (std::size_t i = 1; i < table.size(); ++i) {
                QVERIFY(table[i] / table[i - 1] > 1.35);
                QVERIFY(table[i] / table[i - 1] < 1.45);
            }
        };
        steps(drawing::line_widths_mm);
        steps(drawing::text_heights_mm);
    }

    void thePagesTakePensAndLetteringFromTheTable_data() { test::addSampleRows(); }

    void thePagesTakePensAndLetteringFromTheTable()
    {
        QFETCH(QString, sample);
        const Sketch sketch = test::sampleNamed(sample);
        const Analysis analysis = proved(sketch);
        QStringList strangers;
        for (sheet::Options options : papersInTurn()) {
            for (const sheet::FurtherPage& page : paper::pagesOf(sketch, analysis, {}, options)) {
                const std::vector<Inked> inked = inkOf(sheet::pageSize(options), page.paint);
                QVERIFY(inked.size() > 100);
                strangers += strangersIn(
                    inked, trueWidths(sketch, analysis, options.laid->sheets.front().plan.denominator));
            }
        }
        const paper::SheetSet all{true, true, true, true, true, true};
        for (const sheet::FurtherPage& page : paper::pagesBehind(sketch, analysis, all, sheet::Paper::a4)) {
            const QSizeF size = page.layout.fullRect(QPageLayout::Millimeter).size();
            const QStringList here = strangersIn(inkOf(size, page.paint), {});
            for (const QString& one : here)
                strangers << page.title + QStringLiteral(": ") + one;
        }
        QVERIFY2(strangers.isEmpty(), qPrintable(strangers.join(QLatin1Char('\n'))));
    }

    /// A line between two rows of the table, and lettering under its least, are seen at every paper's scale.
    void whatIsOffTheTableIsSeenOnEveryPaper()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("generator-two-heaters.siphon"));
        const Analysis analysis = analyse(sketch);
        for (const sheet::Options& options : papersInTurn()) {
            const int scale = sheet::planOf(sketch, analysis, options).denominator;
            for (const double wrong_mm : {0.15, 0.22, 0.3, 0.42, 0.6, 0.85}) {
                const std::vector<Inked> inked = inkOf(sheet::pageSize(options), [&](QPainter& painter) {
                    painter.setPen(QPen(Qt::black, wrong_mm));
                    painter.drawLine(QPointF(30, 30), QPointF(60, 30));
                    drawing::paintWeightedText(painter, {30, 40}, QStringLiteral("small"),
                                               drawing::Anchor::left, Qt::black, 2.2,
                                               drawing::Weight::regular);
                });
                QCOMPARE(strangersIn(inked, trueWidths(sketch, analysis, scale)).size(), 2);
            }
        }
    }

    /// The recorder would see others, too: the page has thin and thick lines, small and large lettering.
    void aPageUsesMoreThanOneRowOfTheTable()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("sound-bus.siphon"));
        const Analysis analysis = analyse(sketch);
        const sheet::Options options;
        const std::vector<Inked> inked = inkOf(sheet::pageSize(options), [&](QPainter& painter) {
            sheet::paintPage(painter, sketch, analysis, options);
        });
        QVERIFY(hundredths(inked, Inked::What::stroke).contains({13, 18, 25, 35, 70}));
        QVERIFY(hundredths(inked, Inked::What::text).contains({180, 250, 350}));
    }
};

QTEST_MAIN(TestLineTable)
#include "test_line_table.moc"
