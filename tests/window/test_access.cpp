#include "app/photo/read_picture.h"
#include "app/window/file_commands.h"
#include "app/window/main_window.h"
#include "app/window/photo_figures.h"
#include "app/window/recovery_offer.h"
#include "app/window/settings.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDockWidget>
#include <QHeaderView>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QScrollBar>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTextEdit>

using namespace siphonwright;

namespace {

/// What shows a panel, and what a window of its own.
constexpr const char* panel_actions[] = {"warm-up",         "by-bore",       "on-grades", "sizing",
                                         "propose-layouts", "commissioning", "shelf",     "find",
                                         "end-view",        "demonstrate"};
constexpr const char* window_actions[] = {
    "survey",        "parts",         "estimate", "rules",    "assumptions", "shortcuts", "find-command",
    "insert-engine", "insert-heater", "teaching", "cautions", "about",       "preview"};

QString nameOf(QWidget& widget)
{
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&widget);
    return spoken ? spoken->text(QAccessible::Name).trimmed() : QString();
}

/// Whether a person acts on it, or reads rows of it.
bool isInteractive(const QWidget& widget)
{
    // Qt's own parts of larger widgets, which speak for them.
    const QWidget* parent = widget.parentWidget();
    const bool in_scrolled = parent && (qobject_cast<const QAbstractScrollArea*>(parent) ||
                                        qobject_cast<const QAbstractScrollArea*>(parent->parentWidget()));
    const bool is_own_part =
        qobject_cast<const QHeaderView*>(&widget) || widget.inherits("QTableCornerButton") ||
        (in_scrolled && qobject_cast<const QScrollBar*>(&widget)) ||
        (qobject_cast<const QAbstractScrollArea*>(parent) && !qobject_cast<const QAbstractButton*>(&widget));
    if (is_own_part || widget.objectName().startsWith(QLatin1String("qt_")) ||
        qobject_cast<const QComboBox*>(parent) || qobject_cast<const QAbstractSpinBox*>(parent) ||
        (parent && parent->inherits("QComboBoxPrivateContainer")))
        return false;
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QAbstractSlider*>(&widget) || qobject_cast<const QAbstractItemView*>(&widget) ||
           qobject_cast<const QTextEdit*>(&widget) || qobject_cast<const QPlainTextEdit*>(&widget) ||
           (widget.focusPolicy() & Qt::TabFocus && !qobject_cast<const QTabBar*>(&widget) &&
            !qobject_cast<const QTabWidget*>(&widget) && !qobject_cast<const QAbstractScrollArea*>(&widget));
}

/// A screen reader says signs one by one or not at all.
bool hasWords(const QString& name)
{
    static const QRegularExpression word(QStringLiteral("[\\p{L}\\p{N}]"));
    return name.contains(word);
}

QString parentsOf(const QWidget& widget)
{
    QString out;
    for (const QWidget* at = &widget; at; at = at->parentWidget())
        out += QStringLiteral(" < %1 %2").arg(QLatin1String(at->metaObject()->className()), at->objectName());
    return out;
}

/// Interactive widgets without a name that can be said.
QStringList namelessIn(const QWidget& window)
{
    QStringList out;
    for (QWidget* one : window.findChildren<QWidget*>())
        if (one->window() == window.window() && one->isVisible() && isInteractive(*one) &&
            !hasWords(nameOf(*one)))
            out << QStringLiteral("\"%1\"").arg(nameOf(*one)) + parentsOf(*one);
    return out;
}

} // namespace

/// What a screen reader is told, in the windows that people use.
class TestAccess : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup() { window_.reset(); }
    void everyControlOfTheWindowAndItsPanelsHasAName();
    void everyControlOfEveryOtherWindowHasAName();
    void theTreeOfTheWindowIsSound();

private:
    QAction* action(const char* id) { return window_->actions()[QLatin1String(id)]; }
    void selectEachPart(const std::function<void()>& look);

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

void TestAccess::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestAccess::init()
{
    QSettings().clear();
    window_ = std::make_unique<MainWindow>();
    window_->setAnimated(false);
    window_->resize(1280, 720);
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    window_->files().open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/generator-first-start.siphon"));
}

void TestAccess::selectEachPart(const std::function<void()>& look)
{
    const Sketch sketch = window_->document().sketch();
    const Id hose = sketch.hoses.front()->id;
    for (const PartRef& part :
         std::initializer_list<PartRef>{{},
                                        {PartKind::engine, {}, 0},
                                        {PartKind::jacket, {}, 0},
                                        {PartKind::tank, {}, 0},
                                        {PartKind::port, sketch.ports.front().id, 0},
                                        {PartKind::heater, sketch.heaters.front().id, 0},
                                        {PartKind::hose, hose, 0},
                                        {PartKind::hose_point, hose, 0},
                                        {PartKind::hose_end, hose, 1},
                                        {PartKind::inline_part, hose, 0},
                                        {PartKind::area, sketch.areas.front()->id, 0}}) {
        window_->selection().select(part);
        QTest::qWait(10);
        look();
    }
}

