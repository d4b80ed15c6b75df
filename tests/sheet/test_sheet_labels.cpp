#include "tests/random_runs.h"
#include "tests/sheet/ink_recorder.h"
#include "tests/sheet/leader_lines.h"
#include "tests/sheet/names_wanted.h"
#include "tests/sheet/sample_files.h"

#include "app/language/in_words.h"
#include "app/paper/sheet_set.h"
#include "app/sheet/lay_out.h"
#include "app/sheet/sheet.h"

#include <QPainter>
#include <QTest>

#include <memory>

using namespace siphonwright;
using test::Inked;

namespace {

constexpr double recorded_per_mm = 10;

/// A stroke as broad as this is no line but a hose or a tube: nothing is written on it, not even on ground of
/// its own.
constexpr double broad_mm = 0.8;

bool meet(const Inked& text, const Inked& other)
{
    return text.box.intersects(other.box) && text.area.intersects(other.area);
}

/// What is wrong with a text on the page: on another text, on a line, under a fill. Lines that its own ground
/// hides do not count.
QStringList faultsOf(const std::vector<Inked>& inked, std::size_t index)
{
    const Inked& text = inked[index];
    std::size_t ground = 0;
    for (std::size_t i = 0; i < index; ++i)
        if (inked[i].what == Inked::What::fill && inked[i].box.contains(text.box) &&
            inked[i].area.containsPoint(text.box.center(), Qt::OddEvenFill) &&
            inked[i].area.intersected(text.area).boundingRect().width() > 0.98 * text.box.width())
            ground = i;
    QStringList faults;
    for (std::size_t i = 0; i < inked.size(); ++i) {
        if (i == index || !meet(text, inked[i]))
            continue;
        const QString where = QStringLiteral("%1 at %2, %3 mm")
                                  .arg(text.text)
                                  .arg(text.box.center().x() / recorded_per_mm, 0, 'f', 1)
                                  .arg(text.box.center().y() / recorded_per_mm, 0, 'f', 1);
        const bool over = i > ground;
        if (inked[i].what == Inked::What::text)
            faults << where + QStringLiteral(" lies on ") + inked[i].text;
        else if (inked[i].what == Inked::What::fill && i > index)
            faults << where + QStringLiteral(" is hidden");
        else if (inked[i].what == Inked::What::stroke &&
                 (over || inked[i].width > broad_mm * recorded_per_mm))
            faults << where + QStringLiteral(" is on a line %1 mm wide, from %2, %3 to %4, %5")
                                  .arg(inked[i].width / recorded_per_mm, 0, 'f', 2)
                                  .arg(inked[i].box.left() / recorded_per_mm, 0, 'f', 1)
                                  .arg(inked[i].box.top() / recorded_per_mm, 0, 'f', 1)
                                  .arg(inked[i].box.right() / recorded_per_mm, 0, 'f', 1)
                                  .arg(inked[i].box.bottom() / recorded_per_mm, 0, 'f', 1);
    }
    return faults;
}

} // namespace

class TestSheetLabels : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noTextLiesOnATextOrALine_data()
    {
        QTest::addColumn<QString>("sample");
        QTest::addColumn<int>("paper");
        QTest::addColumn<bool>("landscape");
        const char* const papers[] = {"A4", "A3", "Letter", "Tabloid"};
        int samples = 0;
        for (const QString& name : test::sampleNames()) {
            const int own_paper = samples++ % 4;
            for (int paper = 0; paper < 4; ++paper) {
                if (test::fewRuns() && paper != own_paper)
                    continue;
                for (const bool landscape : {true, false})
                    QTest::addRow("%s on %s %s", qPrintable(name), papers[paper],
                                  landscape ? "landscape" : "portrait")
                        << name << paper << landscape;
            }
        }
    }

    void noTextLiesOnATextOrALine()
    {
        QFETCH(QString, sample);
        QFETCH(int, paper);
        QFETCH(bool, landscape);
        if (sample != last_) {
            last_ = sample;
            sketch_ = test::sampleNamed(sample);
            analysis_ = proved(sketch_);
        }
        sheet::Options options;
        options.paper = static_cast<sheet::Paper>(paper);
        options.orientation = landscape ? QPageLayout::Landscape : QPageLayout::Portrait;
        const std::vector<sheet::FurtherPage> pages = paper::pagesOf(sketch_, analysis_, {}, options);
        QStringList faults;
        int texts = 0;
        for (auto page = pages.rbegin(); page != pages.rend(); ++page) { // the drawing last: it is looked at
            recorded_ =
                std::make_unique<test::InkRecorder>((sheet::pageSize(options) * recorded_per_mm).toSize());
            QPainter painter(recorded_.get());
            painter.scale(recorded_per_mm, recorded_per_mm);
            page->paint(painter);
            painter.end();
            const std::vector<Inked>& inked = recorded_->inked();
            for (std::size_t i = 0; i < inked.size(); ++i) {
                if (inked[i].what != Inked::What::text)
                    continue;
                ++texts;
                faults += faultsOf(inked, i);
            }
        }
        const std::vector<Inked>& inked = recorded_->inked();
        QVERIFY(texts > 40);
        if (analysis_.proof)
            for (const PocketFound& pocket : analysis_.proof->filling.pockets) {
                const LoopRun* run = analysis_.proof->running.loopOf(pocket.heater);
                if (run && run->circulation.flow_kg_per_s != 0 &&
                    std::any_of(inked.begin(), inked.end(), [](const Inked& one) {
                        return one.text.endsWith(QStringLiteral("locks the loop"));
                    }))
                    faults << QStringLiteral("air locks a loop that runs");
            }
        const sheet::Plan& plan = options.laid->sheets.front().plan;
        const QTransform to_device = QTransform::fromScale(recorded_per_mm, recorded_per_mm);
        const QStringList lost =
            test::namesLost(test::namesWanted(sketch_, analysis_), inked, to_device.mapRect(plan.view),
                            to_device.mapRect(plan.key.box));
        faults += lost;
        const std::vector<QLineF> leaders = test::leadersIn(inked, recorded_per_mm);
        QVERIFY(leaders.size() > 1); // the recorder sees them
        faults += test::leaderCrossings(leaders, recorded_per_mm);
        std::vector<test::NamedPoint> ports;
        for (const Port& port : sketch_.ports)
            ports.push_back(
                {inWords(port.name),
                 (plan.origin + drawing::toPage(port.position) / plan.denominator) * recorded_per_mm});
        faults += test::misleadingNames(ports, inked, leaders, recorded_per_mm);
        faults.removeDuplicates();
        QVERIFY2(faults.isEmpty(), qPrintable(faults.join(QStringLiteral("\n"))));
    }

private:
    std::unique_ptr<test::InkRecorder> recorded_;
    QString last_;
    Sketch sketch_;
    Analysis analysis_;
};

QTEST_MAIN(TestSheetLabels)
#include "test_sheet_labels.moc"
