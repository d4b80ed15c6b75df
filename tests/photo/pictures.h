#pragma once

#include <QBuffer>
#include <QByteArray>
#include <QImage>

/// Small picture files, made on the spot.
namespace siphonwright::test {

inline QByteArray fileOf(const QImage& image, const char* format, int quality = -1)
{
    QByteArray out;
    QBuffer buffer(&out);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format, quality);
    return out;
}

inline QImage plain(int width, int height, const QColor& colour)
{
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(colour);
    return image;
}

/// Nothing that a codec could make small: pixels by a linear congruence (the constants are those of the C
/// standard's example of rand()).
inline QImage noise(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    unsigned state = 1;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            state = state * 1103515245U + 12345U;
            image.setPixel(x, y, 0xff000000U | (state >> 8U));
        }
    return image;
}

inline QByteArray bigEndian(quint32 value)
{
    QByteArray out(4, '\0');
    for (int i = 0; i < 4; ++i)
        out[i] = char(value >> (24 - 8 * i));
    return out;
}

/// CRC-32 of ISO 3309, as every chunk of a PNG ends with.
inline quint32 crcOf(const QByteArray& bytes)
{
    quint32 crc = 0xffffffffU;
    for (const char c : bytes) {
        crc ^= quint8(c);
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc >> 1U) ^ (crc & 1U ? 0xedb88320U : 0U);
    }
    return ~crc;
}

inline QByteArray chunk(const QByteArray& kind, const QByteArray& data)
{
    return bigEndian(quint32(data.size())) + kind + data + bigEndian(crcOf(kind + data));
}

/// A PNG that says how large it is and has no picture: 8 bits of red, green and blue.
inline QByteArray pngClaiming(quint32 width, quint32 height)
{
    return QByteArray("\x89PNG\r\n\x1A\n") +
           chunk("IHDR", bigEndian(width) + bigEndian(height) + QByteArray("\x08\x02\x00\x00\x00", 5)) +
           chunk("IDAT", QByteArray::fromHex("789c0300000001")) + chunk("IEND", {});
}

/// A JPEG with an Exif segment that says how the camera was held (CIPA DC-008, tag 0x0112).
inline QByteArray withOrientation(const QByteArray& jpeg, quint8 orientation)
{
    const QByteArray tiff = QByteArray("MM\x00\x2A\x00\x00\x00\x08", 8) + // big endian, directory at 8
                            QByteArray("\x00\x01", 2) +                   // one entry
                            QByteArray("\x01\x12\x00\x03\x00\x00\x00\x01\x00", 9) + char(orientation) +
                            QByteArray("\x00\x00\x00\x00\x00\x00", 6); // padding, no further directory
    const QByteArray body = QByteArray("Exif\x00\x00", 6) + tiff;
    const auto length = quint16(body.size() + 2);
    return jpeg.left(2) + QByteArray("\xFF\xE1") + char(length >> 8U) + char(length & 0xffU) + body +
           jpeg.mid(2);
}

} // namespace siphonwright::test
