#include "app/canvas/accessible_view.h"

#include "app/canvas/part_names.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/sketch/edits.h"

#include <QAccessibleWidget>
#include <QContextMenuEvent>
#include <QCoreApplication>
#include <QPointer>

#include <algorithm>
#include <map>

namespace siphonwright {
namespace {

/// One part of the drawing.
class AccessiblePart : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    AccessiblePart(ElevationView& view, PartRef part) : view_(&view), part_(std::move(part)) {}

    const PartRef& part() const { return part_; }
    bool isValid() const override { return view_ && exists(view_->document().sketch(), part_); }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return view_ ? view_->window()->windowHandle() : nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(view_); }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QString text(QAccessible::Text what) const override;
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override;
    QAccessible::Role role() const override;
    QAccessible::State state() const override;

    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }
    QStringList actionNames() const override
    {
        return {pressAction(), toggleAction(), showMenuAction(), setFocusAction()};
    }
    void doAction(const QString& name) override;
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    QString description() const;

    QPointer<ElevationView> view_;
    PartRef part_;
};

/// Where it is, whether it is open, and how much is found to be wrong with it.
QString AccessiblePart::description() const
{
    const Sketch& sketch = view_->document().sketch();
    const UnitSystem units = sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    const auto length = [units](double mm) { return inWords(mm, Unit::mm, units); };
    QStringList out;
    if (const std::optional<Vec3> at = positionOf(sketch, part_))
        out << siphonwright::tr("along %1, height %2").arg(length(at->x), length(at->z));
    if (part_.kind == PartKind::inline_part) {
        const InlinePart& found = sketch.hose(part_.id)->parts[part_.index];
        out << (found.open ? siphonwright::tr("open") : siphonwright::tr("closed"));
    }
    const auto& findings = view_->document().analysis().findings;
    const auto count = std::count_if(findings.begin(), findings.end(),
                                     [this](const Finding& finding) { return finding.part == part_; });
    if (count > 0)
        out << siphonwright::tr("findings: %1").arg(count);
    return out.join(QStringLiteral("; "));
}

QString AccessiblePart::text(QAccessible::Text what) const
{
    if (!isValid())
        return {};
    if (what == QAccessible::Name)
        return spokenName(view_->document().sketch(), part_);
    return what == QAccessible::Description ? description() : QString();
}

QRect AccessiblePart::rect() const
{
    if (!isValid())
        return {};
    const QRect on_view = view_->rectOf(part_).toAlignedRect();
    return {view_->mapToGlobal(on_view.topLeft()), on_view.size()};
}

QAccessible::Role AccessiblePart::role() const
{
    switch (part_.kind) {
    case PartKind::hose_point:
    case PartKind::hose_end:
    case PartKind::engine_corner:
    case PartKind::jacket_corner:
    case PartKind::area_corner:
        return QAccessible::Grip;
    default:
        return QAccessible::Graphic;
    }
}

QAccessible::State AccessiblePart::state() const
{
    QAccessible::State state;
    if (!isValid()) {
        state.invalid = true;
        return state;
    }
    const Selection& selection = view_->selection();
    state.focusable = true;
    state.selectable = true;
    state.multiSelectable = true;
    state.extSelectable = true;
    state.movable = true;
    state.selected = selection.contains(part_);
    state.focused = view_->hasFocus() && selection.part() == part_;
    state.offscreen = !view_->rectOf(part_).intersects(QRectF(view_->rect()));
    state.invisible = !view_->isVisible();
    return state;
}

void AccessiblePart::doAction(const QString& name)
{
    if (!isValid())
        return;
    view_->setTool(ToolKind::select);
    if (name == toggleAction()) {
        view_->selection().toggle(part_);
        return;
    }
    view_->selection().select(part_);
    if (name == setFocusAction())
        view_->setFocus(Qt::OtherFocusReason);
    if (name == showMenuAction()) {
        QContextMenuEvent event(QContextMenuEvent::Keyboard, QPoint(), QPoint());
        QCoreApplication::sendEvent(view_, &event);
    }
}

