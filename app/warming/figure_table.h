#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/sketch.h"

#include <QCoreApplication>
#include <QStringList>

#include <optional>

class QTableWidget;
class QWidget;

/// Tables of figures of how a job runs, one case a row.
namespace siphonwright::warming {

QTableWidget* figureTable(const QStringList& headings, QWidget* parent);

/// Fills a row; what passes a limit, and a row that stands out, is in bold.
void showRow(QTableWidget& table, int row, const QStringList& cells, bool stands_out, const QString& tip);

/// Figures in a sketch's units and by its limits: one over its limit says so by sign and word.
class FigureWords {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::warming)

public:
    explicit FigureWords(const Sketch& sketch);

    QString flow(double flow_l_per_min, bool runs_forward) const;
    QString outlet(const std::optional<double>& degC) const;
    QString cycles(double per_hour) const;
    QString target(const std::optional<double>& hours) const;

private:
    const Sketch& sketch_;
    UnitSystem units_;
};

} // namespace siphonwright::warming
