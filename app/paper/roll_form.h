#pragma once

#include "app/paper/entry.h"
#include "app/paper/paperwork.h"

#include <QWidget>

class QCheckBox;
class QGridLayout;
class QLabel;

namespace siphonwright::paper {

/// How hose is bought and cut: lengths of roll for each bore, allowance, vehicles.
class RollForm : public QWidget {
    Q_OBJECT
public:
    explicit RollForm(Document& document, QWidget* parent = nullptr);
    void show(const Paperwork& paperwork);

private:
    struct Line {
        std::optional<double> bore_mm; ///< nothing: any bore
        QLabel* label;
        EntryLine* rolls;
    };
    Line addLine(const std::optional<double>& bore_mm);
    QString takeRolls(const std::optional<double>& bore_mm, const QString& typed);
    QString takeAllowance(const QString& typed);
    QString takeVehicles(const QString& typed);

    Document& document_;
    QGridLayout* grid_;
    EntryLine* vehicles_;
    EntryLine* allowance_;
    QCheckBox* whole_rolls_;
    QLabel* problem_;
    std::vector<Line> lines_;
};

} // namespace siphonwright::paper
