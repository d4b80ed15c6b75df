#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"
#include "app/survey/blank_form.h"

#include <QObject>

class QWidget;

namespace siphonwright {

class FileCommands;
namespace survey {
class SurveyWindow;
}

/// The survey's window and its blank form, in a file or on paper.
class SurveyCommands : public QObject {
    Q_OBJECT
public:
    SurveyCommands(Document& document, FileCommands& files, QWidget& window);

    void show();
    void setLook(drawing::Look look);
    void exportForm();
    void exportFormTo(const QString& path);
    void printForm();
    survey::BlankForm form() const;

Q_SIGNALS:
    void drawn(); ///< the engine, from the survey

private:
    Document& document_;
    FileCommands& files_;
    QWidget& window_;
    survey::SurveyWindow* survey_ = nullptr; ///< made when it is first wanted
    drawing::Look look_ = drawing::Look::light;
};

} // namespace siphonwright
