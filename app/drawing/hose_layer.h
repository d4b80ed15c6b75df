#pragma once

#include "app/drawing/balloon_pictures.h"
#include "app/drawing/hose_picture.h"

#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace siphonwright::drawing {

/// A picture of the hoses that do not change while one is dragged, with their sizes, arrows and parts: in a
/// drawing that takes too long to be drawn anew for each step, only what changed is drawn, on top of it, and
/// where a nearer hose crosses that, the crossing. Owned by a view; the painter keeps no picture itself.
/// Small drawings, end views, moments of a demonstration and hoses tinted by temperature are always drawn
/// anew.
///
/// A view can have pictures made beside the window. Until one comes that is wanted next, the one before
/// stands, and what changed is drawn on top of it: a hose is then seen where it was as well, for a moment.
/// The picture of a drag that is over is kept for the next one of the same hoses.
class HoseLayer {
public:
    /// So many are drawn within 1/60 s; twice as many, with their labels, are not.
    static constexpr std::size_t usual_pieces = 200;
    using Order = std::function<void(HosePictureOrder order)>;

    /// @param from_pieces  straights and arcs of all hoses from which on pictures are kept
    explicit HoseLayer(std::size_t from_pieces = usual_pieces) : from_pieces_(from_pieces) {}

    /// Have pictures that can wait made elsewhere, by pictureOf(); the latest order counts.
    void orderWith(Order order) { order_ = std::move(order); }
    /// One that was ordered has come: paint again.
    void take(std::shared_ptr<const HosePicture> picture) { ready_ = std::move(picture); }
    /// These hoses may change next: have a picture without them at hand. Nothing comes of it where no
    /// pictures are ordered.
    void expect(std::vector<Id> hoses) { expected_ = std::move(hoses); }

    /// Put down the picture, made anew if it does not hold any more, and leave those hoses to it.
    void paint(Ink& ink);
    /// Whether the drawing is one of which pictures are kept.
    bool keepsPictures() const { return picture_ != nullptr; }
    /// Whether hoses that changed are drawn on top of the picture, or will be with the one that is ordered.
    bool leavesOut() const;
    /// Nothing changes any more: take all hoses up into the next picture, so that it is the one that drawing
    /// anew gives.
    void settle();

private:
    bool wanted(const Ink& ink) const;
    bool holds(const HosePictureKey& now, const Ink& ink) const;
    bool canWait(const HosePictureKey& now) const;
    void follow(const HosePictureKey& now);
    void replace(std::shared_ptr<const HosePicture> picture);
    void renew(HosePictureKey now, const Ink& ink);
    void order(HosePictureKey key, const Ink& ink);
    void prepare(const HosePictureKey& now, const Ink& ink);
    void putDown(Ink& ink, const std::vector<DrawnHose>& now) const;

    std::size_t from_pieces_;
    Order order_;
    std::vector<Id> expected_;
    std::vector<DrawnHose> seen_;                ///< the last time
    std::vector<bool> left_out_;                 ///< of the picture that is wanted
    std::shared_ptr<const HosePicture> picture_; ///< null: none yet
    std::shared_ptr<const HosePicture> ready_;   ///< ordered and come, not needed yet
    std::shared_ptr<const HosePicture> spare_;   ///< of the last drag: the same hoses may go on
    std::optional<HosePictureKey> ordered_;      ///< and not come yet
    SeenRuns runs_;
    BalloonPictures balloons_;
};

} // namespace siphonwright::drawing
