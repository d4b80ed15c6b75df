#include "app/window/file_commands.h"

#include "app/window/file_dialog.h"
#include "app/window/plain_box.h"
#include "app/window/settings.h"
#include "app/window/title_fields.h"

#include "core/sketch/templates.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>

#include <variant>

namespace siphonwright {

namespace {

constexpr double first_height_mm = 600; // of the jacket's underside: leaves room for a heater well under it

Sketch emptySketch(UnitChoice units)
{
    Sketch sketch;
    sketch.units = units;
    sketch.sheet = TitleFields::offered();
    return sketch;
}

QString filter()
{
    return FileCommands::tr("Sketches (*.siphon)");
}

} // namespace

QString displayName(const Document& document)
{
    return document.path().isEmpty() ? FileCommands::tr("untitled") : QFileInfo(document.path()).fileName();
}

UnitChoice usualUnits()
{
    const QString chosen = settings::units.get();
    if (chosen.isEmpty())
        return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? UnitChoice::inch
                                                                          : UnitChoice::metric;
    return chosen == QLatin1String("inch") ? UnitChoice::inch : UnitChoice::metric;
}

FileCommands::FileCommands(Document& document, QWidget& window)
    : QObject(&window), document_(document), window_(window)
{
    new TitleFields(document_, this);
    connect(&document_, &Document::fileChanged, this, [this] { lock_.take(document_.path()); });
}

void FileCommands::startNew()
{
    whenSafe([this] {
        document_.reset(emptySketch(document_.sketch().units));
        Q_EMIT opened();
    });
}

void FileCommands::startFromTemplate(const std::string& id)
{
    whenSafe([this, id] {
        Sketch sketch = emptySketch(document_.sketch().units);
        for (const EngineTemplate& candidate : engineTemplates())
            if (candidate.id == id)
                placeEngine(sketch, candidate, {0, 0, first_height_mm});
        document_.reset(std::move(sketch));
        Q_EMIT opened();
    });
}

bool FileCommands::resetToSample(const QString& name, std::optional<UnitChoice> units)
{
    QFile file(QStringLiteral(":/samples/%1.siphon").arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return false;
    const QByteArray bytes = file.readAll();
    auto read = readSketch(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    auto* sketch = std::get_if<Sketch>(&read);
    if (!sketch)
        return false;
    sketch->units = units.value_or(sketch->units);
    document_.reset(std::move(*sketch));
    Q_EMIT opened();
    return true;
}

void FileCommands::startWelcome()
{
    if (resetToSample(QStringLiteral("sound-bus"), usualUnits()))
        Q_EMIT welcomed();
    else
        startFromTemplate("in-line-6");
}

void FileCommands::startSample(const QString& name)
{
    whenSafe([this, name] { resetToSample(name); });
}

void FileCommands::choose()
{
    QFileDialog* dialog = newFileDialog(&window_, tr("Open a sketch"));
    dialog->setNameFilter(filter());
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this, &FileCommands::open);
    dialog->open();
}

void FileCommands::save(const std::function<void()>& then)
{
    if (document_.path().isEmpty()) {
        saveAs(then);
        return;
    }
    write(document_.path(), Theirs::in_the_way, then);
}

void FileCommands::saveAs(const std::function<void()>& then)
{
    const QFileInfo own(document_.path());
    if (document_.path().isEmpty())
        askWhere(usualFolder(), {}, then);
    else
        askWhere(orHome(own.absolutePath()), own.fileName(), then);
}

void FileCommands::saveElsewhere(const std::function<void()>& then)
{
    const QString name =
        document_.path().isEmpty() ? QString() : document_.path().section(QLatin1Char('/'), -1);
    askWhere(QDir::homePath(), name, then);
}

void FileCommands::askWhere(const QString& folder, const QString& file, const std::function<void()>& then)
{
    QFileDialog* dialog = newFileDialog(&window_, tr("Save the sketch"), folder);
    dialog->setNameFilter(filter());
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QStringLiteral("siphon"));
    if (!file.isEmpty())
        dialog->selectFile(file);
    connect(dialog, &QFileDialog::fileSelected, this,
            [this, then](const QString& path) { write(path, Theirs::in_the_way, then); });
    dialog->open();
}

void FileCommands::whenSafe(const std::function<void()>& then)
{
    if (!document_.isModified()) {
        then();
        return;
    }
    auto* box = new QMessageBox(QMessageBox::Question, tr("Unsaved changes"),
                                tr("%1 has changes that are not saved.").arg(displayName(document_)),
                                QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &window_);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setDefaultButton(QMessageBox::Save);
    showPlainText(*box);
    connect(box, &QMessageBox::buttonClicked, this, [this, box, then](QAbstractButton* pressed) {
        const auto button = box->standardButton(pressed);
        if (button == QMessageBox::Save)
            save(then);
        else if (button == QMessageBox::Discard)
            then();
    });
    box->open();
}

void FileCommands::tell(const QString& sentence, const QStringList& details)
{
    auto* box =
        new QMessageBox(QMessageBox::Warning, tr("Siphonwright"), sentence, QMessageBox::Ok, &window_);
    box->setAttribute(Qt::WA_DeleteOnClose);
    const QStringList first = details.mid(0, 5);
    box->setInformativeText(first.join(QLatin1Char('\n')));
    showPlainText(*box);
    if (details.size() > first.size())
        box->setDetailedText(details.join(QLatin1Char('\n')));
    box->open();
}

} // namespace siphonwright
