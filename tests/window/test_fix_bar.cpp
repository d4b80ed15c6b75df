#include "tests/patience.h"

#include "app/document/document.h"
#include "app/panels/fix_bar.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QUndoStack>

#include <algorithm>
#include <memory>

using namespace siphonwright;
using siphonwright::test::patience_ms;

namespace {}

/// The fix of a finding as people use it.
class TestFixBar : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aHumpIsTakenOutWithOnePressAndComesBackWithOneUndo();
    void whatNoDrawingCuresOffersNoFix();
    void withoutAFindingNothingIsShown();

private:
    void openSample(const char* name)
    {
        bar_.reset();
        document_ = std::make_unique<Document>();
        bar_ = std::make_unique<panels::FixBar>(*document_);
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name))),
                 QStringList());
        document_->startProving();
        QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && document_->proof()->graded, patience_ms);
    }
    int indexOf(std::string_view rule) const
    {
        const std::vector<Finding>& all = document_->analysis().findings;
        const auto found = std::find_if(all.begin(), all.end(),
                                        [&](const Finding& finding) { return finding.rule == rule; });
        return found == all.end() ? -1 : static_cast<int>(found - all.begin());
    }
    QPushButton* button() const { return bar_->findChild<QPushButton*>(); }
    QString words() const { return bar_->findChild<QLabel*>()->text(); }

    std::unique_ptr<Document> document_;
    std::unique_ptr<panels::FixBar> bar_;
};

void TestFixBar::aHumpIsTakenOutWithOnePressAndComesBackWithOneUndo()
{
    openSample("supply-hump");
    const int hump = indexOf("supply-high-point");
    QVERIFY(hump >= 0);
    const std::size_t stops = document_->analysis().count(Severity::stop);
    const Sketch as_found = document_->sketch();
    bar_->setFinding(hump);
    QTRY_VERIFY_WITH_TIMEOUT(button()->isEnabled(), patience_ms);
    QVERIFY2(words().contains(QStringLiteral("Supply hose")), qPrintable(words()));
    button()->click();
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent(), patience_ms);
    QVERIFY(document_->analysis().count(Severity::stop) < stops);
    document_->undoStack().undo();
    QVERIFY(document_->sketch() == as_found);
}

void TestFixBar::whatNoDrawingCuresOffersNoFix()
{
    openSample("generator-two-heaters");
    const int power = indexOf("much-power");
    QVERIFY(power >= 0);
    bar_->setFinding(power);
    QVERIFY(bar_->isHidden());
}

void TestFixBar::withoutAFindingNothingIsShown()
{
    openSample("sound-bus");
    bar_->setFinding(-1);
    QVERIFY(bar_->isHidden());
}

QTEST_MAIN(TestFixBar)
#include "test_fix_bar.moc"
