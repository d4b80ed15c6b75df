#include "tests/near.h"
#include "tests/sheet/text_recorder.h"

#include "app/headless/headless.h"
#include "app/panels/quantity_edit.h"
#include "app/survey/blank_form.h"
#include "app/survey/letter_grid.h"
#include "app/survey/survey_window.h"

#include "core/sketch/survey_letters.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using namespace siphonwright::survey;

/// The survey in its window, and the blank form for it.
class TestSurvey : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void a_typed_measurement_is_kept_and_undone();
    void an_emptied_survey_is_gone();
    void a_height_from_the_floor_is_kept_as_such();
    void a_slope_in_percent_is_kept_in_degrees();
    void what_was_not_measured_says_so();
    void drawing_the_engine_is_one_undo();
    void the_typed_and_the_drawn_stand_in_the_same_terms();
    void the_form_has_every_letter_and_nothing_runs_over_data();
    void the_form_has_every_letter_and_nothing_runs_over();
    void the_command_line_writes_the_form();

private:
    void type(const char* name, const char* words)
    {
        auto* edit = window_->findChild<panels::QuantityEdit*>(QString::fromLatin1(name));
        QVERIFY2(edit, name);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QLatin1String(words));
        QTest::keyClick(edit, Qt::Key_Return);
    }
    QString drawn(char letter) const
    {
        return window_->findChild<QLabel*>(QStringLiteral("survey-drawn-%1").arg(QLatin1Char(letter)))
            ->text();
    }

    std::unique_ptr<Document> document_;
    std::unique_ptr<SurveyWindow> window_;
};

void TestSurvey::init()
{
    window_.reset();
    document_ = std::make_unique<Document>();
    window_ = std::make_unique<SurveyWindow>(*document_);
    window_->show();
}

void TestSurvey::a_typed_measurement_is_kept_and_undone()
{
    type("survey-A-height", "310 mm");
    type("survey-A-station", "4 in");
    const std::optional<SurveyPoint> point = surveyPoint(*document_->sketch().survey, 'A');
    QVERIFY(point.has_value());
    VERIFY_NEAR(*point->height_mm, 310, 1e-9);
    VERIFY_NEAR(*point->along_mm, 101.6, 1e-9); // 4 in
    QVERIFY(point->from == SurveyFrom::frame_rail);
    document_->undoStack().undo();
    QVERIFY(!surveyPoint(*document_->sketch().survey, 'A')->along_mm);
    document_->undoStack().undo();
    QVERIFY(!document_->sketch().survey);
}

void TestSurvey::an_emptied_survey_is_gone()
{
    type("survey-K-length", "900");
    QVERIFY(document_->sketch().survey.has_value());
    type("survey-K-length", "");
    auto* edit = window_->findChild<panels::QuantityEdit*>(QStringLiteral("survey-K-length"));
    edit->selectAll();
    QTest::keyClick(edit, Qt::Key_Delete);
    QTest::keyClick(edit, Qt::Key_Return);
    QVERIFY(!document_->sketch().survey);
}

void TestSurvey::a_height_from_the_floor_is_kept_as_such()
{
    type("survey-F-height", "1650");
    auto* from = window_->findChild<QComboBox*>(QStringLiteral("survey-F-from"));
    from->setFocus();
    QTest::keyClick(from, Qt::Key_Down);
    QTest::keyClick(from, Qt::Key_Return);
    if (surveyPoint(*document_->sketch().survey, 'F')->from != SurveyFrom::floor)
        Q_EMIT from->activated(1);
    const std::optional<SurveyPoint> point = surveyPoint(*document_->sketch().survey, 'F');
    QVERIFY(point->from == SurveyFrom::floor);
    VERIFY_NEAR(*point->height_mm, 1650, 1e-9);
}

void TestSurvey::a_slope_in_percent_is_kept_in_degrees()
{
    window_->findChild<QComboBox*>(QStringLiteral("survey-P-unit"))->setCurrentIndex(1);
    type("survey-P-percent", "2");
    // atan(0.02) = 1.145763 deg.
    VERIFY_NEAR(*document_->sketch().survey->floor_slope_deg, 1.145763, 1e-6);
}

void TestSurvey::what_was_not_measured_says_so()
{
    QVERIFY(drawn('B').endsWith(QStringLiteral("not measured")));
    type("survey-B-height", "620");
    QVERIFY(!drawn('B').contains(QStringLiteral("not measured")));
    const QString report = window_->findChild<QLabel*>(QStringLiteral("survey-report"))->text();
    QVERIFY(report.contains(QStringLiteral("B, Jacket, highest point: station not measured.")));
    QVERIFY(report.contains(QStringLiteral("the floor is taken as level")));
}

