#include "tests/language/clipped.h"

#include "app/window/elided_label.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QDockWidget>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenuBar>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTabBar>
#include <QTextDocument>
#include <QToolButton>
#include <QTreeWidget>

#include <algorithm>

using namespace siphonwright;

namespace {

constexpr int hardly_px = 2; ///< what rounding takes

QString line(const char* kind, const QString& text, int has, int needs)
{
    return QStringLiteral("%1: \"%2\" has %3 px of %4")
        .arg(QLatin1String(kind), text.left(80))
        .arg(has)
        .arg(needs);
}

bool isRich(const QLabel& label)
{
    return label.textFormat() == Qt::RichText ||
           (label.textFormat() == Qt::AutoText && Qt::mightBeRichText(label.text()));
}

int longestLine(const QFontMetrics& metrics, const QString& text)
{
    int out = 0;
    for (const QString& one : text.split(QLatin1Char('\n')))
        out = std::max(out, metrics.horizontalAdvance(one));
    return out;
}

/// How far a widget reaches out of an area that cannot be scrolled sideways.
int cutOff_px(const QWidget& widget)
{
    for (const QWidget* at = widget.parentWidget(); at; at = at->parentWidget()) {
        const auto* area = qobject_cast<const QScrollArea*>(at->parentWidget());
        if (area && area->viewport() == at && area->horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff)
            return widget.mapTo(at, QPoint(widget.width(), 0)).x() - at->width();
    }
    return 0;
}

/// In a panel whose tab is not the one in front: it is put out of sight, not hidden.
bool isBehind(const QWidget& widget)
{
    for (const QWidget* at = &widget; at; at = at->parentWidget())
        if (qobject_cast<const QDockWidget*>(at))
            return at->visibleRegion().isEmpty();
    return false;
}

template <class Widget, class Judge>
void each(const QWidget& window, const Judge& judge)
{
    for (const Widget* one : window.findChildren<Widget*>())
        if (one->window() == window.window() && one->isVisibleTo(&window) && one->isVisible() &&
            !isBehind(*one))
            judge(*one);
}

void judgeLabels(const QWidget& window, QStringList& out)
{
    each<QLabel>(window, [&](const QLabel& label) {
        if (label.text().isEmpty() || qobject_cast<const ElidedLabel*>(&label))
            return;
        if (cutOff_px(label) > hardly_px)
            out << line("label cut off", label.text(), label.width() - cutOff_px(label), label.width());
        if (label.wordWrap()) {
            const int needs = label.heightForWidth(label.width());
            if (needs > label.height() + hardly_px && label.toolTip() != label.text())
                out << line("label's height", label.text(), label.height(), needs);
            // The longest word has to fit too.
            int word = 0;
            if (!isRich(label))
                for (const QString& one : label.text().split(QRegularExpression(QStringLiteral("[\\s-]+"))))
                    word = std::max(word, label.fontMetrics().horizontalAdvance(one));
            if (word > label.contentsRect().width() + hardly_px)
                out << line("label's word", label.text(), label.contentsRect().width(), word);
            return;
        }
        if (label.sizeHint().width() > label.width() + hardly_px)
            out << line("label", label.text(), label.width(), label.sizeHint().width());
    });
}

bool showsText(const QAbstractButton& button)
{
    const auto* tool = qobject_cast<const QToolButton*>(&button);
    return !button.text().isEmpty() && !(tool && tool->toolButtonStyle() == Qt::ToolButtonIconOnly);
}

void judgeButtons(const QWidget& window, QStringList& out)
{
    each<QAbstractButton>(window, [&](const QAbstractButton& button) {
        if (!showsText(button))
            return;
        QString words = button.text();
        words.remove(QRegularExpression(QStringLiteral("&(?!&)")));
        int needs = longestLine(button.fontMetrics(), words);
        if (qobject_cast<const QCheckBox*>(&button))
            needs = button.sizeHint().width();
        if (cutOff_px(button) > hardly_px)
            out << line("button cut off", words, button.width() - cutOff_px(button), button.width());
        if (needs > button.width() + hardly_px)
            out << line("button", words, button.width(), needs);
    });
    each<QComboBox>(window, [&](const QComboBox& box) {
        constexpr int arrow_px = 18;
        const int needs = box.fontMetrics().horizontalAdvance(box.currentText()) + arrow_px;
        if (needs > box.width() + hardly_px && box.toolTip().isEmpty())
            out << line("choice", box.currentText(), box.width(), needs);
    });
}

void judgeHeads(const QWidget& window, QStringList& out)
{
    each<QTabBar>(window, [&](const QTabBar& bar) {
        for (int i = 0; i < bar.count(); ++i) {
            const int needs = bar.fontMetrics().horizontalAdvance(bar.tabText(i)) + 8;
            if (bar.isTabVisible(i) && bar.tabRect(i).width() + hardly_px < needs &&
                bar.tabToolTip(i).isEmpty())
                out << line("tab", bar.tabText(i), bar.tabRect(i).width(), needs);
        }
    });
    each<QHeaderView>(window, [&](const QHeaderView& head) {
        if (head.orientation() != Qt::Horizontal)
            return;
        for (int i = 0; i < head.count(); ++i) {
            const QString text = head.model()->headerData(i, Qt::Horizontal).toString();
            const int needs = longestLine(head.fontMetrics(), text) + 6;
            const bool wraps = head.defaultAlignment() & Qt::TextWordWrap;
            if (!head.isSectionHidden(i) && head.sectionSize(i) + hardly_px < needs && !wraps &&
                head.model()->headerData(i, Qt::Horizontal, Qt::ToolTipRole).toString().isEmpty())
                out << line("head", text, head.sectionSize(i), needs);
        }
    });
    each<QGroupBox>(window, [&](const QGroupBox& box) {
        const int needs = box.fontMetrics().horizontalAdvance(box.title()) + 10;
        if (needs > box.width() + hardly_px)
            out << line("box", box.title(), box.width(), needs);
    });
    each<QDockWidget>(window, [&](const QDockWidget& dock) {
        constexpr int buttons_px = 40;
        const int needs = dock.fontMetrics().horizontalAdvance(dock.windowTitle()) + buttons_px;
        if (!dock.titleBarWidget() && needs > dock.width() + hardly_px && dock.toolTip().isEmpty())
            out << line("panel's title", dock.windowTitle(), dock.width(), needs);
    });
    each<QMenuBar>(window, [&](const QMenuBar& bar) {
        if (bar.sizeHint().width() > bar.width() + hardly_px)
            out << line("menu bar", bar.actions().value(0)->text(), bar.width(), bar.sizeHint().width());
    });
}

} // namespace

