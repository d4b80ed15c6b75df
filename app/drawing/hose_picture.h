#pragma once

#include "app/drawing/crossings.h"
#include "app/drawing/elevation.h"
#include "app/drawing/ink.h"

#include <QImage>
#include <QPainter>
#include <QRectF>
#include <QSize>
#include <QTransform>

#include <memory>
#include <optional>
#include <vector>

/// A picture of hoses that do not change, for hose_layer.h: what it depends on, and how it is made. Making
/// one touches nothing but its order, so that another thread may.
namespace siphonwright::drawing {

/// How everything in a picture is seen.
struct HoseLook {
    Style style; ///< but its contents, photograph and page
    QTransform transform;
    QRectF visible;
    QSize pixels;
    double pixel_ratio = 1;
    QPainter::RenderHints hints;
    Vec3 up;
    bool leaves_air = false;

    bool same(const HoseLook& other) const;
};

/// All that the picture of a hose depends on but what it shares with the others.
struct DrawnHose {
    std::shared_ptr<const Route> route;
    std::optional<double> flow_kg_per_s; ///< nothing: not shown
    bool operator==(const DrawnHose& other) const = default;
};

/// Which picture it is.
struct HosePictureKey {
    HoseLook look;
    std::vector<DrawnHose> hoses;
    std::vector<bool> left_out;                ///< not in the picture; as many as hoses
    std::shared_ptr<const Ink::Room> round_it; ///< what its labels keep off; null until it is ordered

    bool leavesOut() const;
    /// Whether it shows a hose as it is now.
    bool shows(std::size_t hose, const std::vector<DrawnHose>& now) const;
    /// Whether it shows these hoses, but those that it leaves out. Its labels stay while a hose is dragged;
    /// when all are in it they have to keep off what is round it now.
    bool serves(const HosePictureKey& now, const Ink::Room& round_it_now) const;
};

struct HosePictureOrder {
    HosePictureKey key;
    Sketch sketch;
    Analysis analysis; ///< layout and circulation
    SeenRuns runs;     ///< only save time
};

struct HosePicture {
    HosePictureKey key;
    QImage image;
    std::shared_ptr<const Ink::Room> room; ///< that its hoses, labels and parts take
};

std::shared_ptr<const HosePicture> pictureOf(HosePictureOrder order);

} // namespace siphonwright::drawing
