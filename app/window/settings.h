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
inline const Setting<QString> look{"look/look", {}};         ///< empty: as the desktop
inline const Setting<QString> language{"look/language", {}}; ///< ISO 639-1; empty: the system's
inline const Setting<int> text_percent{"look/text", 100};    ///< 100 to 200
inline const Setting<QString> units{"drawing/units", {}};    ///< "metric" or "inch"; empty: after the locale
inline const Setting<bool> guide_left{"start/guide-left", false}; ///< the first sketch is not to be offered
inline const Setting<bool> grid{"drawing/grid", true};
inline const Setting<bool> snapping{"drawing/snapping", true};
inline const Setting<double> snap_slope{"drawing/snap-slope", 0.02}; ///< rise over length
inline const Setting<bool> running{"drawing/running", true};
inline const Setting<bool> tint{"drawing/tint", false};
inline const Setting<bool> end_view{"drawing/end-view", false};
inline const Setting<bool> end_view_level{"drawing/end-view-level", true};
inline const Setting<bool> third_angle{"drawing/third-angle", false}; ///< off: first-angle projection
inline const Setting<int> profile_heights{"profile/heights", 0};      ///< as ProfilePanel::setExaggeration()
inline const Setting<int> paper{"sheet/paper", -1};                   ///< -1: after the drawing's units
inline const Setting<bool> upright{"sheet/upright", false};
inline const Setting<int> scale{"sheet/scale", 0}; ///< 1:n; 0: the largest that fits on one page
inline const Setting<bool> colour{"sheet/colour", false};
inline const Setting<bool> photo_on_sheet{"sheet/photo", false};
inline const Setting<bool> parts_behind{"sheet/parts", true}; ///< the parts list follows the drawing
inline const Setting<bool> checklist_behind{"sheet/checklist", false};
inline const Setting<bool> estimate_behind{"sheet/estimate", false};
inline const Setting<bool> assumptions_behind{"sheet/assumptions", false};
inline const Setting<QString> logo{"sheet/logo", {}}; ///< file of a picture; empty: none
inline const Setting<QString> folder{"files/folder", {}};
inline const Setting<QStringList> recent{"files/recent", {}};
} // namespace settings

/// Files opened or saved lately that still exist, latest first.
QStringList recentFiles();
/// Where a file was opened or saved last, or the home folder where that place does not answer.
QString usualFolder();
/// A folder, or the home folder where it does not answer.
QString orHome(const QString& folder);
void rememberFile(const QString& path);

} // namespace siphonwright
