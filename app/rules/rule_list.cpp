#include "app/rules/rule_list.h"

#include "app/drawing/balloon.h"
#include "app/rules/rule_choices.h"
#include "app/rules/rule_drawings.h"

#include <QPainter>

#include <algorithm>
#include <map>

namespace siphonwright::rules {

namespace {

constexpr int mark_px = 16;
constexpr int row_px = 21;

/// Severity by shape, as on the drawing; a dotted circle for what was not judged. On the selected row all of
/// it is in the colour of that row's text.
QPixmap drawnMark(std::optional<Severity> severity, bool not_judged, drawing::Look look, bool selected)
{
    drawing::Palette palette = drawing::paletteOf(look);
    if (selected) {
        palette.stop = palette.caution = palette.advice = palette.faint = palette.ground;
        palette.ground = palette.accent;
    }
    constexpr int sharp = 2;
    QPixmap mark(mark_px * sharp, mark_px * sharp);
    mark.setDevicePixelRatio(sharp);
    mark.fill(Qt::transparent);
    QPainter painter(&mark);
    painter.setRenderHint(QPainter::Antialiasing);
    if (severity) {
        const bool low = *severity == Severity::caution; // a triangle's middle is under its box's
        drawing::paintMark(painter, palette, {mark_px / 2.0, mark_px / 2.0 + (low ? 1.2 : 0)}, low ? 4.8 : 6,
                           *severity, 1.4);
    } else if (not_judged) {
        painter.setPen(QPen(palette.faint, 1.2, Qt::DotLine));
        painter.drawEllipse(QPointF(mark_px / 2.0, mark_px / 2.0), 6, 6);
    }
    return mark;
}

} // namespace

RuleList::RuleList(Document& document, QObject* parent) : QStandardItemModel(parent), document_(document)
{
    setColumnCount(2);
    std::map<Group, QStandardItem*> groups;
    for (const Rule& rule : ruleBook())
        groups[groupOf(rule.id)] = nullptr;
    for (auto& [group, item] : groups) {
        item = new QStandardItem(titleOf(group));
        QFont strong = item->font();
        strong.setBold(true);
        item->setFont(strong);
        item->setFlags(Qt::NoItemFlags); // the keys go from rule to rule
        item->setSizeHint({0, row_px});
        auto* beside = new QStandardItem;
        beside->setFlags(Qt::NoItemFlags);
        appendRow({item, beside});
    }
    for (const Rule& rule : ruleBook()) {
        auto* item = new QStandardItem(words(rule.title));
        item->setEditable(false);
        item->setSizeHint({0, row_px});
        item->setData(words(rule.id), rule_role);
        item->setData(QStringList{words(rule.title), words(rule.id), words(rule.why), words(rule.fix)}.join(
                          QLatin1Char('\n')),
                      search_role);
        auto* state = new QStandardItem;
        state->setEditable(false);
        groups[groupOf(rule.id)]->appendRow({item, state});
        rows_.emplace_back(&rule, item);
    }
    connect(&document_, &Document::changed, this, &RuleList::refresh);
    connect(&document_, &Document::analysed, this, &RuleList::refresh);
    refresh();
}

void RuleList::setLook(drawing::Look look)
{
    look_ = look;
    refresh();
}

QModelIndex RuleList::indexOf(const QString& rule) const
{
    for (const auto& [known, item] : rows_)
        if (words(known->id) == rule)
            return indexFromItem(item);
    return {};
}

void RuleList::refresh()
{
    for (const auto& [rule, item] : rows_) {
        const QString state = stateOf(*rule);
        const QString found = foundBy(*rule);
        item->setIcon(markOf(*rule));
        item->parent()->child(item->row(), 1)->setText(state);
        item->setToolTip(found.isEmpty() ? words(rule->title)
                                         : QStringLiteral("%1: %2").arg(words(rule->title), found));
        QStringList spoken{words(rule->title)};
        if (!found.isEmpty())
            spoken += found;
        if (!state.isEmpty())
            spoken += state;
        item->setData(spoken.join(QStringLiteral(", ")), Qt::AccessibleTextRole);
    }
}

QString RuleList::stateOf(const Rule& rule) const
{
    const LimitChange* change = changeOf(document_.sketch(), rule.id);
    return !change ? QString() : change->off ? tr("off") : tr("changed");
}

QString RuleList::foundBy(const Rule& rule) const
{
    const std::optional<Severity> worst = worstOf(document_.analysis(), rule.id);
    if (!worst)
        return lacksAFact(document_.analysis(), rule.id) ? tr("not judged here") : QString();
    return *worst == Severity::stop      ? tr("stops the job")
           : *worst == Severity::caution ? tr("a caution")
                                         : tr("an advice");
}

QIcon RuleList::markOf(const Rule& rule) const
{
    const std::optional<Severity> worst = worstOf(document_.analysis(), rule.id);
    const bool not_judged = lacksAFact(document_.analysis(), rule.id);
    QIcon mark(drawnMark(worst, not_judged, look_, false));
    mark.addPixmap(drawnMark(worst, not_judged, look_, true), QIcon::Selected);
    return mark;
}

void RuleSearch::searchFor(const QString& words)
{
    words_ = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    invalidateFilter();
}

bool RuleSearch::filterAcceptsRow(int row, const QModelIndex& parent) const
{
    const QModelIndex index = sourceModel()->index(row, 0, parent);
    // A group stays for the sake of its rules.
    if (!parent.isValid()) {
        for (int i = 0; i < sourceModel()->rowCount(index); ++i)
            if (filterAcceptsRow(i, index))
                return true;
        return false;
    }
    const QString text = index.data(RuleList::search_role).toString();
    return std::all_of(words_.begin(), words_.end(),
                       [&text](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

} // namespace siphonwright::rules
