#pragma once

#include "app/paper/paperwork.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace siphonwright::paper {

class CutBars;
class RollForm;

/// The parts list over the cut plan. A click on a row selects where the item is used on the drawing, the next
/// click on it the next place.
class PartsPage : public QWidget {
    Q_OBJECT
public:
    PartsPage(Document& document, Selection& selection, QWidget* parent = nullptr);
    void show(const Paperwork& paperwork);

private:
    void fill(int row, const PartRow& part, const PartsList& parts);
    void selectNext(int row);

    Document& document_;
    Selection& selection_;
    QTableWidget* table_;
    QLabel* remark_;
    RollForm* rolls_;
    CutBars* bars_;
    std::vector<PartRow> rows_;
};

} // namespace siphonwright::paper
