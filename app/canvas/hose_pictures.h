#pragma once

#include "app/document/worker.h"
#include "app/drawing/hose_layer.h"

#include "core/sketch/sketch.h"

#include <QObject>

#include <functional>
#include <memory>
#include <vector>

namespace siphonwright {

/// Hoses that move when these parts do.
std::vector<Id> hosesMovedBy(const Sketch& sketch, const std::vector<PartRef>& parts);

/// Makes the pictures of a view's hose layer beside the window, so that no step of a drag waits for one. The
/// thread begins with the first picture that is ordered: small drawings never need it.
class HosePictures : public QObject {
public:
    /// @param layer  must outlive this @param repaint  called in the window's thread when a picture has come
    HosePictures(drawing::HoseLayer& layer, std::function<void()> repaint);

private:
    using Picture = std::shared_ptr<const drawing::HosePicture>;
    void order(drawing::HosePictureOrder order);
    void take();

    drawing::HoseLayer& layer_;
    std::function<void()> repaint_;
    std::unique_ptr<Worker<drawing::HosePictureOrder, Picture>> worker_; ///< null: none was ordered
};

} // namespace siphonwright
