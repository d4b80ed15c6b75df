#pragma once

#include "app/document/document.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace siphonwright::warming {

/// How the job runs on the level and parked at each end of the grades that it is judged over. Double-click
/// shows the drawing on that grade.
class GradeTable : public QWidget {
    Q_OBJECT
public:
    explicit GradeTable(Document& document, QWidget* parent = nullptr);

    QSize minimumSizeHint() const override { return {240, 84}; }
    QSize sizeHint() const override { return {600, 200}; }

private:
    void refresh();
    void fill(int row, Grade grade, const Running& running, const EngineWarmUp& warm);
    void showGrade(int row);

    Document& document_;
    QLabel* remark_;
    QTableWidget* table_;
};

} // namespace siphonwright::warming
