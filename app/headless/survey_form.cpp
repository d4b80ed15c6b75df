#include "app/headless/commands.h"
#include "app/survey/blank_form.h"

#include <QCoreApplication>
#include <QTextStream>

namespace siphonwright::headless {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("Headless", text);
}

} // namespace

int surveyForm(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    survey::BlankForm form;
    QString path;
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString argument = arguments[i];
        if (const auto name = valueOf(arguments, i, QStringLiteral("--paper"))) {
            const auto paper = sheet::paperByName(*name);
            if (paper != sheet::Paper::a4 && paper != sheet::Paper::letter) {
                err << tr("\"%1\" is no paper for the form; A4 or Letter is.").arg(*name) << '\n';
                return not_understood;
            }
            form.paper = *paper;
        } else if (argument == QLatin1String("--inch")) {
            form.units = UnitSystem::inch;
        } else if (argument.startsWith(QLatin1String("--")) || !path.isEmpty()) {
            err << tr("survey-form does not know what to do with \"%1\".").arg(argument) << '\n';
            return not_understood;
        } else {
            path = argument;
        }
    }
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