void TestSurvey::drawing_the_engine_is_one_undo()
{
    auto* draw = window_->findChild<QPushButton*>(QStringLiteral("survey-draw"));
    QVERIFY(!draw->isEnabled());
    type("survey-A-height", "300");
    type("survey-B-height", "640");
    const Sketch before = document_->sketch();
    const int steps = document_->undoStack().count();
    draw->click();
    QVERIFY(document_->sketch().engine.has_value());
    QVERIFY(document_->sketch().engine->jacket_source == Source::measured);
    QCOMPARE(document_->undoStack().count(), steps + 1);
    document_->undoStack().undo();
    QVERIFY(document_->sketch() == before);
}

void TestSurvey::the_typed_and_the_drawn_stand_in_the_same_terms()
{
    for (const char* slope : {"survey-P-degrees", "survey-R-degrees", "survey-S-degrees"})
        type(slope, "1.5");
    type("survey-L-length", "640");
    type("survey-C-height", "320");
    type("survey-C-station", "75");
    type("survey-C-across", "-140");
    window_->drawEngine();
    QCOMPARE(drawn('C'), QStringLiteral("320 mm, 75 mm, -140 mm"));
}

void TestSurvey::the_form_has_every_letter_and_nothing_runs_over_data()
{
    QTest::addColumn<bool>("letter");
    QTest::addColumn<bool>("inch");
    QTest::newRow("A4, mm") << false << false;
    QTest::newRow("Letter, inch") << true << true;
}

void TestSurvey::the_form_has_every_letter_and_nothing_runs_over()
{
    QFETCH(const bool, letter);
    QFETCH(const bool, inch);
    BlankForm form;
    form.paper = letter ? sheet::Paper::letter : sheet::Paper::a4;
    form.units = inch ? UnitSystem::inch : UnitSystem::metric;
    constexpr double px_per_mm = 6;
    const QSizeF size = survey::pageSize(form);
    test::TextRecorder page((size * px_per_mm).toSize());
    QPainter painter(&page);
    painter.scale(px_per_mm, px_per_mm);
    paintBlankForm(painter, form);
    painter.end();
    const QRectF inside(8 * px_per_mm, 8 * px_per_mm, (size.width() - 16) * px_per_mm,
                        (size.height() - 16) * px_per_mm);
    for (const SurveyLetter& one : surveyLetters()) {
        // Once on the elevation, once in the table.
        const auto count = std::count_if(page.texts().begin(), page.texts().end(), [&](const auto& text) {
            return text.text == QString(QLatin1Char(one.letter));
        });
        QCOMPARE(int(count), 2);
    }
    for (std::size_t i = 0; i < page.texts().size(); ++i) {
        const test::WrittenText& one = page.texts()[i];
        QVERIFY2(one.text.isEmpty() || inside.contains(one.box), qPrintable(one.text));
        for (std::size_t k = 0; k < i; ++k) {
            const QRectF both = one.box.intersected(page.texts()[k].box);
            QVERIFY2(both.width() < 1 || both.height() < 1,
                     qPrintable(one.text + QStringLiteral(" on ") + page.texts()[k].text));
        }
    }
}

void TestSurvey::the_command_line_writes_the_form()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("form.pdf"));
    const auto run = [](const QStringList& arguments) {
        QString out;
        QString err;
        QTextStream out_stream(&out);
        QTextStream err_stream(&err);
        return runHeadless(arguments, out_stream, err_stream);
    };
    QCOMPARE(run({QStringLiteral("survey-form"), path, QStringLiteral("--paper"), QStringLiteral("Letter"),
                  QStringLiteral("--inch")}),
             0);
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray pdf = file.readAll();
    QVERIFY(pdf.startsWith("%PDF-"));
    QCOMPARE(pdf.count("/Type /Page\n"), 1);
    QCOMPARE(run({QStringLiteral("survey-form")}), 2);
    QCOMPARE(run({QStringLiteral("survey-form"), path, QStringLiteral("--paper"), QStringLiteral("A3")}), 2);
    QCOMPARE(run({QStringLiteral("survey-form"), folder.filePath(QStringLiteral("no/such/form.pdf"))}), 2);
}

QTEST_MAIN(TestSurvey)
#include "test_survey.moc"
