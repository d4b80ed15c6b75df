#pragma once

#include "app/canvas/elevation_view.h"
#include "app/document/document.h"
#include "app/photo/read_picture.h"

#include <QObject>

#include <optional>

class QMenu;
class QMimeData;
class QWidget;

namespace siphonwright {

class Actions;
class FileCommands;

/// The photograph under the drawing as the user handles it: put there from a file, by dropping and by
/// pasting, scaled, levelled, straightened, locked.
class PhotoCommands : public QObject {
    Q_OBJECT
public:
    PhotoCommands(Document& document, Selection& selection, ElevationView& view, FileCommands& files,
                  const Actions& actions, QWidget& window);

    void addTo(QMenu& insert_menu) const;
    void refresh() const; ///< the lock's mark

    /// Whether something that is dragged or was copied is a picture, or one file that may be one.
    static bool offersPicture(const QMimeData& data);

    void choose();
    /// In the middle of the drawing, or of a place on it. What is wrong with it is told.
    void insertFile(const QString& path, const std::optional<Vec2>& middle = {});
    void insertFrom(const QMimeData& data, const std::optional<Vec2>& middle = {});
    void paste();

Q_SIGNALS:
    void told(const QString& sentence); ///< for the status line

private:
    void put(const photo::ReadPicture& picture, const QString& name, const std::optional<Vec2>& middle);
    void askFigures(const std::vector<Vec2>& points);
    void straighten(const std::vector<Vec2>& points, double width_mm, double height_mm);
    void toggleLock();

    Document& document_;
    Selection& selection_;
    ElevationView& view_;
    FileCommands& files_;
    const Actions& actions_;
    QWidget& window_;
};

} // namespace siphonwright