/// The view with its parts, and after them the widgets that lie on it.
class AccessibleElevation : public QAccessibleWidget {
public:
    explicit AccessibleElevation(ElevationView* view)
        : QAccessibleWidget(view, QAccessible::Canvas, view->accessibleName()), view_(*view)
    {}
    ~AccessibleElevation() override
    {
        for (const auto& [part, id] : ids_)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override
    {
        return static_cast<int>(view_.thingCount()) + QAccessibleWidget::childCount();
    }
    QAccessibleInterface* child(int index) const override;
    int indexOfChild(const QAccessibleInterface* child) const override;
    QAccessibleInterface* childAt(int x, int y) const override;
    QAccessibleInterface* focusChild() const override;

private:
    QAccessibleInterface* interfaceOf(const PartRef& part) const;

    ElevationView& view_;
    mutable std::map<PartRef, QAccessible::Id> ids_; ///< of the parts that were asked for
};

QAccessibleInterface* AccessibleElevation::interfaceOf(const PartRef& part) const
{
    const auto known = ids_.find(part);
    if (known != ids_.end())
        return QAccessible::accessibleInterface(known->second);
    auto* made = new AccessiblePart(view_, part);
    ids_[part] = QAccessible::registerAccessibleInterface(made);
    return made;
}

QAccessibleInterface* AccessibleElevation::child(int index) const
{
    const std::vector<PartRef> things = view_.things();
    const auto count = static_cast<int>(things.size());
    if (index < 0)
        return nullptr;
    return index < count ? interfaceOf(things[static_cast<std::size_t>(index)])
                         : QAccessibleWidget::child(index - count);
}

int AccessibleElevation::indexOfChild(const QAccessibleInterface* child) const
{
    const std::vector<PartRef> things = view_.things();
    if (const auto* part = dynamic_cast<const AccessiblePart*>(child)) {
        const auto at = std::find(things.begin(), things.end(), part->part());
        return at == things.end() ? -1 : static_cast<int>(at - things.begin());
    }
    const int among_widgets = QAccessibleWidget::indexOfChild(child);
    return among_widgets < 0 ? -1 : among_widgets + static_cast<int>(things.size());
}

/// The part that a click there would select.
QAccessibleInterface* AccessibleElevation::childAt(int x, int y) const
{
    if (QAccessibleInterface* widget = QAccessibleWidget::childAt(x, y))
        return widget;
    const PartRef part = view_.partAt(view_.mapFromGlobal(QPoint(x, y)));
    return part.kind == PartKind::nothing ? nullptr : interfaceOf(part);
}

QAccessibleInterface* AccessibleElevation::focusChild() const
{
    const PartRef& part = view_.selection().part();
    if (view_.hasFocus() && part.kind != PartKind::nothing)
        return interfaceOf(part);
    return QAccessibleWidget::focusChild();
}

QAccessibleInterface* accessibleElevation(const QString&, QObject* object)
{
    auto* view = qobject_cast<ElevationView*>(object);
    return view ? new AccessibleElevation(view) : nullptr;
}

int indexOf(const ElevationView& view, const PartRef& part)
{
    const std::vector<PartRef> things = view.things();
    const auto at = std::find(things.begin(), things.end(), part);
    return at == things.end() ? -1 : static_cast<int>(at - things.begin());
}

} // namespace

void makeElevationAccessible()
{
    QAccessible::installFactory(&accessibleElevation); // a second time changes nothing
}

void announceSelection(ElevationView& view)
{
    if (!QAccessible::isActive())
        return;
    const int index = indexOf(view, view.selection().part());
    QAccessibleEvent selected(&view, QAccessible::SelectionWithin);
    QAccessible::updateAccessibility(&selected);
    if (!view.hasFocus() || index < 0)
        return;
    QAccessibleEvent focused(&view, QAccessible::Focus);
    focused.setChild(index);
    QAccessible::updateAccessibility(&focused);
}

void announceParts(ElevationView& view)
{
    if (!QAccessible::isActive())
        return;
    QAccessibleEvent changed(&view, QAccessible::ObjectReorder);
    QAccessible::updateAccessibility(&changed);
}

} // namespace siphonwright
