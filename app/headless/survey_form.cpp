#include "app/headless/commands.h"
#include "app/language/tr.h"
#include "app/survey/blank_form.h"

#include <QTextStream>

namespace siphonwright::headless {

int surveyForm(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command =
        understood(arguments,
                   {"survey-form",
                    {"--inch"},
                    {{"--paper", QT_TRANSLATE_NOOP("siphonwright::headless", "A4 or Letter")}},
                    1,
                    QT_TRANSLATE_NOOP("siphonwright::headless", "a file to write, OUT.pdf")},
                   err);
    if (!command)
        return not_understood;
    survey::BlankForm form;
    if (const auto name = command->value("--paper")) {
        const auto paper = sheet::paperByName(*name);
        if (paper != sheet::Paper::a4 && paper != sheet::Paper::letter) {
            err << tr("\"%1\" is no paper for the form; A4 or Letter is.").arg(*name) << '\n';
            return not_understood;
        }
        form.paper = *paper;
    }
    if (command->has("--inch"))
        form.units = UnitSystem::inch;
    const QString& path = command->files[0];
    if (!path.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) {
        err << tr("survey-form needs a file to write, OUT.pdf.") << '\n';
        return not_understood;
    }
    const QStringList problems = survey::exportBlankForm(path, form);
    for (const QString& problem : problems)
        err << problem << '\n';
    if (!problems.isEmpty())
        return not_understood;
    out << tr("%1 written.").arg(path) << '\n';
    return nothing_stops;
}

} // namespace siphonwright::headless
