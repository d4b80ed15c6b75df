#include "app/drawing/hose_layer.h"

#include <QPaintDevice>

#include <algorithm>
#include <utility>

namespace siphonwright::drawing {
namespace {

/// More hoses than this do not change by one drag; the picture is made anew for them.
constexpr std::size_t most_changed = 8;

/// But which hoses are left out, and what is round them.
HosePictureKey keyOf(const Ink& ink)
{
    HosePictureKey key;
    const QPainter& painter = ink.painter;
    key.look.style = ink.style;
    key.look.style.contents = nullptr;
    key.look.style.photo = nullptr;
    key.look.style.page = nullptr;
    key.look.transform = painter.transform();
    key.look.visible = ink.visible;
    key.look.pixel_ratio = painter.device()->devicePixelRatioF();
    key.look.pixels = QSize(painter.device()->width(), painter.device()->height()) * key.look.pixel_ratio;
    key.look.hints = painter.renderHints();
    key.look.up = ink.analysis.layout.plumb.up();
    key.look.leaves_air = leavesAir(ink);
    for (const ResolvedHose& hose : ink.analysis.layout.hoses) {
        const LoopRun* run = runOf(ink, hose);
        key.hoses.push_back({hose.route, run ? std::optional(run->circulation.flow_kg_per_s) : std::nullopt});
    }
    return key;
}

HosePictureOrder orderFor(HosePictureKey key, const Ink& ink, const SeenRuns& runs)
{
    HosePictureOrder order;
    order.key = std::move(key);
    order.key.round_it = std::make_shared<const Ink::Room>(ink.room());
    order.sketch = ink.sketch;
    order.analysis.layout = ink.analysis.layout;
    order.analysis.running = ink.analysis.running;
    order.runs = runs;
    return order;
}

/// Whether every one of `some` is among `all`; and none at all only where none is wanted.
bool among(const std::vector<bool>& some, const std::vector<bool>& all)
{
    if (std::find(some.begin(), some.end(), true) == some.end())
        return some == all;
    for (std::size_t i = 0; i < some.size(); ++i)
        if (some[i] && !all[i])
            return false;
    return true;
}

} // namespace

bool HoseLayer::wanted(const Ink& ink) const
{
    if (ink.style.contents || ink.style.tint || ink.style.view.isEnd())
        return false;
    std::size_t pieces = 0;
    for (const ResolvedHose& hose : ink.analysis.layout.hoses)
        pieces += hose->path.line.pieces().size();
    return pieces >= from_pieces_;
}

bool HoseLayer::holds(const HosePictureKey& now, const Ink& ink) const
{
    return picture_ && picture_->key.serves(now, ink.room()) && picture_->key.left_out == left_out_;
}

/// Whether the picture of before can stand a moment longer.
bool HoseLayer::canWait(const HosePictureKey& now) const
{
    if (!order_ || !picture_ || picture_->key.hoses.size() != now.hoses.size() ||
        !picture_->key.look.same(now.look))
        return false;
    std::size_t on_top = 0;
    for (std::size_t i = 0; i < now.hoses.size(); ++i)
        on_top += picture_->key.shows(i, now.hoses) ? 0 : 1;
    return on_top <= 2 * most_changed;
}

bool HoseLayer::leavesOut() const
{
    return picture_ && (picture_->key.leavesOut() ||
                        std::find(left_out_.begin(), left_out_.end(), true) != left_out_.end());
}

void HoseLayer::settle()
{
    left_out_.assign(left_out_.size(), false);
}

/// What changed since the last time goes on changing, most likely.
void HoseLayer::follow(const HosePictureKey& now)
{
    std::vector<std::size_t> changed;
    if (now.hoses.size() == seen_.size())
        for (std::size_t i = 0; i < seen_.size(); ++i)
            if (!(now.hoses[i] == seen_[i]))
                changed.push_back(i);
    if (!changed.empty() || left_out_.size() != now.hoses.size())
        left_out_.assign(now.hoses.size(), false);
    if (changed.size() <= most_changed)
        for (const std::size_t i : changed)
            left_out_[i] = true;
}

void HoseLayer::order(HosePictureKey key, const Ink& ink)
{
    if (ordered_ && ordered_->left_out == key.left_out && ordered_->serves(key, ink.room()))
        return;
    HosePictureOrder wanted = orderFor(std::move(key), ink, runs_);
    ordered_ = wanted.key;
    order_(std::move(wanted));
}

void HoseLayer::replace(std::shared_ptr<const HosePicture> picture)
{
    if (picture_ && picture_->key.leavesOut())
        spare_ = std::move(picture_);
    picture_ = std::move(picture);
    ordered_.reset();
}

void HoseLayer::renew(HosePictureKey now, const Ink& ink)
{
    follow(now);
    if (ready_ && ready_->key.serves(now, ink.room()) && among(left_out_, ready_->key.left_out)) {
        replace(std::exchange(ready_, nullptr));
        left_out_ = picture_->key.left_out;
        return;
    }
    now.left_out = left_out_;
    if (canWait(now)) {
        order(std::move(now), ink);
        return;
    }
    replace(pictureOf(orderFor(std::move(now), ink, runs_)));
}

/// While nothing changes there is time for the picture of what may come.
void HoseLayer::prepare(const HosePictureKey& now, const Ink& ink)
{
    if (!order_ || expected_.empty() || expected_.size() > most_changed)
        return;
    std::vector<bool> left_out;
    for (const ResolvedHose& hose : ink.analysis.layout.hoses)
        left_out.push_back(std::find(expected_.begin(), expected_.end(), hose.id()) != expected_.end());
    if (left_out == left_out_ || std::find(left_out.begin(), left_out.end(), true) == left_out.end())
        return;
    HosePictureKey key = now;
    key.left_out = std::move(left_out);
    const auto fits = [&](const std::shared_ptr<const HosePicture>& picture) {
        return picture && picture->key.left_out == key.left_out && picture->key.serves(key, ink.room());
    };
    if (!fits(ready_) && fits(spare_))
        ready_ = std::exchange(spare_, nullptr);
    if (!fits(ready_))
        order(std::move(key), ink);
}

void HoseLayer::paint(Ink& ink)
{
    ink.runs = &runs_;
    if (!wanted(ink)) {
        picture_.reset();
        ready_.reset();
        spare_.reset();
        ordered_.reset();
        return;
    }
    ink.balloon_pictures = &balloons_;
    const HosePictureKey now = keyOf(ink);
    if (holds(now, ink))
        prepare(now, ink);
    else
        renew(now, ink);
    seen_ = now.hoses;
    putDown(ink, now.hoses);
}

void HoseLayer::putDown(Ink& ink, const std::vector<DrawnHose>& now) const
{
    ink.painter.save();
    ink.painter.resetTransform();
    ink.painter.drawImage(QPointF(), picture_->image);
    ink.painter.restore();
    ink.left_out.assign(now.size(), false);
    for (std::size_t i = 0; i < now.size(); ++i)
        ink.left_out[i] = picture_->key.shows(i, now);
    ink.standOver(picture_->room);
}

} // namespace siphonwright::drawing
