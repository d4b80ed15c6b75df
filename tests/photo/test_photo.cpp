#include "tests/near.h"
#include "tests/photo/pictures.h"

#include "app/panels/details_panel.h"
#include "app/panels/quantity_edit.h"
#include "app/photo/store_picture.h"
#include "app/sheet/sheet.h"
#include "app/window/file_commands.h"
#include "app/window/main_window.h"
#include "app/window/photo_commands.h"
#include "app/window/photo_figures.h"

#include "core/sketch/photo_edits.h"

#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QFile>
#include <QMessageBox>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QUrl>

using namespace siphonwright;
using namespace siphonwright::test;

/// The photograph under the drawing as people use it: the real window, real events.
class TestPhoto : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup() { window_.reset(); }
    void aPhotoFromAFileIsDrawnUnderTheDrawingAndTakenBackByUndo();
    void aBadFileIsToldAndChangesNothing();
    void aPhotoIsDroppedAndPasted();
    void itIsDraggedUntilItIsLockedAndDeletedByKey();
    void twoClicksAndADistanceScaleIt();
    void theKeyboardAloneScalesIt();
    void twoClicksLevelIt();
    void fourClicksAndTwoLengthsStraightenIt();
    void aCancelledDialogChangesNothing();
    void itsDetailsChangeItAboutItsMiddle();
    void theSheetHasItOnlyWhenAsked();
    void savedAndOpenedAgainItIsWhole();

private:
    const Photo& photo() const { return **window_->document().sketch().photo; }
    bool has() const { return window_->document().sketch().photo.has_value(); }
    QString write(const char* name, const QByteArray& bytes) const
    {
        QFile file(folder_.filePath(QLatin1String(name)));
        if (file.open(QIODevice::WriteOnly))
            file.write(bytes);
        return file.fileName();
    }
    /// 400 x 300 pixels, one millimetre each, its middle at the origin.
    void insertKnown() const
    {
        window_->document().apply(QStringLiteral("photo"), [](Sketch& sketch) {
            sketch = {};
            sketch.photo = Shared<Photo>(
                photo::photoOf(photo::storedPicture(plain(400, 300, QColor(200, 40, 40))), {0, 0}, 400));
        });
        window_->view().zoomToFit();
    }
    void send(QEvent::Type type, QPointF at, Qt::MouseButtons held) const
    {
        ElevationView& view = window_->view();
        const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
        QMouseEvent event(type, at, view.mapToGlobal(at), button, held, Qt::NoModifier);
        QApplication::sendEvent(&view, &event);
    }
    void click(Vec2 at) const
    {
        const QPointF p = window_->view().toScreen(at);
        send(QEvent::MouseMove, p, Qt::NoButton);
        send(QEvent::MouseButtonPress, p, Qt::LeftButton);
        send(QEvent::MouseButtonRelease, p, Qt::NoButton);
    }
    void drag(Vec2 from, Vec2 to) const
    {
        const QPointF a = window_->view().toScreen(from);
        const QPointF b = window_->view().toScreen(to);
        send(QEvent::MouseButtonPress, a, Qt::LeftButton);
        for (int i = 1; i <= 5; ++i)
            send(QEvent::MouseMove, a + (b - a) * i / 5, Qt::LeftButton);
        send(QEvent::MouseButtonRelease, b, Qt::NoButton);
    }
    QAction* action(const char* id) const { return window_->actions()[QLatin1String(id)]; }
    void key(Qt::Key key) const { QTest::keyClick(&window_->view(), key); }
    /// Type lengths into the dialog that is open, and take them.
    void answer(const QStringList& lengths) const
    {
        QTRY_VERIFY(window_->findChild<PhotoFigures*>());
        auto* dialog = window_->findChild<PhotoFigures*>();
        const auto edits = dialog->findChildren<panels::QuantityEdit*>();
        QCOMPARE(edits.size(), lengths.size());
        for (qsizetype i = 0; i < lengths.size(); ++i) {
            edits[i]->setFocus();
            edits[i]->selectAll();
            QTest::keyClicks(edits[i], lengths[i]);
        }
        dialog->accept();
        QTRY_VERIFY(!window_->findChild<PhotoFigures*>());
    }
    void closeMessage(const QString& says) const
    {
        QTRY_VERIFY(window_->findChild<QMessageBox*>());
        auto* box = window_->findChild<QMessageBox*>();
        QVERIFY2((box->text() + box->informativeText()).contains(says), qPrintable(box->informativeText()));
        box->accept();
        QTRY_VERIFY(!window_->findChild<QMessageBox*>());
    }

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

