#pragma once

#include "app/document/document.h"
#include "app/panels/field.h"

#include <QWidget>

#include <vector>

class QGridLayout;

namespace siphonwright::panels {

/// The widgets of one form. Built once per shape of form; later changes only refresh what they show.
class FormView : public QWidget {
    Q_OBJECT
public:
    FormView(Document& document, Form form, QWidget* parent = nullptr);
    ~FormView() override;

    /// Whether a form has the same rows, so that this view can show it.
    bool fits(const Form& form) const;
    /// Take the accessors of a form that fits, and show its values.
    void show(Form form);

Q_SIGNALS:
    void partWanted(const siphonwright::PartRef& part);

private:
    void addRow(QGridLayout& grid, std::size_t index);
    QWidget* editorFor(std::size_t index);
    QWidget* quantityEditor(std::size_t index);
    QWidget* textEditor(std::size_t index);
    QWidget* paragraphEditor(std::size_t index);
    QWidget* choiceEditor(std::size_t index);
    QWidget* linkEditor(std::size_t index);
    QWidget* sourceEditor(std::size_t index);
    void refresh();

    Document& document_;
    Form form_;
    std::vector<std::function<void(const Sketch&)>> refreshers_;
};

} // namespace siphonwright::panels
