#include "app/window/about.h"

#include <QCoreApplication>
#include <QMessageBox>

namespace siphonwright {

namespace {

struct AboutText {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::AboutText)
};

void show(QWidget& window, const QString& title, const QString& text)
{
    auto* box = new QMessageBox(QMessageBox::NoIcon, title, text, QMessageBox::Ok, &window);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setTextFormat(Qt::RichText);
    box->open();
}

} // namespace

QStringList cautions()
{
    return {
        AboutText::tr(
            "Work is for a qualified technician. The heater's and the engine's own manuals rule over this "
            "program; its figures are estimates from stated assumptions."),
        AboutText::tr(
            "Disconnect and lock out the power while working. Inhibit a generator's automatic start. "
            "Chock the wheels, block air suspension, never work under an unsupported vehicle."),
        AboutText::tr("Open the cap only when the engine is cold: hot coolant is under pressure and scalds."),
        AboutText::tr(
            "Turn the heater off before a valve is closed. With both valves closed the heater is a sealed "
            "vessel, and pressure builds up."),
        AboutText::tr(
            "Never turn the heater on without coolant in its chamber, nor before the loop is purged."),
        AboutText::tr("Run the engine outdoors or with the exhaust extracted."),
        AboutText::tr("Grounded supply, the local electrical code and a licensed electrician."),
        AboutText::tr("Antifreeze is poisonous. Catch it and dispose of it properly."),
    };
}

void showCautions(QWidget& window)
{
    QString items;
    for (const QString& caution : cautions())
        items += QStringLiteral("<li style='margin-bottom:6px'>%1</li>").arg(caution.toHtmlEscaped());
    show(window, AboutText::tr("Cautions"), QStringLiteral("<ul>%1</ul>").arg(items));
}

void showAbout(QWidget& window)
{
    show(window, AboutText::tr("About Siphonwright"),
         AboutText::tr(
             "<h3>Siphonwright %1</h3><p>Draws, checks and hands over installations of tank-type coolant "
             "heaters.</p><p>Findings are estimates from stated assumptions and common practice; each "
             "names its basis. What was not entered is not judged.</p><p>Built with Qt under the LGPL 3 and "
             "JSON for Modern C++ under the MIT licence; lettering in Inter under the SIL Open Font "
             "Licence 1.1.</p>")
             .arg(QStringLiteral(SIPHONWRIGHT_VERSION)));
}

void refuseAirCooled(QWidget& window)
{
    show(window, AboutText::tr("Air-cooled engine"),
         AboutText::tr(
             "An air-cooled engine has no water jacket: there is no coolant for a tank heater to draw in "
             "and to warm, so it cannot be drawn here."));
}

} // namespace siphonwright
