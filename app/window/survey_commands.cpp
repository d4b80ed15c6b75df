#include "app/window/survey_commands.h"

#include "app/survey/survey_window.h"
#include "app/window/file_commands.h"
#include "app/window/file_dialog.h"
#include "app/window/print_dialogs.h"
#include "app/window/settings.h"

#include <QAction>
#include <QFileDialog>
#include <QPainter>
#include <QPrinter>

namespace siphonwright {

SurveyCommands::SurveyCommands(Document& document, FileCommands& files, QWidget& window)
    : QObject(&window), document_(document), files_(files), window_(window)
{}

void SurveyCommands::show()
{
    if (!survey_) {
        survey_ = new survey::SurveyWindow(document_, &window_);
        survey_->setLook(look_);
        for (const char* id : {"undo", "redo"})
            survey_->addAction(window_.findChild<QAction*>(QString::fromLatin1(id)));
        connect(survey_, &survey::SurveyWindow::drawn, this, &SurveyCommands::drawn);
        connect(survey_, &survey::SurveyWindow::formWanted, this, &SurveyCommands::exportForm);
        connect(survey_, &survey::SurveyWindow::printWanted, this, &SurveyCommands::printForm);
    }
    survey_->show();
    survey_->raise();
    survey_->activateWindow();
}

void SurveyCommands::setLook(drawing::Look look)
{
    look_ = look;
    if (survey_)
        survey_->setLook(look);
}

survey::BlankForm SurveyCommands::form() const
{
    const bool inch = document_.sketch().units == UnitChoice::inch;
    survey::BlankForm form;
    form.units = inch ? UnitSystem::inch : UnitSystem::metric;
    const int chosen = settings::paper.get();
    const bool letter =
        chosen == static_cast<int>(sheet::Paper::letter) || chosen == static_cast<int>(sheet::Paper::tabloid);
    form.paper = letter || (chosen < 0 && inch) ? sheet::Paper::letter : sheet::Paper::a4;
    form.vehicle = QString::fromStdString(document_.sketch().sheet.vehicle);
    return form;
}

void SurveyCommands::exportForm()
{
    QWidget* over = survey_ && survey_->isVisible() ? static_cast<QWidget*>(survey_) : &window_;
    QFileDialog* dialog = newFileDialog(over, tr("Blank survey form"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters({tr("PDF (*.pdf)")});
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(QStringLiteral("survey-form.pdf"));
    connect(dialog, &QFileDialog::fileSelected, this, &SurveyCommands::exportFormTo);
    dialog->open();
}

void SurveyCommands::exportFormTo(const QString& path)
{
    const QStringList problems = survey::exportBlankForm(path, form(), files_.put());
    if (!problems.isEmpty())
        files_.tell(tr("The form could not be written."), problems);
}

void SurveyCommands::printForm()
{
    QWidget* over = survey_ && survey_->isVisible() ? static_cast<QWidget*>(survey_) : &window_;
    printing::print(*over, survey::pageLayout(form()), *this, files_, [this](QPrinter& printer) {
        QPainter painter(&printer);
        painter.scale(printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
        survey::paintBlankForm(painter, form());
    });
}

} // namespace siphonwright
