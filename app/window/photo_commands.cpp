#include "app/window/photo_commands.h"

#include "app/photo/store_picture.h"
#include "app/photo/straightened_photo.h"
#include "app/window/actions.h"
#include "app/window/file_commands.h"
#include "app/window/file_dialog.h"
#include "app/window/photo_figures.h"
#include "app/window/settings.h"

#include "core/sketch/photo_edits.h"

#include <QClipboard>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMenu>
#include <QMimeData>
#include <QUrl>

#include <cmath>

namespace siphonwright {
namespace {

/// The wait cursor while a picture is resampled.
class Waiting {
public:
    Waiting() { QGuiApplication::setOverrideCursor(Qt::WaitCursor); }
    ~Waiting() { QGuiApplication::restoreOverrideCursor(); }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;
};

std::optional<QString> fileOf(const QMimeData& data)
{
    const QList<QUrl> urls = data.urls();
    if (urls.size() != 1 || !urls.first().isLocalFile())
        return std::nullopt;
    return urls.first().toLocalFile();
}

/// Of a file as of bytes: limits hold for both. A picture that the other program gives no file of is taken as
/// it was handed over.
photo::ReadPicture pictureOf(const QMimeData& data)
{
    for (const char* kind : {"image/png", "image/jpeg", "image/webp"})
        if (data.hasFormat(QString::fromLatin1(kind)))
            return photo::readPicture(data.data(QString::fromLatin1(kind)));
    photo::ReadPicture out;
    out.image = qvariant_cast<QImage>(data.imageData());
    out.source_px = out.image.size();
    const int longest = std::max(out.image.width(), out.image.height());
    if (out.image.isNull() || std::min(out.image.width(), out.image.height()) < photo::shortest_side_px)
        out.problem = PhotoCommands::tr("There is no picture in it.");
    else if (longest > photo::longest_side_px)
        out.image = out.image.scaled(photo::longest_side_px, photo::longest_side_px, Qt::KeepAspectRatio,
                                     Qt::SmoothTransformation);
    return out;
}

} // namespace

PhotoCommands::PhotoCommands(Document& document, Selection& selection, ElevationView& view,
                             FileCommands& files, const Actions& actions, QWidget& window)
    : QObject(&window),
      document_(document),
      selection_(selection),
      view_(view),
      files_(files),
      actions_(actions),
      window_(window)
{
    const auto on = [&](const char* id, auto act) {
        connect(actions[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    const auto tool = [this](ToolKind kind) {
        return [this, kind] {
            view_.setTool(kind);
            view_.setFocus();
        };
    };
    on("insert-photo", [this] { choose(); });
    on("paste-photo", [this] { paste(); });
    on("photo-scale", tool(ToolKind::photo_scale));
    on("photo-level", tool(ToolKind::photo_level));
    on("photo-straighten", tool(ToolKind::photo_straighten));
    on("photo-lock", [this] { toggleLock(); });
    on("photo-details", [this] {
        selection_.select({PartKind::photo, {}, 0});
        view_.setFocus();
    });
    connect(&view_, &ElevationView::photoPointsPicked, this, &PhotoCommands::askFigures);
}

void PhotoCommands::addTo(QMenu& insert_menu) const
{
    for (const char* id : {"insert-photo", "paste-photo"})
        insert_menu.addAction(actions_[QString::fromLatin1(id)]);
    QMenu* work = insert_menu.addMenu(tr("Photo &underlay"));
    work->setToolTipsVisible(true);
    for (const char* id : {"photo-straighten", "photo-scale", "photo-level", "photo-lock", "photo-details"})
        work->addAction(actions_[QString::fromLatin1(id)]);
}

void PhotoCommands::refresh() const
{
    const std::optional<Shared<Photo>>& photo = document_.sketch().photo;
    actions_[QStringLiteral("photo-lock")]->setChecked(photo && (*photo)->locked);
}

bool PhotoCommands::offersPicture(const QMimeData& data)
{
    // Some that are not read are here too: what is wrong with them is said when they are dropped.
    static const QStringList suffixes = {
        QStringLiteral("png"),  QStringLiteral("jpg"),  QStringLiteral("jpeg"), QStringLiteral("jpe"),
        QStringLiteral("webp"), QStringLiteral("heic"), QStringLiteral("heif"), QStringLiteral("gif"),
        QStringLiteral("bmp"),  QStringLiteral("tif"),  QStringLiteral("tiff")};
    if (const std::optional<QString> path = fileOf(data))
        return suffixes.contains(QFileInfo(*path).suffix().toLower());
    return data.hasImage();
}

void PhotoCommands::choose()
{
    QFileDialog* dialog = newFileDialog(&window_, tr("Photo under the drawing"));
    dialog->setFileMode(QFileDialog::ExistingFile);
    const QString kinds = photo::readsWebP() ? QStringLiteral("*.png *.jpg *.jpeg *.webp")
                                             : QStringLiteral("*.png *.jpg *.jpeg");
    dialog->setNameFilters({tr("Pictures (%1)").arg(kinds), tr("All files (*)")});
    connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) { insertFile(path); });
    dialog->open();
}

void PhotoCommands::insertFile(const QString& path, const std::optional<Vec2>& middle)
{
    const auto picture =
        files_.read<photo::ReadPicture>(path, [path] { return photo::readPictureFile(path); });
    if (!picture)
        return;
    const Waiting waiting;
    put(*picture, QFileInfo(path).fileName(), middle);
}

void PhotoCommands::insertFrom(const QMimeData& data, const std::optional<Vec2>& middle)
{
    if (const std::optional<QString> path = fileOf(data)) {
        insertFile(*path, middle);
        return;
    }
    const Waiting waiting;
    put(pictureOf(data), tr("What was copied"), middle);
}

void PhotoCommands::paste()
{
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    if (data && offersPicture(*data))
        insertFrom(*data);
    else
        files_.tell(tr("There is no picture in the clipboard."), {});
}

void PhotoCommands::put(const photo::ReadPicture& picture, const QString& name,
                        const std::optional<Vec2>& middle)
{
    if (!picture.problem.isEmpty()) {
        files_.tell(tr("%1 is not put under the drawing.").arg(name), {picture.problem});
        return;
    }
    const photo::StoredPicture stored = photo::storedPicture(picture.image);
    if (stored.file.isEmpty()) {
        files_.tell(tr("%1 cannot be kept in the drawing.").arg(name),
                    {tr("It is too narrow to be made small enough.")});
        return;
    }
    // As wide as what is drawn, which somebody is likely to have drawn before; until it is scaled.
    constexpr double usual_width_mm = 1200;
    const QRectF drawn = drawing::boundsOf(document_.sketch(), document_.analysis());
    const Vec2 centre =
        drawn.isNull() ? view_.toDrawing(QRectF(view_.rect()).center()) : drawing::fromPage(drawn.center());
    const Photo photo =
        photo::photoOf(stored, middle.value_or(centre), drawn.isNull() ? usual_width_mm : drawn.width());
    document_.apply(document_.sketch().photo ? tr("Replace the photo") : tr("Insert the photo"),
                    [&](Sketch& sketch) { sketch.photo = Shared<Photo>(photo); });
    view_.setTool(ToolKind::select);
    selection_.select({PartKind::photo, {}, 0});
    view_.zoomToFit();
    view_.setFocus();
    Q_EMIT told(
        tr("%1 is kept in the drawing: %2 × %3 pixels of %4 × %5, %6 kB. Next: straighten or scale it.")
            .arg(name)
            .arg(stored.size_px.width())
            .arg(stored.size_px.height())
            .arg(picture.source_px.width())
            .arg(picture.source_px.height())
            .arg((photo.data_base64.size() + 999) / 1000));
}

void PhotoCommands::askFigures(const std::vector<Vec2>& points)
{
    const bool scales = view_.tool() == ToolKind::photo_scale && points.size() == 2;
    const UnitSystem units =
        document_.sketch().units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    auto* dialog =
        scales
            ? new PhotoFigures(
                  tr("Scale by two points"), tr("How far apart are the two points in truth?"),
                  {{tr("Distance"), std::hypot(points[1].x - points[0].x, points[1].z - points[0].z)}}, units,
                  &window_)
            : new PhotoFigures(tr("Straighten by a rectangle"),
                               tr("How large is the rectangle in truth? Only what lies in its plane comes "
                                  "out true to scale: "
                                  "what stands nearer looks larger."),
                               {{tr("Width"), std::nullopt}, {tr("Height"), std::nullopt}}, units, &window_);
    connect(dialog, &QDialog::accepted, this, [this, dialog, points, scales] {
        const std::vector<double>& mm = dialog->lengths_mm();
        if (scales)
            document_.apply(tr("Scale the photo"), [&](Sketch& sketch) {
                scalePhotoByTwoPoints(sketch, points[0], points[1], mm[0]);
            });
        else
            straighten(points, mm[0], mm[1]);
    });
    connect(dialog, &QDialog::finished, this, [this] {
        view_.setTool(ToolKind::select);
        if (document_.sketch().photo)
            selection_.select({PartKind::photo, {}, 0});
        view_.setFocus();
    });
    dialog->open();
}

void PhotoCommands::straighten(const std::vector<Vec2>& points, double width_mm, double height_mm)
{
    if (!document_.sketch().photo)
        return;
    const Waiting waiting;
    const photo::StraightenedPhoto straight =
        photo::straightened(**document_.sketch().photo, points, width_mm, height_mm);
    if (!straight.photo) {
        files_.tell(tr("The photo is not straightened."), {straight.problem});
        return;
    }
    document_.apply(tr("Straighten the photo"),
                    [&](Sketch& sketch) { sketch.photo = Shared<Photo>(*straight.photo); });
    view_.zoomToFit();
}

void PhotoCommands::toggleLock()
{
    const std::optional<Shared<Photo>>& photo = document_.sketch().photo;
    if (!photo)
        return;
    const bool lock = !(*photo)->locked;
    document_.apply(lock ? tr("Lock the photo") : tr("Unlock the photo"),
                    [lock](Sketch& sketch) { sketch.photo->edit([lock](Photo& p) { p.locked = lock; }); });
}

} // namespace siphonwright
