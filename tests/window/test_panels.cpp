#include "tests/near.h"

#include "app/panels/details_panel.h"
#include "app/panels/findings_model.h"
#include "app/panels/findings_panel.h"
#include "app/panels/profile_panel.h"
#include "app/panels/quantity_edit.h"

#include <QComboBox>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSignalSpy>

using namespace siphonwright;

/// The panels on a document of their own, with the yard's samples.
class TestPanels : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void typing_a_wall_changes_the_hose_and_undo_restores_it();
    void a_typed_fact_becomes_measured();
    void what_is_not_understood_leaves_the_sketch_alone();
    void every_part_of_every_sample_has_a_form();
    void a_hose_is_connected_from_the_form();
    void findings_follow_an_edit();
    void choosing_a_finding_selects_its_part();
    void findings_read_in_the_chosen_units();
    void what_differs_by_less_than_a_sixteenth_is_told_in_mm_too();
    void a_chosen_row_leads_to_its_rule();
    void pointing_at_the_profile_points_along_the_hose();
    void heights_in_the_profile_are_exaggerated_as_chosen();

private:
    panels::QuantityEdit* line(const QWidget& panel, const QString& label) const
    {
        return panel.findChild<panels::QuantityEdit*>(label);
    }
    void openSample(const char* name)
    {
        const QString path =
            QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name));
        QCOMPARE(document_->open(path), QStringList());
        selection_->select({});
        selection_->selectFinding(-1);
    }
    void type(panels::QuantityEdit* edit, const char* text)
    {
        edit->selectAll();
        QTest::keyClicks(edit, QLatin1String(text));
        QTest::keyClick(edit, Qt::Key_Return);
    }

    std::unique_ptr<Document> document_;
    std::unique_ptr<Selection> selection_;
};

void TestPanels::init()
{
    document_ = std::make_unique<Document>();
    selection_ = std::make_unique<Selection>();
}

void TestPanels::typing_a_wall_changes_the_hose_and_undo_restores_it()
{
    openSample("sound-bus");
    const Sketch before = document_->sketch();
    const Id hose = before.hoses.front()->id;
    panels::DetailsPanel panel(*document_, *selection_);
    selection_->select({PartKind::hose, hose, 0});
    auto* wall = line(panel, QStringLiteral("Wall"));
    QVERIFY(wall);
    type(wall, "1/4 in");
    VERIFY_NEAR(document_->sketch().hose(hose)->wall_mm, 6.35, 1e-9); // 25.4 / 4
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
    VERIFY_NEAR(*line(panel, QStringLiteral("Wall"))->value(), before.hose(hose)->wall_mm, 1e-12);
}

void TestPanels::a_typed_fact_becomes_measured()
{
    openSample("sound-bus");
    document_->apply(QStringLiteral("assume"), [](Sketch& sketch) { sketch.site.wind_m_per_s = {}; });
    panels::DetailsPanel panel(*document_, *selection_);
    type(line(panel, QStringLiteral("Wind")), "3 m/s");
    QCOMPARE(document_->sketch().site.wind_m_per_s.value, std::optional(3.0));
    QCOMPARE(document_->sketch().site.wind_m_per_s.source, Source::measured);
}

void TestPanels::what_is_not_understood_leaves_the_sketch_alone()
{
    openSample("sound-bus");
    const Sketch before = document_->sketch();
    panels::DetailsPanel panel(*document_, *selection_);
    selection_->select({PartKind::hose, before.hoses.front()->id, 0});
    type(line(panel, QStringLiteral("Wall")), "thick");
    QCOMPARE(document_->sketch(), before);
    QVERIFY(!line(panel, QStringLiteral("Wall"))->problem().isEmpty());
}

void TestPanels::every_part_of_every_sample_has_a_form()
{
    panels::DetailsPanel panel(*document_, *selection_);
    const auto* title = panel.findChild<QLabel*>(QStringLiteral("details-title"));
    const QString whole = title->text();
    for (const char* name : {"sound-bus", "vee-crossing", "generator-two-heaters"}) {
        openSample(name);
        const Sketch& sketch = document_->sketch();
        std::vector<PartRef> parts = {
            {PartKind::engine, {}, 0}, {PartKind::jacket, {}, 0}, {PartKind::tank, {}, 0}};
        for (const Port& port : sketch.ports)
            parts.push_back({PartKind::port, port.id, 0});
        for (const Heater& heater : sketch.heaters)
            parts.push_back({PartKind::heater, heater.id, 0});
        for (const Shared<Hose>& hose : sketch.hoses) {
            parts.push_back({PartKind::hose, hose->id, 0});
            parts.push_back({PartKind::hose_end, hose->id, 1});
            if (!hose->points.empty())
                parts.push_back({PartKind::hose_point, hose->id, 0});
        }
        for (const PartRef& part : parts) {
            selection_->select(part);
            QVERIFY(title->text() != whole);
            QVERIFY(!panel.findChildren<panels::QuantityEdit*>().isEmpty());
        }
    }
}

void TestPanels::a_hose_is_connected_from_the_form()
{
    openSample("sound-bus");
    const Sketch before = document_->sketch();
    const Id hose = before.hoses.front()->id;
    panels::DetailsPanel panel(*document_, *selection_);
    selection_->select({PartKind::hose_end, hose, 0});
    auto* from = panel.findChild<QComboBox*>(QStringLiteral("From"));
    QVERIFY(from);
    QVERIFY(from->currentIndex() > 0);
    Q_EMIT from->activated(0);
    QVERIFY(!document_->sketch().hose(hose)->from.connected());
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
}

