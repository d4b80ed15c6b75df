#pragma once

#include "app/document/document.h"

#include <QWidget>

class QLabel;
class QScrollArea;

namespace siphonwright::panels {

class FormView;

/// What is known of the selected part, to be read and typed over; with nothing selected, of the whole
/// drawing.
class DetailsPanel : public QWidget {
    Q_OBJECT
public:
    DetailsPanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    /// Put the keyboard on the first field, or on the name where the part has one.
    void focusField(bool name);

private:
    void refresh();
    QWidget* pageOf(FormView& form);
    void showMargins();
    void showRunning();

    Document& document_;
    Selection& selection_;
    QLabel* title_;
    QScrollArea* scroll_;
    QLabel* running_ = nullptr; ///< how a heater's loop runs, over its form
    QLabel* margins_ = nullptr; ///< what is left before a rule is broken, under it
    FormView* form_ = nullptr;
    PartRef shown_;
};

} // namespace siphonwright::panels
