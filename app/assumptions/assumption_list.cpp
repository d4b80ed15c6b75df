#include "app/assumptions/assumption_list.h"

#include "app/assumptions/assumption_choices.h"
#include "app/language/in_words.h"
#include "app/panels/field.h"

#include <algorithm>

namespace siphonwright::assumptions {

AssumptionList::AssumptionList(Document& document, QObject* parent)
    : QStandardItemModel(parent), document_(document)
{
    setHorizontalHeaderLabels(
        {tr("Assumption"), tr("In force"), tr("Changed"), tr("Range"), tr("Drives here"), tr("Basis")});
    for (const Assumption& row : assumptionBook()) {
        QList<QStandardItem*> items;
        for (int column = 0; column < column_count; ++column) {
            items << new QStandardItem;
            items.back()->setEditable(false);
        }
        items[title]->setText(words(row.title));
        items[basis]->setText(words(row.basis));
        items[title]->setData(words(row.title) + QLatin1Char('\n') + words(row.basis) + QLatin1Char('\n') +
                                  words(row.id),
                              search_role);
        for (QStandardItem* item : items)
            item->setToolTip(words(row.title) + QLatin1Char('\n') + words(row.basis));
        appendRow(items);
    }
    connect(&document_, &Document::changed, this, &AssumptionList::refresh);
    connect(&document_, &Document::analysed, this, &AssumptionList::refresh);
    refresh();
}

/// Bands come a second after the rest; until then nothing is said of what they would show.
QString AssumptionList::drivenText(std::size_t row) const
{
    const Analysis& analysis = document_.analysis();
    if (!analysis.proof || analysis.proof->bands.empty())
        return QStringLiteral("–");
    const QStringList driven = drivenBy(analysis, static_cast<Assumed>(row));
    return driven.isEmpty() ? tr("little") : driven.join(QStringLiteral(", "));
}

void AssumptionList::refresh()
{
    const UnitSystem units = panels::unitsOf(document_.sketch());
    const Assumptions now(document_.sketch());
    const std::span<const Assumption> book = assumptionBook();
    const auto put = [this](std::size_t row, Column column, const QString& text) {
        QStandardItem* cell = item(static_cast<int>(row), column);
        if (cell->text() != text)
            cell->setText(text);
    };
    for (std::size_t i = 0; i < book.size(); ++i) {
        const auto which = static_cast<Assumed>(i);
        const auto text = [&](double value) {
            return withDecimalSign(inWords(valueText(book[i], value, units)));
        };
        put(i, in_force, text(now[which]));
        put(i, changed, now.changed(which) ? tr("changed") : QString());
        put(i, range,
            now.changed(which)           ? tr("held")
            : book[i].low < book[i].high ? tr("%1 to %2").arg(text(book[i].low), text(book[i].high))
                                         : QStringLiteral("–"));
        put(i, drives, drivenText(i));
    }
}

void AssumptionSearch::searchFor(const QString& words)
{
    words_ = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    invalidateFilter();
}

bool AssumptionSearch::filterAcceptsRow(int row, const QModelIndex& parent) const
{
    const QString text =
        sourceModel()->index(row, AssumptionList::title, parent).data(AssumptionList::search_role).toString();
    return std::all_of(words_.begin(), words_.end(),
                       [&text](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

} // namespace siphonwright::assumptions
