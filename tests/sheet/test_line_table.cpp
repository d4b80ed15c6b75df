#include "tests/sheet/ink_recorder.h"
#include "tests/sheet/sample_rows.h"

#include "app/drawing/line_table.h"
#include "app/paper/sheet_set.h"
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

/// What is drawn as a stroke of its true width: from the narrowest bore to the broadest hose with insulation
/// and the gap where it crosses another.
struct TrueWidths {
    double least_mm = 1e9;
    double most_mm = 0;
};

TrueWidths trueWidths(const Sketch& sketch, int denominator)
{
    TrueWidths found;
    const auto bore = [&](double bore_mm, double wall_mm) {
        found.least_mm = std::min(found.least_mm, bore_mm / denominator);
        found.most_mm = std::max(found.most_mm, (bore_mm + 2 * wall_mm) / denominator + 2);
    };
    // Of a metal tube the inside, too: at least half of what is drawn round it, which is 5 mm over its bore.
    const auto tube = [&](double bore_mm) {
        bore(bore_mm, 4);
        found.least_mm = std::min(found.least_mm, (bore_mm + 5) / 2 / denominator);
    };
    for (const Shared<Hose>& hose : sketch.hoses) {
        bore(hose->bore_mm.value.value_or(19.05), hose->wall_mm + hose->insulation_mm);
        tube(hose->from.bore_mm);
        tube(hose->to.bore_mm);
    }
    for (const Port& port : sketch.ports)
        tube(port.bore_mm.value.value_or(15));
    for (const Heater& heater : sketch.heaters)
        for (const Nozzle* nozzle : {&heater.inlet, &heater.outlet})
            tube(nozzle->bore_mm.value.value_or(15));
    return found;
}

/// Pens and text heights that are in no row of the table.
QStringList strangersIn(const std::vector<Inked>& inked, const TrueWidths& true_widths)
{
    QStringList strangers;
    for (const Inked& one : inked) {
        const double width_mm = one.width / pixels_per_mm;
        const double capitals_mm = one.capitals / pixels_per_mm;
        const bool a_hose = width_mm >= true_widths.least_mm && width_mm <= true_widths.most_mm;
        if (one.what == Inked::What::stroke && !isIn(drawing::line_widths_mm, width_mm) && !a_hose)
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
        for (const sheet::Paper paper : {sheet::Paper::a4, sheet::Paper::a3}) {
            sheet::Options options;
            options.paper = paper;
            const std::vector<Inked> inked = inkOf(sheet::pageSize(options), [&](QPainter& painter) {
                sheet::paintPage(painter, sketch, analysis, options);
            });
            QVERIFY(inked.size() > 100);
            strangers +=
                strangersIn(inked, trueWidths(sketch, sheet::planOf(sketch, analysis, options).denominator));
        }
        const paper::SheetSet all{true, true, true, true, true, true};
        for (const sheet::FurtherPage& page : paper::pagesBehind(sketch, analysis, all, sheet::Paper::a4)) {
            const QSizeF size = page.layout.fullRect(QPageLayout::Millimeter).size();
            const QStringList here = strangersIn(inkOf(size, page.paint), {1e9, 0});
            for (const QString& one : here)
                strangers << page.title + QStringLiteral(": ") + one;
        }
        QVERIFY2(strangers.isEmpty(), qPrintable(strangers.join(QLatin1Char('\n'))));
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