void TestPhoto::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestPhoto::init()
{
    QSettings().clear();
    window_ = std::make_unique<MainWindow>();
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
}

void TestPhoto::aPhotoFromAFileIsDrawnUnderTheDrawingAndTakenBackByUndo()
{
    QVERIFY(!action("photo-scale")->isEnabled());
    window_->photo().insertFile(write("red.png", fileOf(plain(400, 300, QColor(255, 0, 0)), "PNG")));
    QVERIFY(has());
    QVERIFY(window_->selection().part() == (PartRef{PartKind::photo, {}, 0}));
    QVERIFY(action("photo-scale")->isEnabled());
    ElevationView& view = window_->view();
    const QPoint middle = view.toScreen(photo::middleOf(photo())).toPoint();
    // Half faded over the light ground 0xfbfaf6: its green is half of 0xfa. Grid and datum run over it.
    const QImage seen = view.grab().toImage();
    int plain_px = 0;
    constexpr int half_px = 20;
    for (int x = -half_px; x < half_px; ++x)
        for (int y = -half_px; y < half_px; ++y) {
            const QColor colour = seen.pixelColor(middle + QPoint(x, y));
            plain_px += test::near(colour.red(), 0xfd, 3) && test::near(colour.green(), 0x7d, 4) ? 1 : 0;
        }
    QVERIFY2(plain_px > 2 * half_px * half_px, qPrintable(QString::number(plain_px)));
    window_->document().undoStack().undo();
    QVERIFY(!has());
    window_->document().undoStack().redo();
    QVERIFY(has());
}

void TestPhoto::aBadFileIsToldAndChangesNothing()
{
    window_->photo().insertFile(write("huge.png", pngClaiming(60'000, 60'000)));
    closeMessage(QStringLiteral("60000 × 60000"));
    window_->photo().insertFile(write("letter.jpg", "Dear colleague"));
    closeMessage(QStringLiteral("not a PNG"));
    QVERIFY(!has());
    QCOMPARE(window_->document().undoStack().count(), 0);
}

void TestPhoto::aPhotoIsDroppedAndPasted()
{
    QMimeData dropped;
    dropped.setUrls(
        {QUrl::fromLocalFile(write("dropped.JPG", fileOf(plain(200, 100, Qt::darkGreen), "JPEG")))});
    const QPoint at = window_->view().mapTo(window_.get(), QPoint(300, 200));
    QDragEnterEvent enter(at, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &enter);
    QVERIFY(enter.isAccepted());
    QDropEvent event(at, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &event);
    QVERIFY(has());
    QCOMPARE(photo::storedSize(photo()), QSize(200, 100));

    QGuiApplication::clipboard()->setImage(plain(120, 90, Qt::darkBlue));
    action("paste-photo")->trigger();
    QCOMPARE(photo::storedSize(photo()), QSize(120, 90));
    window_->document().undoStack().undo();
    QCOMPARE(photo::storedSize(photo()), QSize(200, 100));
    QGuiApplication::clipboard()->setText(QStringLiteral("words"));
    action("paste-photo")->trigger();
    closeMessage(QStringLiteral("no picture in the clipboard"));
    QMimeData sketch;
    sketch.setUrls({QUrl::fromLocalFile(QStringLiteral("/a.siphon"))});
    QVERIFY(!PhotoCommands::offersPicture(sketch));
}

void TestPhoto::itIsDraggedUntilItIsLockedAndDeletedByKey()
{
    insertKnown();
    window_->view().setSnapping(false);
    drag({50, 50}, {90, 20});
    VERIFY_NEAR(photo().top_left.x, -200 + 40, 1);
    VERIFY_NEAR(photo().top_left.z, 150 - 30, 1);
    const Photo moved = photo();
    action("photo-lock")->trigger();
    QVERIFY(photo().locked);
    QVERIFY(action("photo-lock")->isChecked());
    drag({50, 50}, {0, 0});
    VERIFY_NEAR(photo().top_left.x, moved.top_left.x, 1e-9);
    QVERIFY(window_->selection().part().kind == PartKind::nothing); // a click goes through it
    window_->view().setFocus();
    key(Qt::Key_Tab);
    QVERIFY(window_->selection().part().kind == PartKind::photo);
    key(Qt::Key_Right);
    VERIFY_NEAR(photo().top_left.x, moved.top_left.x, 1e-9);
    action("photo-lock")->trigger();
    key(Qt::Key_Right);
    VERIFY_NEAR(photo().top_left.x, moved.top_left.x + 5, 1e-9);
    key(Qt::Key_Delete);
    QVERIFY(!has());
    QVERIFY(!action("photo-lock")->isChecked());
}

