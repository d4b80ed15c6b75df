#include "app/sheet/pdf_metadata.h"

#include <QList>
#include <QtEndian>

#include <utility>

namespace siphonwright::sheet {

namespace {

/// What is put in at a place of the file as it was.
struct Insertion {
    qsizetype at = 0;
    qsizetype replaced = 0; ///< bytes from there on that it stands for
    QByteArray text;

    qsizetype growth() const { return text.size() - replaced; }
};

/// A text string of a PDF: UTF-16 with its byte order mark, in hexadecimal digits.
QByteArray textString(const QString& text)
{
    QByteArray bytes("\xfe\xff", 2);
    for (const QChar c : text) {
        const quint16 big = qToBigEndian(c.unicode());
        bytes.append(reinterpret_cast<const char*>(&big), 2);
    }
    return '<' + bytes.toHex() + '>';
}

QByteArray information(const PdfMetadata& metadata)
{
    QByteArray lines;
    if (!metadata.author.isEmpty())
        lines += "/Author " + textString(metadata.author) + '\n';
    if (!metadata.subject.isEmpty())
        lines += "/Subject " + textString(metadata.subject) + '\n';
    return lines;
}

QByteArray xmp(const PdfMetadata& metadata)
{
    QByteArray out = "  <rdf:Description xmlns:dc=\"http://purl.org/dc/elements/1.1/\" rdf:about=\"\">\n";
    if (!metadata.author.isEmpty())
        out += "      <dc:creator><rdf:Seq><rdf:li>" + metadata.author.toHtmlEscaped().toUtf8() +
               "</rdf:li></rdf:Seq></dc:creator>\n";
    if (!metadata.subject.isEmpty())
        out += "      <dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">" +
               metadata.subject.toHtmlEscaped().toUtf8() + "</rdf:li></rdf:Alt></dc:description>\n";
    return out + "    </rdf:Description>\n  ";
}

/// In the order of their places; empty if the file is not laid out as Qt does it.
QList<Insertion> insertionsFor(const QByteArray& pdf, const PdfMetadata& metadata)
{
    const QByteArray info_head = "1 0 obj\n<<\n";
    const qsizetype info = pdf.indexOf(info_head);
    const QByteArray length_key = "/Length ";
    const qsizetype stream = pdf.indexOf("/Subtype /XML");
    const qsizetype length = stream < 0 ? -1 : pdf.indexOf(length_key, stream);
    const qsizetype end = length < 0 ? -1 : pdf.indexOf("</rdf:RDF>", length);
    if (info < 0 || end < 0 || info > stream || !pdf.contains("/Info 1 0 R"))
        return {};
    const qsizetype digits = length + length_key.size();
    qsizetype after = digits;
    while (after < pdf.size() && pdf[after] >= '0' && pdf[after] <= '9')
        ++after;
    bool is_number = false;
    const qlonglong old = pdf.mid(digits, after - digits).toLongLong(&is_number);
    if (!is_number)
        return {};
    const QByteArray more = xmp(metadata);
    return {{info + info_head.size(), 0, information(metadata)},
            {digits, after - digits, QByteArray::number(old + more.size())},
            {end, 0, more}};
}

/// Where something of the old file is in the new one.
qlonglong moved(qlonglong offset, const QList<Insertion>& insertions)
{
    qlonglong out = offset;
    for (const Insertion& one : insertions)
        if (one.at < offset)
            out += one.growth();
    return out;
}

/// The cross-reference table's entries, 20 bytes each, and what points at the table.
bool renewReferences(QByteArray& pdf, const QList<Insertion>& insertions)
{
    constexpr qsizetype entry = 20;
    constexpr qsizetype digits = 10;
    const qsizetype start = pdf.lastIndexOf("startxref\n");
    qsizetype table = pdf.lastIndexOf("\nxref\n", start);
    const qsizetype trailer = pdf.lastIndexOf("trailer\n", start);
    if (start < 0 || table < 0 || trailer < table)
        return false;
    const qsizetype first = pdf.indexOf('\n', table + 6) + 1;
    if (first <= 0 || (trailer - first) % entry != 0)
        return false;
    for (qsizetype at = first; at < trailer; at += entry)
        if (pdf[at + entry - 3] == 'n')
            pdf.replace(at, digits,
                        QByteArray::number(moved(pdf.mid(at, digits).toLongLong(), insertions))
                            .rightJustified(digits, '0'));
    const qsizetype number = start + 10;
    const qsizetype line_end = pdf.indexOf('\n', number);
    const qlonglong old = pdf.mid(number, line_end - number).trimmed().toLongLong();
    pdf.replace(number, line_end - number, QByteArray::number(moved(old, insertions)));
    return true;
}

} // namespace

QByteArray withMetadata(const QByteArray& pdf, const PdfMetadata& metadata)
{
    if (metadata.author.isEmpty() && metadata.subject.isEmpty())
        return pdf;
    const QList<Insertion> insertions = insertionsFor(pdf, metadata);
    QByteArray out = pdf;
    if (insertions.isEmpty())
        return pdf;
    for (auto one = insertions.rbegin(); one != insertions.rend(); ++one)
        out.replace(one->at, one->replaced, one->text);
    return renewReferences(out, insertions) ? out : pdf;
}

} // namespace siphonwright::sheet
