#pragma once

#include <QByteArray>
#include <QString>

namespace siphonwright::sheet {

/// What Qt's PDF writer has no place for.
struct PdfMetadata {
    QString author;
    QString subject;
};

/// A PDF as Qt writes it, with author and subject in its information dictionary and, the same, in its XMP
/// metadata, as PDF/A-1 (ISO 19005-1, from memory) wants them. A file laid out otherwise comes back as it is.
QByteArray withMetadata(const QByteArray& pdf, const PdfMetadata& metadata);

} // namespace siphonwright::sheet