void TestPhoto::twoClicksAndADistanceScaleIt()
{
    insertKnown();
    action("photo-scale")->trigger();
    click({-100, 0});
    click({100, 0});
    answer({QStringLiteral("500")});
    // 200 mm as drawn are 500 in truth, within a pixel of the screen at either end.
    VERIFY_NEAR(photo().mm_per_pixel, 2.5, 0.04);
    const Vec2 kept = drawingPoint(photo(), {100, 150});
    VERIFY_NEAR(kept.x, -100, 2);
    VERIFY_NEAR(kept.z, 0, 2);
    QVERIFY(window_->view().tool() == ToolKind::select);
    window_->document().undoStack().undo();
    VERIFY_NEAR(photo().mm_per_pixel, 1, 1e-12);
}

void TestPhoto::theKeyboardAloneScalesIt()
{
    insertKnown();
    window_->view().setFocus();
    action("photo-scale")->trigger();
    key(Qt::Key_Tab); // the cross-hair goes to a corner, then to the next
    key(Qt::Key_Return);
    key(Qt::Key_Tab);
    key(Qt::Key_Return);
    QTRY_VERIFY(window_->findChild<PhotoFigures*>());
    const auto* edit = window_->findChild<PhotoFigures*>()->findChild<panels::QuantityEdit*>();
    const double side_mm = *edit->value(); // exact: one side of the picture
    QVERIFY(side_mm == 400 || side_mm == 300);
    auto* line = window_->findChild<PhotoFigures*>()->findChild<panels::QuantityEdit*>();
    line->selectAll();
    QTest::keyClicks(line, QString::number(side_mm * 2));
    QTest::keyClick(line, Qt::Key_Return);
    QTRY_VERIFY(!window_->findChild<PhotoFigures*>());
    VERIFY_NEAR(photo().mm_per_pixel, 2, 1e-9);
}

void TestPhoto::twoClicksLevelIt()
{
    insertKnown();
    action("photo-level")->trigger();
    click({-100, -100});
    key(Qt::Key_Backspace); // taken back
    click({-100, -20});
    click({100, 20});
    // Rises 1 in 5: atan(0.2) = 11.31 degrees.
    VERIFY_NEAR(photo().rotation_deg, 11.31, 0.5);
    QVERIFY(window_->view().tool() == ToolKind::select);
}

void TestPhoto::fourClicksAndTwoLengthsStraightenIt()
{
    insertKnown();
    const int steps = window_->document().undoStack().count();
    action("photo-straighten")->trigger();
    for (const Vec2 corner : {Vec2{-100, 60}, Vec2{100, 80}, Vec2{100, -80}, Vec2{-100, -60}})
        click(corner);
    answer({QStringLiteral("600"), QStringLiteral("240")});
    QCOMPARE(window_->document().undoStack().count(), steps + 1);
    QVERIFY(photo().mm_per_pixel != 1);
    QCOMPARE(photo().rotation_deg, 0.0);
    window_->document().undoStack().undo();
    QCOMPARE(photo::storedSize(photo()), QSize(400, 300));
    VERIFY_NEAR(photo().mm_per_pixel, 1, 1e-12);
    action("photo-straighten")->trigger();
    for (const Vec2 corner : {Vec2{-100, 60}, Vec2{0, 60}, Vec2{100, 60}, Vec2{-100, -60}})
        click(corner);
    answer({QStringLiteral("600"), QStringLiteral("240")});
    closeMessage(QStringLiteral("one line"));
    VERIFY_NEAR(photo().mm_per_pixel, 1, 1e-12);
}

