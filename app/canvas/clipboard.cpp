#include "app/canvas/clipboard.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/sketch/copy_parts.h"

#include <QMimeData>

namespace siphonwright {
QStringList sentencesOf(const Problems& problems)
{
    QStringList out;
    for (const Problem& problem : problems)
        out << inWords(problem.text());
    return out;
}

QMimeData* mimeDataOf(const Sketch& copied, QStringList& problems)
{
    const auto written = writeSketch(copied);
    if (const auto* wrong = std::get_if<Problems>(&written)) {
        problems = sentencesOf(*wrong);
        return nullptr;
    }
    auto* data = new QMimeData;
    data->setData(QLatin1String(parts_mime_type), QByteArray::fromStdString(std::get<std::string>(written)));
    return data;
}

ClipboardParts partsFrom(const QMimeData* data)
{
    ClipboardParts out;
    if (!data || !data->hasFormat(QLatin1String(parts_mime_type)))
        return out;
    const QByteArray bytes = data->data(QLatin1String(parts_mime_type));
    if (static_cast<std::size_t>(bytes.size()) > largest_file_bytes) {
        out.problems << tr("It is larger than the largest drawing.");
        return out;
    }
    auto read = readSketch({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (const auto* wrong = std::get_if<Problems>(&read)) {
        out.problems = sentencesOf(*wrong);
        return out;
    }
    Sketch& sketch = std::get<Sketch>(read);
    if (wholesOf(sketch).empty())
        out.problems << tr("It holds no parts.");
    else
        out.sketch = std::move(sketch);
    return out;
}

} // namespace siphonwright
