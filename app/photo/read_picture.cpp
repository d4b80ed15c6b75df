#include "app/photo/read_picture.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/photo/jpeg_marks.h"

#include <QBuffer>
#include <QFile>
#include <QImageReader>

#include <algorithm>

namespace siphonwright::photo {
namespace {

constexpr int allocation_limit_mb = 256;

ReadPicture refused(const QString& sentence)
{
    ReadPicture out;
    out.problem = sentence;
    return out;
}

/// By its first bytes; empty: none that is read. Asking Qt would try every format it has.
QByteArray formatOf(const QByteArray& file)
{
    if (file.startsWith(QByteArrayView("\x89PNG\r\n\x1A\n")))
        return "png";
    if (file.startsWith(QByteArrayView("\xFF\xD8\xFF")))
        return "jpeg";
    if (file.startsWith("RIFF") && file.mid(8, 4) == "WEBP")
        return "webp";
    return {};
}

QString inMegapixels(QSize size)
{
    const double megapixels = double(size.width()) * size.height() / 1e6;
    return tr("%1 × %2 pixels, %3 megapixels")
        .arg(size.width())
        .arg(size.height())
        .arg(numberInWords(megapixels, megapixels < 10 ? 1 : 0));
}

/// Why a picture of this size is not decoded; empty: it is.
QString refusal(QSize size, const QByteArray& format, const QByteArray& file)
{
    if (!size.isValid() || size.isEmpty())
        return tr("Its header is damaged: it does not say how large the picture is.");
    if (std::min(size.width(), size.height()) < shortest_side_px)
        return tr("Its header says %1: nothing can be seen on that.").arg(inMegapixels(size));
    const qint64 pixels = qint64(size.width()) * size.height();
    if (pixels > largest_source_px)
        return tr("Its header says %1. At most %2 megapixels are read: make it smaller first.")
            .arg(inMegapixels(size))
            .arg(largest_source_px / 1'000'000);
    if (format != "jpeg")
        return {};
    const auto marks = jpegMarks(file);
    if (!marks)
        return tr("It is damaged before the picture's data begin.");
    if (!marks->ends)
        return tr("It is cut off: there are %1 bytes, and the picture does not end in them.")
            .arg(file.size());
    if (marks->progressive && pixels > largest_progressive_px)
        return tr("It is a progressive JPEG of %1; of those at most %2 megapixels are read.")
            .arg(inMegapixels(size))
            .arg(largest_progressive_px / 1'000'000);
    return {};
}

QSize uprightSize(const QImageReader& reader)
{
    const QSize size = reader.size();
    return reader.transformation().testFlag(QImageIOHandler::TransformationRotate90) ? size.transposed()
                                                                                     : size;
}

} // namespace

bool readsWebP()
{
    return QImageReader::supportedImageFormats().contains("webp");
}

QSize pictureSize(const QByteArray& file)
{
    const QByteArray format = formatOf(file);
    if (format.isEmpty())
        return {};
    QBuffer buffer;
    buffer.setData(file);
    QImageReader reader(&buffer, format);
    const QSize size = uprightSize(reader);
    const bool sound = size.isValid() && qint64(size.width()) * size.height() <= largest_source_px;
    return sound ? size : QSize();
}

ReadPicture readPicture(const QByteArray& file)
{
    if (file.isEmpty())
        return refused(tr("It is empty."));
    if (file.size() > largest_source_bytes)
        return refused(tr("It is larger than %1 MiB.").arg(largest_source_bytes >> 20));
    const QByteArray format = formatOf(file);
    if (format.isEmpty())
        return refused(tr("It is not a PNG, JPEG or WebP picture."));
    if (format == "webp" && !readsWebP())
        return refused(tr("WebP is not read here: save it as PNG or JPEG, or install Qt's image formats."));
    QBuffer buffer;
    buffer.setData(file);
    QImageReader::setAllocationLimit(allocation_limit_mb);
    QImageReader reader(&buffer, format);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (const QString why = refusal(size, format, file); !why.isEmpty())
        return refused(why);
    if (std::max(size.width(), size.height()) > longest_side_px)
        reader.setScaledSize(
            size.scaled(longest_side_px, longest_side_px, Qt::KeepAspectRatio).expandedTo(QSize(1, 1)));
    ReadPicture out;
    out.source_px = uprightSize(reader);
    out.image = reader.read();
    if (out.image.isNull())
        return refused(tr("Its picture data are damaged or cut off (%1).").arg(reader.errorString()));
    return out;
}

ReadPicture readPictureFile(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return refused(tr("It cannot be opened: %1.").arg(file.errorString()));
    // One byte more tells that there is more; a device or pipe has no size to ask for.
    return readPicture(file.read(largest_source_bytes + 1));
}

} // namespace siphonwright::photo
