#include "app/drawing/hose_picture.h"

#include <algorithm>
#include <utility>

namespace siphonwright::drawing {
namespace {

bool sameColours(const Palette& a, const Palette& b)
{
    return a.ground == b.ground && a.ink == b.ink && a.faint == b.faint && a.supply == b.supply &&
           a.return_ == b.return_ && a.air == b.air && a.held == b.held && a.text == b.text;
}

bool sameStyle(const Style& a, const Style& b)
{
    return sameColours(a.palette, b.palette) && a.view == b.view && a.scale == b.scale &&
           a.lettering_mm == b.lettering_mm && a.units == b.units && a.fills == b.fills &&
           a.labels == b.labels && a.balloons == b.balloons && a.running == b.running &&
           a.findings == b.findings;
}

} // namespace

bool HoseLook::same(const HoseLook& other) const
{
    return sameStyle(style, other.style) && transform == other.transform && visible == other.visible &&
           pixels == other.pixels && pixel_ratio == other.pixel_ratio && hints == other.hints &&
           up == other.up && leaves_air == other.leaves_air;
}

bool HosePictureKey::leavesOut() const
{
    return std::find(left_out.begin(), left_out.end(), true) != left_out.end();
}

bool HosePictureKey::shows(std::size_t hose, const std::vector<DrawnHose>& now) const
{
    return !left_out[hose] && hoses[hose] == now[hose];
}

bool HosePictureKey::serves(const HosePictureKey& now, const Ink::Room& round_it_now) const
{
    if (hoses.size() != now.hoses.size() || !look.same(now.look))
        return false;
    for (std::size_t i = 0; i < hoses.size(); ++i)
        if (!left_out[i] && !shows(i, now.hoses))
            return false;
    return leavesOut() || round_it->same(round_it_now);
}

std::shared_ptr<const HosePicture> pictureOf(HosePictureOrder order)
{
    auto out = std::make_shared<HosePicture>();
    out->key = std::move(order.key);
    const HoseLook& look = out->key.look;
    out->image = QImage(look.pixels, QImage::Format_ARGB32_Premultiplied);
    out->image.setDevicePixelRatio(look.pixel_ratio);
    out->image.fill(Qt::transparent);
    QPainter painter(&out->image);
    painter.setRenderHints(look.hints);
    painter.setTransform(look.transform);
    painter.setClipRect(look.visible);
    Ink ink(painter, order.sketch, order.analysis, look.style);
    ink.left_out = out->key.left_out;
    ink.runs = &order.runs;
    ink.keepOff(out->key.round_it);
    paintHoses(ink);
    // What filling leaves changes with the proof, and is drawn with the rest.
    if (look.style.findings && !look.leaves_air)
        paintPockets(ink);
    paintHoseParts(ink);
    ink.writeLabels();
    out->room = std::make_shared<const Ink::Room>(ink.room());
    return out;
}

} // namespace siphonwright::drawing