QStringList clippedIn(const QWidget& window)
{
    QStringList out;
    judgeLabels(window, out);
    judgeButtons(window, out);
    judgeHeads(window, out);
    out.removeDuplicates();
    return out;
}

QStringList wordsIn(const QWidget& window)
{
    QStringList out = {window.windowTitle()};
    each<QLabel>(window, [&](const QLabel& label) { out << label.text(); });
    each<QAbstractButton>(window,
                          [&](const QAbstractButton& button) { out << button.text() << button.toolTip(); });
    each<QComboBox>(window, [&](const QComboBox& box) {
        for (int i = 0; i < box.count(); ++i)
            out << box.itemText(i);
    });
    each<QTabBar>(window, [&](const QTabBar& bar) {
        for (int i = 0; i < bar.count(); ++i)
            out << bar.tabText(i);
    });
    each<QGroupBox>(window, [&](const QGroupBox& box) { out << box.title(); });
    each<QLineEdit>(window, [&](const QLineEdit& edit) { out << edit.placeholderText(); });
    each<QAbstractItemView>(window, [&](const QAbstractItemView& view) {
        if (!view.model())
            return;
        const QAbstractItemModel& model = *view.model();
        for (int column = 0; column < model.columnCount(); ++column) {
            out << model.headerData(column, Qt::Horizontal).toString();
            for (int row = 0; row < model.rowCount(); ++row) {
                const QModelIndex index = model.index(row, column);
                out << index.data().toString();
                for (int below = 0; below < model.rowCount(index) && column < model.columnCount(index);
                     ++below)
                    out << model.index(below, column, index).data().toString();
            }
        }
    });
    out.removeAll(QString());
    out.removeDuplicates();
    return out;
}
