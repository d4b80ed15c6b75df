#include "app/canvas/hose_pictures.h"

#include <QMetaObject>

#include <algorithm>
#include <optional>
#include <stop_token>
#include <utility>

namespace siphonwright {

std::vector<Id> hosesMovedBy(const Sketch& sketch, const std::vector<PartRef>& parts)
{
    std::vector<Id> out;
    for (const Shared<Hose>& hose : sketch.hoses) {
        const auto moves = [&](const PartRef& part) {
            const auto on = [&](const HoseEnd& end) {
                return (part.kind == PartKind::port && end.port == part.id) ||
                       (part.kind == PartKind::heater && end.heater == part.id);
            };
            return part.id == hose->id || on(hose->from) || on(hose->to);
        };
        if (std::any_of(parts.begin(), parts.end(), moves))
            out.push_back(hose->id);
    }
    return out;
}

HosePictures::HosePictures(drawing::HoseLayer& layer, std::function<void()> repaint)
    : layer_(layer), repaint_(std::move(repaint))
{
    layer_.orderWith([this](drawing::HosePictureOrder wanted) { order(std::move(wanted)); });
}

void HosePictures::order(drawing::HosePictureOrder order)
{
    using Beside = Worker<drawing::HosePictureOrder, Picture>;
    if (!worker_)
        worker_ =
            std::make_unique<Beside>([](drawing::HosePictureOrder job, const Beside::Tell& tell,
                                        const std::stop_token&) { tell(drawing::pictureOf(std::move(job))); },
                                     [this] {
                                         QMetaObject::invokeMethod(
                                             this, [this] { take(); }, Qt::QueuedConnection);
                                     });
    worker_->ask(std::move(order));
}

void HosePictures::take()
{
    std::optional<Picture> picture = worker_->take();
    if (!picture)
        return;
    layer_.take(std::move(*picture));
    repaint_();
}

} // namespace siphonwright
