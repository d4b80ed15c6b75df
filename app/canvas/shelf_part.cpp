#include "app/canvas/shelf_part.h"

namespace siphonwright {
namespace {

constexpr char shelf_mime_type[] = "application/vnd.siphonwright.shelf";

constexpr struct {
    ShelfPart::What what;
    const char* word;
    std::optional<ToolKind> tool;
} kinds[] = {
    {ShelfPart::What::engine, "engine", std::nullopt},  {ShelfPart::What::heater, "heater", ToolKind::heater},
    {ShelfPart::What::port, "port", ToolKind::port},    {ShelfPart::What::tank, "tank", ToolKind::tank},
    {ShelfPart::What::valve, "valve", ToolKind::valve}, {ShelfPart::What::bleed, "bleed", ToolKind::bleed},
    {ShelfPart::What::clip, "clip", ToolKind::clip},    {ShelfPart::What::area, "area", std::nullopt},
};

} // namespace

std::optional<ShelfPart> shelfPartFrom(const QMimeData* data)
{
    if (!data || !data->hasFormat(QLatin1String(shelf_mime_type)))
        return std::nullopt;
    const QByteArray text = data->data(QLatin1String(shelf_mime_type));
    const auto colon = text.indexOf(':');
    for (const auto& kind : kinds)
        if (text.left(colon) == kind.word)
            return ShelfPart{kind.what, text.mid(colon + 1).toStdString()};
    return std::nullopt;
}

QMimeData* mimeDataOf(const ShelfPart& part)
{
    auto* data = new QMimeData;
    for (const auto& kind : kinds)
        if (kind.what == part.what)
            data->setData(QLatin1String(shelf_mime_type),
                          QByteArray(kind.word) + ':' + QByteArray::fromStdString(part.template_id));
    return data;
}

std::optional<ToolKind> toolFor(const ShelfPart& part)
{
    for (const auto& kind : kinds)
        if (kind.what == part.what)
            return kind.tool;
    return std::nullopt;
}

} // namespace siphonwright
