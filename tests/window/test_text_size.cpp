#include "app/window/file_commands.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"

#include <QDockWidget>
#include <QFrame>
#include <QLabel>
#include <QStandardPaths>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include <algorithm>
#include <map>
#include <memory>
#include <set>

using namespace siphonwright;

namespace {

/// A widget's place among the others, which is the same in every window of a kind.
QString placeOf(const QWidget& widget)
{
    QString out;
    for (const QWidget* at = &widget; at->parentWidget(); at = at->parentWidget())
        out = QStringLiteral("/%1 %2").arg(QLatin1String(at->metaObject()->className()), at->objectName()) +
              out;
    return out;
}

/// The text sizes of widgets of a window, and how high the rows of tables are.
std::map<QString, std::set<int>> textsOf(const QWidget& window)
{
    std::map<QString, std::set<int>> out;
    for (const QWidget* one : window.findChildren<QWidget*>()) {
        if (one->inherits("QMenu") || one->isHidden() || one->objectName().startsWith(QLatin1String("qt_")))
            continue;
        one->ensurePolished(); // as when its page is turned to
        out[placeOf(*one)].insert(one->font().pixelSize());
        const auto* table = qobject_cast<const QTableView*>(one);
        if (!table || !table->model())
            continue;
        for (int column = 0; column < table->model()->columnCount(); ++column)
            if (const QModelIndex index = table->model()->index(0, column); index.isValid())
                out[placeOf(*one) + QStringLiteral(" row")].insert(table->sizeHintForIndex(index).height());
    }
    return out;
}

QString listOf(const std::set<int>& sizes)
{
    QStringList out;
    for (const int size : sizes)
        out << QString::number(size);
    return out.join(u';');
}

/// A panel's title as it is painted: what is over its contents.
QImage titleOf(QDockWidget& dock)
{
    return dock.grab(QRect(0, 0, dock.width(), dock.widget()->y())).toImage();
}

} // namespace

class TestTextSize : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup() { window_.reset(); }
    void the_desktops_font_is_not_taken();
    void everything_follows_at_once_data();
    void everything_follows_at_once();

private:
    void trigger(const QString& id) { window_->actions()[id]->trigger(); }
    void again();
    void openAll();

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

void TestTextSize::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestTextSize::init()
{
    QSettings().clear();
    again();
}

void TestTextSize::again()
{
    window_.reset();
    window_ = std::make_unique<MainWindow>();
    window_->setAnimated(false);
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
}

/// A desktop asks for a font of its own before there is a window.
void TestTextSize::the_desktops_font_is_not_taken()
{
    window_.reset();
    QFont desktops(QStringLiteral("Serif"));
    desktops.setPixelSize(31);
    QApplication::setFont(desktops);
    qApp->setStyleSheet({});
    for (const char* known : {"look_dressed", "look_applied"}) // as at the start of the program
        qApp->setProperty(known, QVariant());
    again();
    int looked_at = 0;
    for (const QWidget* one : window_->findChildren<QWidget*>()) {
        QVERIFY2(one->font().family() != desktops.family() && one->font().pixelSize() != desktops.pixelSize(),
                 qPrintable(placeOf(*one)));
        ++looked_at;
    }
    QVERIFY(looked_at > 100);
}

void TestTextSize::openAll()
{
    window_->files().open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/above-level.siphon"));
    trigger(QStringLiteral("commissioning"));
    trigger(QStringLiteral("shelf"));
    window_->selection().select({PartKind::hose, window_->document().sketch().hoses.front()->id, 0});
}

void TestTextSize::everything_follows_at_once_data()
{
    QTest::addColumn<QString>("before");
    QTest::addColumn<QString>("after");
    QTest::newRow("up") << "text-100"
                        << "text-200";
    QTest::newRow("down") << "text-200"
                          << "text-100";
}

/// A window whose text was changed has the texts and titles of one that was opened with that size.
void TestTextSize::everything_follows_at_once()
{
    QFETCH(QString, before);
    QFETCH(QString, after);
    const auto titles = [this] {
        QCoreApplication::sendPostedEvents();
        std::map<QString, QImage> out;
        for (const char* name : {"findings", "details", "commissioning"})
            out[QLatin1String(name)] = titleOf(*window_->findChild<QDockWidget*>(QLatin1String(name)));
        return out;
    };
    trigger(before);
    openAll();
    trigger(after);
    const auto changed = textsOf(*window_);
    const auto changed_titles = titles();
    again();
    openAll();
    const auto made = textsOf(*window_);
    QVERIFY(made.size() > 150);
    for (const auto& [place, texts] : made) {
        const auto same = changed.find(place);
        if (same != changed.end())
            QVERIFY2(
                same->second == texts,
                qPrintable(
                    QStringLiteral("%1: %2 instead of %3").arg(place, listOf(same->second), listOf(texts))));
    }
    for (const auto& [name, title] : titles()) {
        const QImage& seen = changed_titles.at(name);
        QVERIFY2(
            title.height() > 0 && seen.height() == title.height(),
            qPrintable(
                QStringLiteral("%1: %2 instead of %3").arg(name).arg(seen.height()).arg(title.height())));
        const int width = std::min(seen.width(), title.width()) - 60; // without the buttons
        QVERIFY2(seen.copy(0, 0, width, seen.height()) == title.copy(0, 0, width, title.height()),
                 qPrintable(name));
    }
}

QTEST_MAIN(TestTextSize)
#include "test_text_size.moc"
