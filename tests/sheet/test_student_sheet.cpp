#include "tests/sheet/text_recorder.h"

#include "app/headless/headless.h"
#include "app/sheet/plan.h"
#include "app/sheet/sheet.h"
#include "app/sheet/words.h"

#include "core/sketch/file.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <algorithm>

using namespace siphonwright;

namespace {

QString path(const char* name)
{
    return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name));
}

QStringList textsOf(const Sketch& sketch, const Analysis& analysis, bool student)
{
    sheet::Options options;
    options.paper = sheet::Paper::a3;
    options.student = student;
    constexpr int px_per_mm = 4;
    test::TextRecorder page((sheet::pageSize(options) * px_per_mm).toSize());
    QPainter painter(&page);
    painter.scale(px_per_mm, px_per_mm);
    sheet::paintPage(painter, sketch, analysis, options);
    painter.end();
    QStringList texts;
    for (const test::WrittenText& one : page.texts())
        texts << one.text;
    return texts;
}

} // namespace

/// One drawing, two sheets: one to find the fault on, one with the answer.
class TestStudentSheet : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void the_student_sheet_tells_nothing_that_was_judged_data();
    void the_student_sheet_tells_nothing_that_was_judged();
    void it_has_the_complaint_and_the_questions();
    void the_command_line_writes_either();

private:
    Sketch sketch_;
    Analysis analysis_;
    QString student_; ///< all that it says
    QString answer_;  ///< the other sheet
};

void TestStudentSheet::initTestCase()
{
    QFile file(path("air-lock-fault-1"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    sketch_ = std::get<Sketch>(readSketch(file.readAll().toStdString()));
    ProofOptions options;
    options.bands = true;
    analysis_ = proved(sketch_, options);
    QVERIFY(!analysis_.findings.empty());
}

void TestStudentSheet::the_student_sheet_tells_nothing_that_was_judged_data()
{
    QTest::addColumn<QString>("told");
    for (const char* told : {"Findings", "Stop:", "Results", "Margins", "of air", "may sag"})
        QTest::newRow(told) << QString::fromLatin1(told);
}

void TestStudentSheet::the_student_sheet_tells_nothing_that_was_judged()
{
    QFETCH(const QString, told);
    if (student_.isEmpty()) {
        student_ = textsOf(sketch_, analysis_, true).join(QLatin1Char('\n'));
        answer_ = textsOf(sketch_, analysis_, false).join(QLatin1Char('\n'));
    }
    QVERIFY2(!student_.contains(told), qPrintable(student_));
    // What the answer sheet never says would prove nothing.
    QVERIFY2(answer_.contains(told), qPrintable(answer_));
}

void TestStudentSheet::it_has_the_complaint_and_the_questions()
{
    const QString all = textsOf(sketch_, analysis_, true).join(QLatin1Char(' '));
    QVERIFY(all.contains(QStringLiteral("Student sheet")));
    QVERIFY(all.contains(QStringLiteral("What is known")));
    QVERIFY(all.contains(QStringLiteral("Where does air stay")));
    QVERIFY(all.contains(QStringLiteral("What would you change")));
    const QString first_words = QString::fromStdString(sketch_.notes).section(QLatin1Char(' '), 0, 2);
    QVERIFY(first_words.size() > 5);
    QVERIFY2(all.contains(first_words), qPrintable(first_words));
    QVERIFY(all.contains(QStringLiteral("Cautions")));
}

void TestStudentSheet::the_command_line_writes_either()
{
    const QTemporaryDir folder;
    QImage written[2];
    for (const bool student : {false, true}) {
        const QString to = folder.filePath(QStringLiteral("sheet-%1.png").arg(int(student)));
        QStringList arguments = {QStringLiteral("sheet"), path("air-lock-fault-1"),
                                 QStringLiteral("--output"), to};
        if (student)
            arguments << QStringLiteral("--student");
        QString out;
        QString err;
        QTextStream out_stream(&out);
        QTextStream err_stream(&err);
        runHeadless(arguments, out_stream, err_stream);
        QVERIFY2(err.isEmpty(), qPrintable(err));
        written[student ? 1 : 0] = QImage(to);
        QVERIFY(!written[student ? 1 : 0].isNull());
    }
    QVERIFY(written[0] != written[1]);
}

QTEST_MAIN(TestStudentSheet)
#include "test_student_sheet.moc"
