#pragma once

#include <QByteArray>
#include <QSettings>
#include <QStringList>

namespace siphonwright {

/// One remembered setting: its key and what holds until somebody chooses.
template <class T>
struct Setting {
    const char* key;
    T standard;

    T get() const
    {
        return QSettings().value(QLatin1String(key), QVariant::fromValue(standard)).template value<T>();
    }
    void set(const T& value) const { QSettings().setValue(QLatin1String(key), QVariant::fromValue(value)); }
};

namespace settings {
inline const Setting<QByteArray> geometry{"window/geometry", {}};
inline const Setting<QByteArray> layout{"window/layout", {}};
inline const Setting<bool> dark{"look/dark", false};
inline const Setting<bool> grid{"drawing/grid", true};
inline const Setting<bool> snapping{"drawing/snapping", true};
inline const Setting<bool> running{"drawing/running", true};
inline const Setting<bool> tint{"drawing/tint", false};
inline const Setting<int> profile_heights{"profile/heights", 0}; ///< as ProfilePanel::setExaggeration()
inline const Setting<int> paper{"sheet/paper", -1};              ///< -1: after the drawing's units
inline const Setting<bool> colour{"sheet/colour", false};
inline const Setting<bool> photo_on_sheet{"sheet/photo", false};
inline const Setting<bool> parts_behind{"sheet/parts", true}; ///< the parts list follows the drawing
inline const Setting<QString> folder{"files/folder", {}};
inline const Setting<QStringList> recent{"files/recent", {}};
} // namespace settings

/// Files opened or saved lately that still exist, latest first.
QStringList recentFiles();
void rememberFile(const QString& path);

} // namespace siphonwright
