#include "app/window/snap_menu.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/window/settings.h"

#include "core/quantity/quantity.h"

#include <QInputDialog>
#include <QMenu>

namespace siphonwright {

namespace {

struct SnapRow {
    const char* id;
    Setting<bool> setting;
    SnapKind kind;
};
const SnapRow rows[] = {
    {"snap-grid", {"drawing/snap-grid", true}, SnapKind::grid},
    {"snap-points", {"drawing/snap-points", true}, SnapKind::point},
    {"snap-level", {"drawing/snap-level", true}, SnapKind::level},
    {"snap-plumb", {"drawing/snap-plumb", true}, SnapKind::plumb},
    {"snap-rise", {"drawing/snap-rise", true}, SnapKind::rise},
    {"snap-radius", {"drawing/snap-radius", true}, SnapKind::radius},
    {"snap-tangent", {"drawing/snap-tangent", true}, SnapKind::tangent},
    {"snap-limits", {"drawing/snap-limits", true}, SnapKind::limit},
};

QString slopeText(double slope)
{
    return inWords(slope, Unit::slope, UnitSystem::metric);
}

bool usable(double slope)
{
    return slope >= 0.001 && slope <= 0.5; // flatter is level, steeper nobody calls a slope
}

void askSlope(ElevationView& view)
{
    auto* dialog = new QInputDialog(&view);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(tr("Slope to snap to"));
    dialog->setLabelText(tr("Rise over length, from 1 in 2 to 1 in 1000, such as 1:50 or 2 %:"));
    dialog->setTextValue(slopeText(settings::snap_slope.get()));
    QObject::connect(dialog, &QInputDialog::textValueSelected, &view, [&view](const QString& typed) {
        const std::optional<double> slope =
            parse(typedQuantity(typed, Unit::slope), Unit::slope, UnitSystem::metric);
        if (!slope || !usable(*slope)) {
            askSlope(view); // with what held before
            return;
        }
        settings::snap_slope.set(*slope);
        view.setSnapSlope(*slope);
    });
    dialog->open();
}

} // namespace

void fillSnapMenu(QMenu& menu, const Actions& actions, ElevationView& view)
{
    menu.setToolTipsVisible(true);
    for (const SnapRow& row : rows) {
        QAction* action = actions[QString::fromLatin1(row.id)];
        action->setChecked(row.setting.get());
        view.setSnapTo(row.kind, row.setting.get());
        QObject::connect(action, &QAction::toggled, &view, [&view, &row](bool on) {
            row.setting.set(on);
            view.setSnapTo(row.kind, on);
        });
        menu.addAction(action);
    }
    menu.addSeparator();
    const double slope = settings::snap_slope.get();
    view.setSnapSlope(usable(slope) ? slope : settings::snap_slope.standard);
    QAction* ask = actions[QStringLiteral("snap-slope")];
    menu.addAction(ask);
    QObject::connect(ask, &QAction::triggered, &view, [&view] { askSlope(view); });
}

} // namespace siphonwright