void TestAccess::everyControlOfTheWindowAndItsPanelsHasAName()
{
    QStringList wrong;
    selectEachPart([&] { wrong << namelessIn(*window_); });
    for (const char* id : panel_actions) {
        action(id)->trigger();
        QTest::qWait(30);
        wrong << namelessIn(*window_);
        for (QTabWidget* tabs : window_->findChildren<QTabWidget*>())
            for (int i = 0; i < tabs->count(); ++i) {
                tabs->setCurrentIndex(i);
                QTest::qWait(10);
                wrong << namelessIn(*window_);
            }
        if (QLatin1String(id) == QLatin1String("commissioning"))
            for (int page = 0; page < 4; ++page) {
                window_->findChild<QAbstractButton*>(QStringLiteral("commissioning-tab-%1").arg(page))
                    ->click();
                QTest::qWait(10);
                wrong << namelessIn(*window_);
            }
        if (action(id)->isCheckable() && action(id)->isChecked())
            action(id)->trigger();
        action("default-layout")->trigger();
    }
    wrong.removeDuplicates();
    for (const QString& one : wrong)
        qWarning("%s", qPrintable(one));
    QVERIFY(wrong.isEmpty());
}

void TestAccess::everyControlOfEveryOtherWindowHasAName()
{
    QStringList wrong;
    int seen = 0;
    const auto judge = [&](const QWidget& top) {
        ++seen;
        if (top.windowTitle().isEmpty() && !qobject_cast<const QMessageBox*>(&top))
            wrong << QStringLiteral("no title:") + parentsOf(top);
        wrong << namelessIn(top);
        for (QTabWidget* tabs : top.findChildren<QTabWidget*>())
            for (int i = 0; i < tabs->count(); ++i) {
                tabs->setCurrentIndex(i);
                QTest::qWait(10);
                wrong << namelessIn(top);
            }
    };
    for (const char* id : window_actions) {
        action(id)->trigger();
        QTest::qWait(50);
        for (QWidget* top : QApplication::topLevelWidgets()) {
            if (top == window_.get() || !top->isVisible() || top->windowType() == Qt::ToolTip)
                continue;
            judge(*top);
            top->close();
        }
    }
    QVERIFY(seen >= int(std::size(window_actions)));
    RecoveryOffer offer(folder_.path(), {}, window_.get());
    offer.setAttribute(Qt::WA_DeleteOnClose, false);
    offer.show();
    judge(offer);
    wrong.removeDuplicates();
    for (const QString& one : wrong)
        qWarning("%s", qPrintable(one));
    QVERIFY(wrong.isEmpty());
}

/// Walks what a screen reader walks: parents know their children, names and places are there.
void TestAccess::theTreeOfTheWindowIsSound()
{
    QStringList wrong;
    int count = 0;
    const std::function<void(QAccessibleInterface*, const QString&)> walk = [&](QAccessibleInterface* at,
                                                                                const QString& path) {
        for (int i = 0; i < at->childCount(); ++i) {
            QAccessibleInterface* child = at->child(i);
            if (!child || !child->isValid()) {
                wrong << path + QStringLiteral(": no child %1").arg(i);
                continue;
            }
            const QString name = child->text(QAccessible::Name);
            const QString here = path + QStringLiteral(" / %1 \"%2\"").arg(int(child->role())).arg(name);
            ++count;
            if (at->indexOfChild(child) != i)
                wrong << here + QStringLiteral(": is not the child it is");
            const bool drawn = child->role() == QAccessible::Graphic || child->role() == QAccessible::Grip;
            if (drawn && child->object() == nullptr && (!hasWords(name) || child->rect().isEmpty()))
                wrong << here + QStringLiteral(": no name or no place");
            if (child->role() == QAccessible::Canvas && !child->state().focusable)
                wrong << here + QStringLiteral(": cannot take the focus");
            if (path.count(u'/') < 12)
                walk(child, here);
        }
    };
    action("end-view")->trigger();
    QTest::qWait(30);
    QAccessibleInterface* root = QAccessible::queryAccessibleInterface(window_.get());
    QVERIFY(root);
    walk(root, root->text(QAccessible::Name));
    wrong.removeDuplicates();
    for (const QString& one : wrong)
        qWarning("%s", qPrintable(one));
    QVERIFY(wrong.isEmpty());
    QVERIFY(count > 300);
}

QTEST_MAIN(TestAccess)
#include "test_access.moc"
