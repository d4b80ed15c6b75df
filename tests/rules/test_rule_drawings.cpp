#include "tests/sheet/text_recorder.h"

#include "app/rules/rule_drawings.h"

#include "core/checks/rules.h"

#include <QImage>
#include <QPainter>
#include <QTest>

#include <set>

using namespace siphonwright;
using namespace siphonwright::rules;

namespace {

constexpr int per_mm = 6;

QImage picture(const RuleDrawing* drawing, bool right, const drawing::Palette& palette)
{
    QImage image(int(drawing_width_mm * per_mm), int(drawing_height_mm * per_mm), QImage::Format_RGB32);
    image.fill(palette.ground);
    QPainter painter(&image);
    painter.scale(per_mm, per_mm);
    if (drawing)
        paintCase(painter, palette, *drawing, right);
    return image;
}

/// How many of the pixels differ.
int difference(const QImage& a, const QImage& b, const QRect& within)
{
    int count = 0;
    for (int y = within.top(); y <= within.bottom(); ++y)
        for (int x = within.left(); x <= within.right(); ++x)
            count += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
    return count;
}

void addRows()
{
    QTest::addColumn<const RuleDrawing*>("drawing");
    for (const RuleDrawing* drawing : allDrawings())
        QTest::newRow(std::string(drawing->rule).c_str()) << drawing;
}

} // namespace

Q_DECLARE_METATYPE(const siphonwright::rules::RuleDrawing*)

class TestRuleDrawings : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyRuleHasItsDrawings();
    void noRuleIsDrawnTwice();
    void theTwoCasesDiffer_data() { addRows(); }
    void theTwoCasesDiffer();
    void theCaseIsSaidInWords_data() { addRows(); }
    void theCaseIsSaidInWords();
    void wordsStayInsideAndApart_data() { addRows(); }
    void wordsStayInsideAndApart();
};

void TestRuleDrawings::everyRuleHasItsDrawings()
{
    for (const Rule& rule : ruleBook()) {
        const RuleDrawing* drawing = drawingOf(rule.id);
        QVERIFY2(drawing, std::string(rule.id).c_str());
        QVERIFY(drawing->group != Group::other);
        QVERIFY(!titleOf(drawing->group).isEmpty());
    }
}

void TestRuleDrawings::noRuleIsDrawnTwice()
{
    std::set<std::string_view> seen;
    for (const RuleDrawing* drawing : allDrawings())
        QVERIFY2(seen.insert(drawing->rule).second, std::string(drawing->rule).c_str());
}

void TestRuleDrawings::theTwoCasesDiffer()
{
    QFETCH(const RuleDrawing*, drawing);
    // Below the verdict's words, which differ anyway: 60 - 52 = 8 mm.
    const QRect below(0, 8 * per_mm, int(drawing_width_mm * per_mm), int((drawing_height_mm - 8) * per_mm));
    for (const drawing::Palette& palette : {drawing::Palette::light(), drawing::Palette::dark()}) {
        const QImage wrong = picture(drawing, false, palette);
        const QImage right = picture(drawing, true, palette);
        // More than a stroke of 10 mm by 1 mm.
        constexpr int visible = 10 * per_mm * per_mm;
        QVERIFY(difference(wrong, right, below) > visible);
        const QImage blank = picture(nullptr, false, palette);
        QVERIFY(difference(wrong, blank, below) > visible);
        QVERIFY(difference(right, blank, below) > visible);
    }
    QVERIFY(drawing->caption(false) != drawing->caption(true));
}

void TestRuleDrawings::theCaseIsSaidInWords()
{
    QFETCH(const RuleDrawing*, drawing);
    for (const bool right : {false, true}) {
        test::TextRecorder recorder(QSize(840, 600));
        QPainter painter(&recorder);
        painter.scale(10, 10);
        paintCase(painter, drawing::Palette::light(), *drawing, right);
        painter.end();
        QCOMPARE(recorder.texts().back().text, right ? QStringLiteral("Right") : QStringLiteral("Wrong"));
        QVERIFY(!drawing->caption(right).isEmpty());
    }
}

void TestRuleDrawings::wordsStayInsideAndApart()
{
    QFETCH(const RuleDrawing*, drawing);
    for (const bool right : {false, true}) {
        test::TextRecorder recorder(QSize(840, 600));
        QPainter painter(&recorder);
        painter.scale(10, 10);
        paintCase(painter, drawing::Palette::light(), *drawing, right);
        painter.end();
        const auto& texts = recorder.texts();
        for (std::size_t i = 0; i < texts.size(); ++i) {
            QVERIFY2(QRectF(5, 5, 830, 590).contains(texts[i].box), qPrintable(texts[i].text));
            for (std::size_t k = 0; k < i; ++k)
                QVERIFY2(!texts[i].box.intersects(texts[k].box),
                         qPrintable(texts[i].text + QStringLiteral(" | ") + texts[k].text));
        }
    }
}

QTEST_MAIN(TestRuleDrawings)
#include "test_rule_drawings.moc"
