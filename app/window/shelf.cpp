#include "app/window/shelf.h"

#include "app/language/in_words.h"
#include "app/window/look.h"

#include "core/sketch/templates.h"

#include <QDrag>

namespace siphonwright {
namespace {

constexpr int part_role = Qt::UserRole;
constexpr int icon_role = Qt::UserRole + 1;

} // namespace

Shelf::Shelf(QWidget* parent) : QListWidget(parent)
{
    setAccessibleName(tr("Parts to put on the drawing"));
    setDragEnabled(true);
    setDragDropMode(QAbstractItemView::DragOnly);
    setDefaultDropAction(Qt::CopyAction);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTextElideMode(Qt::ElideRight);
    setIconSize({20, 20});
    constexpr int least_px = 140; // for its title and the beginnings of names
    setMinimumWidth(least_px);
    addHeading(tr("Into the engine"));
    addPart(ShelfPart::What::port, {}, tr("Port"), QStringLiteral("port"));
    addPart(ShelfPart::What::tank, {}, tr("Surge tank"), QStringLiteral("tank"));
    addHeading(tr("Into a hose"));
    addPart(ShelfPart::What::valve, {}, tr("Isolation valve"), QStringLiteral("valve"));
    addPart(ShelfPart::What::bleed, {}, tr("Bleed point"), QStringLiteral("bleed"));
    addPart(ShelfPart::What::clip, {}, tr("Clip"), QStringLiteral("clip"));
    addHeading(tr("Heaters"));
    for (const HeaterTemplate& heater : heaterTemplates())
        addPart(ShelfPart::What::heater, heater.id, inWords(heater.title), QStringLiteral("heater"));
    addHeading(tr("Engines"));
    for (const EngineTemplate& engine : engineTemplates())
        addPart(ShelfPart::What::engine, engine.id, inWords(engine.title), QStringLiteral("engine"));
    addHeading(tr("To keep clear of"));
    addPart(ShelfPart::What::area, {}, tr("Keep-clear area"), QStringLiteral("area"));
    setCurrentRow(1);
    connect(this, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        if (item->flags().testFlag(Qt::ItemIsDragEnabled))
            Q_EMIT wanted(partOf(*item));
    });
}

void Shelf::addHeading(const QString& title)
{
    auto* item = new QListWidgetItem(title, this);
    item->setFlags(Qt::NoItemFlags);
    QFont font = item->font();
    font.setBold(true);
    item->setFont(font);
}

void Shelf::addPart(ShelfPart::What what, const std::string& template_id, const QString& title,
                    const QString& icon)
{
    auto* item = new QListWidgetItem(title, this);
    item->setToolTip(tr("%1: drag it onto the drawing, or press Enter to put it in the middle").arg(title));
    item->setData(part_role, static_cast<int>(parts_.size()));
    item->setData(icon_role, icon);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled);
    parts_.push_back(ShelfPart{what, template_id});
}

ShelfPart Shelf::partOf(const QListWidgetItem& item) const
{
    return parts_.at(static_cast<std::size_t>(item.data(part_role).toInt()));
}

void Shelf::setLook(drawing::Look look)
{
    for (int row = 0; row < count(); ++row)
        if (const QString icon = item(row)->data(icon_role).toString(); !icon.isEmpty())
            item(row)->setIcon(look::icon(icon, look));
}

QMimeData* Shelf::mimeData(const QList<QListWidgetItem*>& items) const
{
    return items.isEmpty() ? nullptr : mimeDataOf(partOf(*items.constFirst()));
}

QStringList Shelf::mimeTypes() const
{
    return std::unique_ptr<QMimeData>(mimeDataOf(ShelfPart{}))->formats();
}

/// The icon alone, beside the pointer: the drawing under it shows where the part would go.
void Shelf::startDrag(Qt::DropActions)
{
    constexpr QPoint beside(-14, -10);
    const QList<QListWidgetItem*> items = selectedItems();
    if (items.isEmpty())
        return;
    auto* drag = new QDrag(this);
    drag->setMimeData(mimeData(items));
    drag->setPixmap(items.constFirst()->icon().pixmap(iconSize()));
    drag->setHotSpot(beside);
    drag->exec(Qt::CopyAction);
}

} // namespace siphonwright
