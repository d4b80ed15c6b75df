#pragma once

#include "app/commissioning/diagnoser.h"
#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QWidget>

class QComboBox;
class QStackedWidget;
class QToolButton;

namespace siphonwright::commissioning {

class DiagnosisView;
class ReadingsView;
class StepList;
class StepView;

/// The work at the vehicle: one step at a time, all steps, readings, and what explains them.
class CommissioningPanel : public QWidget {
    Q_OBJECT
public:
    CommissioningPanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    enum class Page { step, steps, readings, diagnosis };
    void open(Page page);
    /// For another drawing: at the first step that is open.
    void restart();
    void setLook(drawing::Look look);
    QSize sizeHint() const override { return {400, 600}; }
    QSize minimumSizeHint() const override { return {340, 300}; }

Q_SIGNALS:
    void printWanted();
    void exportWanted();
    void placeWanted(siphonwright::Vec2 at); ///< to be seen on the drawing

protected:
    void showEvent(QShowEvent* event) override;

private:
    void layOut();
    void refresh();
    void takeOutcome();
    Id heater() const;

    Document& document_;
    QComboBox* heaters_;
    std::vector<QToolButton*> tabs_;
    QStackedWidget* pages_;
    StepView* step_;
    StepList* steps_;
    ReadingsView* readings_;
    DiagnosisView* diagnosis_;
    std::optional<Outcome> outcome_;
    std::optional<Sketch> asked_; ///< what is being computed, or was last
    Id asked_heater_;
    Diagnoser* diagnoser_;
};

} // namespace siphonwright::commissioning
