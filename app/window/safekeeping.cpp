#include "app/window/safekeeping.h"

#include "app/window/file_commands.h"
#include "app/window/file_strip.h"
#include "app/window/recovery_offer.h"

namespace siphonwright {

Safekeeping::Safekeeping(Document& document, FileCommands& files, FileStrip& strip, QWidget& window,
                         const QString& folder)
    : files_(files), window_(window), folder_(folder), recovery_(document, folder), report_(document)
{
    CrashReport::writeTo(recovery_.reportFile());
    connect(&recovery_, &Recovery::named, this, [this] { CrashReport::writeTo(recovery_.reportFile()); });
    connect(&recovery_, &Recovery::failed, &strip,
            [&strip](const WriteFailure& failure) { strip.warn(failure.text()); });
    connect(&recovery_, &Recovery::kept, &strip, [&strip] { strip.warn({}); });
    files_.setRecovery(&recovery_);
}

Safekeeping::~Safekeeping()
{
    files_.setRecovery(nullptr);
}

void Safekeeping::offer()
{
    show(newCrashReports(folder_));
}

void Safekeeping::offerAtStart()
{
    const QStringList reports = newCrashReports(folder_);
    if (!reports.isEmpty() || !recoverable(folder_).isEmpty())
        show(reports);
}

void Safekeeping::show(const QStringList& reports)
{
    auto* offer = new RecoveryOffer(folder_, reports, &window_);
    connect(offer, &RecoveryOffer::wanted, &files_, [this](const QString& file) { files_.recover(file); });
    offer->open();
}

} // namespace siphonwright