void TestPhoto::aCancelledDialogChangesNothing()
{
    insertKnown();
    const Sketch before = window_->document().sketch();
    action("photo-scale")->trigger();
    click({-100, 0});
    click({100, 0});
    QTRY_VERIFY(window_->findChild<PhotoFigures*>());
    auto* dialog = window_->findChild<PhotoFigures*>();
    // What is no length is not taken.
    auto* edit = dialog->findChild<panels::QuantityEdit*>();
    edit->selectAll();
    QTest::keyClicks(edit, QStringLiteral("about a foot"));
    dialog->accept();
    QVERIFY(dialog->isVisible());
    dialog->reject();
    QTRY_VERIFY(!window_->findChild<PhotoFigures*>());
    QVERIFY(window_->document().sketch() == before);
    QVERIFY(window_->view().tool() == ToolKind::select);
}

void TestPhoto::itsDetailsChangeItAboutItsMiddle()
{
    insertKnown();
    action("photo-details")->trigger();
    auto* details = window_->findChild<panels::DetailsPanel*>();
    const auto type = [&](const char* label, const char* text) {
        auto* edit = details->findChild<panels::QuantityEdit*>(QLatin1String(label));
        QVERIFY2(edit, label);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QLatin1String(text));
        QTest::keyClick(edit, Qt::Key_Return);
    };
    type("Width", "1000");
    VERIFY_NEAR(photo().mm_per_pixel, 2.5, 1e-9);
    type("Turned clockwise", "90");
    VERIFY_NEAR(photo().rotation_deg, 90, 1e-9);
    VERIFY_NEAR(photo::middleOf(photo()).x, 0, 1e-6);
    VERIFY_NEAR(photo::middleOf(photo()).z, 0, 1e-6);
    // A quarter turn: the corner that was 500 left and 375 up is 375 right and 500 up.
    VERIFY_NEAR(photo().top_left.x, 375, 1e-6);
    VERIFY_NEAR(photo().top_left.z, 500, 1e-6);
    type("Faded", "80");
    VERIFY_NEAR(photo().opacity, 0.2, 1e-9);
}

void TestPhoto::theSheetHasItOnlyWhenAsked()
{
    window_->files().startFromTemplate("in-line-6");
    QVERIFY(!action("sheet-photo")->isChecked());
    Sketch sketch = window_->document().sketch();
    const Analysis analysis = analyse(sketch);
    const Vec2 middle = drawing::fromPage(drawing::boundsOf(sketch, analysis).center());
    sketch.photo =
        Shared<Photo>(photo::photoOf(photo::storedPicture(plain(400, 300, QColor(220, 0, 0))), middle, 3000));
    (*sketch.photo).edit([](Photo& p) { p.opacity = 1; });
    const auto reds = [&](bool with_photo, bool colour) {
        sheet::Options options;
        options.photo = with_photo;
        options.colour = colour;
        QImage page(297 * 2, 210 * 2, QImage::Format_RGB32);
        page.fill(Qt::white);
        QPainter painter(&page);
        painter.scale(2, 2);
        sheet::paintPage(painter, sketch, analysis, options);
        painter.end();
        int count = 0;
        for (int y = 0; y < page.height(); ++y)
            for (int x = 0; x < page.width(); ++x) {
                const QColor c = page.pixelColor(x, y);
                count += c.red() > 180 && c.green() < 60 ? 1 : 0;
            }
        return count;
    };
    QCOMPARE(reds(false, true), 0);
    QVERIFY(reds(true, true) > 2000);
    QCOMPARE(reds(true, false), 0); // black and white: in grey
    sheet::Options with;
    with.photo = true;
    for (const char* name : {"photo.svg", "photo.pdf", "photo.png"})
        QCOMPARE(sheet::exportTo(folder_.filePath(QLatin1String(name)), sketch, analysis, with),
                 QStringList());
}

void TestPhoto::savedAndOpenedAgainItIsWhole()
{
    window_->photo().insertFile(write("noise.png", fileOf(noise(900, 700), "PNG")));
    const Sketch drawn = window_->document().sketch();
    const QString path = folder_.filePath(QStringLiteral("with-photo.siphon"));
    QCOMPARE(window_->document().save(path), QStringList());
    QVERIFY(QFile::remove(folder_.filePath(QStringLiteral("noise.png"))));
    Document other;
    QCOMPARE(other.open(path), QStringList());
    QVERIFY(other.sketch() == drawn);
    QVERIFY(QFileInfo(path).size() < photo::largest_stored_bytes * 4 / 3 + 100'000);
}

QTEST_MAIN(TestPhoto)
#include "test_photo.moc"
