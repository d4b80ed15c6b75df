#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace siphonwright::survey {

/// A window of its own: what was measured at the vehicle, letter by letter, and the engine drawn from it.
class SurveyWindow : public QWidget {
    Q_OBJECT
public:
    explicit SurveyWindow(Document& document, QWidget* parent = nullptr);

    void setLook(drawing::Look look);
    /// One step to undo.
    void drawEngine();

Q_SIGNALS:
    void drawn();       ///< the engine, just now
    void formWanted();  ///< the blank form as a file
    void printWanted(); ///< or on paper

private:
    void refresh();

    Document& document_;
    QLabel* report_;
    QPushButton* draw_;
    QWidget* picture_;
};

/// What a survey leaves open, sentence by sentence, contradictions first.
QStringList reportSentences(const Sketch& sketch);

} // namespace siphonwright::survey
