#pragma once

#include "app/commissioning/diagnoser.h"
#include "app/document/document.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QLayout;
class QVBoxLayout;

namespace siphonwright::commissioning {

/// What explains the readings: first the limits that are broken, then the next reading to take, then the
/// faults by probability, each with why, how to make sure, the fix, and a button that shows it on the
/// drawing.
class DiagnosisView : public QWidget {
    Q_OBJECT
public:
    DiagnosisView(Document& document, Selection& selection, QWidget* parent = nullptr);

    /// \param outcome null: none yet
    void show(const Outcome* outcome, bool computing, UnitSystem units);

Q_SIGNALS:
    void placeWanted(siphonwright::Vec2 at);

private:
    void clear();
    void showLimits(const std::vector<Message>& broken, UnitSystem units);
    QString stateOf(const Diagnosis& found) const;
    /// \param share nothing: it says nothing and is not shown
    void addGroup(const SuspectGroup& group, std::optional<double> share, UnitSystem units);
    QLayout* chanceOf(double share);
    QWidget* lineFor(const Suspect& suspect, bool first, UnitSystem units);
    QLabel* label(const QString& words, int text_px, bool strong = false);

    Document& document_;
    Selection& selection_;
    QLabel* limits_; ///< that are broken
    QLabel* state_;
    QLabel* next_;
    QVBoxLayout* groups_;
};

} // namespace siphonwright::commissioning