void TestPanels::findings_follow_an_edit()
{
    openSample("sound-bus");
    panels::FindingsPanel panel(*document_, *selection_);
    QVERIFY(panel.summary().startsWith(QStringLiteral("Nothing found that stops the job")));
    // The supply's first end let go: an open end stops the job.
    document_->apply(QStringLiteral("let go"), [](Sketch& sketch) {
        sketch.hoses.front().edit([](Hose& hose) { hose.from.port.clear(); });
    });
    QVERIFY(!panel.summary().startsWith(QStringLiteral("Nothing found that stops the job")));
    document_->undoStack().undo();
    QVERIFY(panel.summary().startsWith(QStringLiteral("Nothing found that stops the job")));
}

void TestPanels::choosing_a_finding_selects_its_part()
{
    openSample("above-level");
    panels::FindingsPanel panel(*document_, *selection_);
    panel.resize(320, 400);
    panel.show();
    auto* list = panel.findChild<QListView*>(QStringLiteral("findings-list"));
    const QSignalSpy chosen(&panel, &panels::FindingsPanel::findingChosen);
    list->setFocus();
    list->setCurrentIndex(list->model()->index(0, 0));
    QCOMPARE(selection_->finding(), 0);
    QCOMPARE(selection_->part(), document_->analysis().findings.front().part);
    QCOMPARE(chosen.count(), 1);
    QTest::keyClick(list, Qt::Key_Down);
    QCOMPARE(selection_->finding(), 1);
}

void TestPanels::findings_read_in_the_chosen_units()
{
    openSample("supply-hump");
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::metric; });
    const panels::FindingsModel model(*document_);
    const QString metric = model.data(model.index(0), panels::FindingsModel::figures_role).toString();
    QVERIFY2(metric.contains(QStringLiteral(" mm")), qPrintable(metric));
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::inch; });
    const QString inch = model.data(model.index(0), panels::FindingsModel::figures_role).toString();
    QVERIFY2(!inch.contains(QStringLiteral(" mm")), qPrintable(inch));
}

void TestPanels::what_differs_by_less_than_a_sixteenth_is_told_in_mm_too()
{
    // The heater's top 0.1 to 0.3 mm too near the jacket: both are 6 in.
    openSample("sound-bus");
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::inch; });
    const panels::FindingsModel model(*document_);
    QString figures;
    for (int step = 0; step < 500 && !figures.contains(QStringLiteral("limit 6 in")); ++step) {
        document_->apply(QStringLiteral("raise"), [](Sketch& s) { s.heaters[0].position.z += 0.2; });
        figures = model.data(model.index(0), panels::FindingsModel::figures_role).toString();
    }
    const QRegularExpression both(
        QStringLiteral("^measured 6 in \\(152\\.[1-3] mm\\), limit 6 in \\(152\\.4 mm\\)$"));
    QVERIFY2(both.match(figures).hasMatch(), qPrintable(figures));
}

void TestPanels::a_chosen_row_leads_to_its_rule()
{
    openSample("above-level");
    panels::FindingsPanel panel(*document_, *selection_);
    panel.resize(320, 400);
    panel.show();
    auto* list = panel.findChild<QListView*>(QStringLiteral("findings-list"));
    auto* link = panel.findChild<QPushButton*>(QStringLiteral("about-rule-link"));
    QVERIFY(!link->isVisible());
    const QSignalSpy wanted(&panel, &panels::FindingsPanel::ruleWanted);
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::mouseClick(link, Qt::LeftButton);
    QCOMPARE(wanted.count(), 1);
    QCOMPARE(wanted.at(0).at(0).toString(),
             QString::fromStdString(document_->analysis().findings.front().rule));
}

void TestPanels::pointing_at_the_profile_points_along_the_hose()
{
    openSample("sound-bus");
    panels::ProfilePanel panel(*document_, *selection_);
    panel.resize(800, 140);
    panel.show();
    const Id hose = document_->sketch().hoses.front()->id;
    const auto at = panel.positionOf(hose, 200);
    QVERIFY(at);
    QTest::mouseMove(&panel, at->toPoint());
    QTRY_COMPARE(selection_->hoverHose(), hose);
    // A pixel of an 800 pixel widget is a few millimetres.
    VERIFY_NEAR(selection_->hoverAlong(), 200, 5);
}

void TestPanels::heights_in_the_profile_are_exaggerated_as_chosen()
{
    openSample("supply-hump");
    panels::ProfilePanel panel(*document_, *selection_);
    panel.resize(900, 160);
    panel.show();
    const ResolvedHose& hose = document_->analysis().layout.hoses.front();
    const double far_mm = hose->path.line.length();
    const auto heightAt = [&](double along_mm) {
        return heightsAt(hose->path, document_->analysis().layout.plumb, along_mm).centre_mm;
    };
    for (const int times : {1, 2, 5, 10}) {
        panel.setExaggeration(times);
        QCOMPARE(panel.exaggeration(), times);
        const QPointF a = *panel.positionOf(hose.id(), 0);
        const QPointF b = *panel.positionOf(hose.id(), far_mm);
        const double along = (b.x() - a.x()) / far_mm;
        const double up = (a.y() - b.y()) / (heightAt(far_mm) - heightAt(0));
        VERIFY_NEAR(up / along, times, 1e-9);
        QVERIFY(times == 1 || panel.scaleWords().contains(QString::number(times)));
    }
    QVERIFY(panel.findChild<QScrollBar*>()->isVisible());
    panel.setExaggeration(3); // none of the choices
    QCOMPARE(panel.exaggeration(), 10);
    panel.setExaggeration(0);
    QVERIFY(!panel.findChild<QScrollBar*>()->isVisible());
}

QTEST_MAIN(TestPanels)
#include "test_panels.moc"
