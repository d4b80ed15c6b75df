#include "app/document/document.h"
#include "app/window/file_commands.h"
#include "app/window/title_fields.h"

#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QWidget>

using namespace siphonwright;

class TestTitleFields : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
        QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
        QCoreApplication::setApplicationName(QStringLiteral("test"));
    }
    void init() { QSettings().clear(); }

    void nothingIsOfferedAtFirst() { QVERIFY(TitleFields::offered() == SheetDetails()); }

    void whatWasEnteredIsOfferedInTheNextNewDrawing()
    {
        Document document;
        QWidget window;
        FileCommands files(document, window);
        document.apply(QStringLiteral("Owner"), [](Sketch& sketch) {
            sketch.sheet.legal_owner = "Yard of the North Line";
            sketch.sheet.creator = "A. Miller";
            sketch.sheet.title = "Coolant heater, bus 14";
            sketch.sheet.vehicle_serial = "YNL-14-0077";
        });
        document.undoStack().setClean();
        files.startNew();
        QCOMPARE(document.sketch().sheet.legal_owner, std::string("Yard of the North Line"));
        QCOMPARE(document.sketch().sheet.creator, std::string("A. Miller"));
        // What belongs to one job is not carried into another.
        QCOMPARE(document.sketch().sheet.title, std::string());
        QCOMPARE(document.sketch().sheet.vehicle_serial, std::string());
        QVERIFY(!document.isModified());
    }

    void whatStandsInAnothersDrawingIsNotRemembered()
    {
        Document document;
        const TitleFields fields(document);
        Sketch others;
        others.sheet.legal_owner = "Somebody else";
        document.reset(others);
        QVERIFY(TitleFields::offered() == SheetDetails());
        // Nor by an edit of something else in it.
        document.apply(QStringLiteral("Title"), [](Sketch& sketch) { sketch.sheet.title = "Mine"; });
        QVERIFY(TitleFields::offered() == SheetDetails());
    }

    void aFieldEmptiedIsNoLongerOffered()
    {
        Document document;
        const TitleFields fields(document);
        document.apply(QStringLiteral("A"), [](Sketch& sketch) { sketch.sheet.approver = "Foreman"; });
        QCOMPARE(TitleFields::offered().approver, std::string("Foreman"));
        document.apply(QStringLiteral("A"), [](Sketch& sketch) { sketch.sheet.approver.clear(); });
        QCOMPARE(TitleFields::offered().approver, std::string());
    }

private:
    QTemporaryDir folder_;
};

QTEST_MAIN(TestTitleFields)
#include "test_title_fields.moc"
