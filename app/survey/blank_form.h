#pragma once

#include "app/drawing/elevation.h"
#include "app/sheet/sheet.h"

#include "core/quantity/quantity.h"

#include <QPageLayout>
#include <QStringList>

class QPainter;

/// The blank survey form: one page to be filled in with a pen at the vehicle.
namespace siphonwright::survey {

struct BlankForm {
    sheet::Paper paper = sheet::Paper::a4; ///< A4 or Letter, upright
    UnitSystem units = UnitSystem::metric; ///< named in the table's heads
    QString vehicle;                       ///< written in already, if known
};

QSizeF pageSize(const BlankForm& form); ///< mm
QPageLayout pageLayout(const BlankForm& form);

/// The painter's unit is 1 mm on paper, origin at the page's top left corner.
void paintBlankForm(QPainter& painter, const BlankForm& form);

/// Write as PDF. @return sentences saying what went wrong; empty: done.
QStringList exportBlankForm(const QString& path, const BlankForm& form, const PutFile& put = putFile);

/// The side elevation with the letters on it, fitted into an area; on the form and in the window alike.
void paintLetteredElevation(QPainter& painter, const QRectF& area, const drawing::Palette& palette);

} // namespace siphonwright::survey
