#include "tests/sheet/yard_bus.h"

#include "app/sheet/pdf_metadata.h"
#include "app/sheet/sheet.h"

#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

using namespace siphonwright;

namespace {

QByteArray sheetOf(const Sketch& sketch, const QString& path)
{
    if (!sheet::exportTo(path, sketch, analyse(sketch), {}).isEmpty())
        return {};
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QString outputOf(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    return process.waitForFinished() && process.exitCode() == 0
               ? QString::fromUtf8(process.readAllStandardOutput())
               : QString();
}

Sketch withAwkwardNames()
{
    Sketch sketch = test::yardBus();
    sketch.sheet.creator = "Zoë <M> & Åsa (bay 3)";
    sketch.sheet.vehicle = "Bus №14, \"long\"";
    return sketch;
}

} // namespace

class TestPdfMetadata : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Each entry of the cross-reference table is the place of the object of its number (ISO 32000-1, 7.5.4).
    void everyObjectIsWhereTheTableSays()
    {
        const QTemporaryDir folder;
        const QByteArray pdf = sheetOf(withAwkwardNames(), folder.filePath(QStringLiteral("sheet.pdf")));
        const qsizetype start = pdf.lastIndexOf("startxref\n") + 10;
        const qsizetype table = pdf.mid(start, pdf.indexOf('\n', start) - start).trimmed().toLongLong();
        QCOMPARE(pdf.mid(table, 5), QByteArray("xref\n"));
        const qsizetype first = pdf.indexOf('\n', table + 5) + 1;
        const qsizetype end = pdf.indexOf("trailer", first);
        QCOMPARE((end - first) % 20, 0);
        const qsizetype count = (end - first) / 20;
        QVERIFY(count > 10);
        for (qsizetype number = 1; number < count; ++number) {
            const QByteArray entry = pdf.mid(first + number * 20, 20);
            if (entry[17] != 'n')
                continue;
            const QByteArray head = QByteArray::number(number) + " 0 obj";
            QCOMPARE(pdf.mid(entry.left(10).toLongLong(), head.size()), head);
        }
    }

    void readersFindTitleAuthorSubjectAndTheArchivalPart()
    {
        const QString reader = QStandardPaths::findExecutable(QStringLiteral("pdfinfo"));
        if (reader.isEmpty())
            QSKIP("pdfinfo (Debian: poppler-utils) is not installed");
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        QVERIFY(!sheetOf(withAwkwardNames(), path).isEmpty());
        const QStringList utf8{QStringLiteral("-enc"), QStringLiteral("UTF-8"), path};
        const QString info = outputOf(reader, utf8);
        for (const char* said :
             {"Coolant heater, bus 14", "Zoë <M> & Åsa (bay 3)",
              "Layout sheet SW-0014: Bus №14, \"long\"; Tank heater under the rear engine", "CreationDate"})
            QVERIFY2(info.contains(QString::fromUtf8(said)), qPrintable(info));
        const QString xmp = outputOf(reader, QStringList{QStringLiteral("-meta")} + utf8);
        for (const char* said :
             {"pdfaid:part=\"1\"", "pdfaid:conformance=\"B\"",
              "<rdf:li>Zoë &lt;M&gt; &amp; Åsa (bay 3)</rdf:li>", "Bus №14, &quot;long&quot;"})
            QVERIFY2(xmp.contains(QString::fromUtf8(said)), qPrintable(xmp));
    }

    /// Signs that a font swaps for others beside figures and capitals would be lost to who searches or
    /// copies.
    void textIsFoundSignBySign()
    {
        const QString reader = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
        if (reader.isEmpty())
            QSKIP("pdftotext (Debian: poppler-utils) is not installed");
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        Sketch sketch = withAwkwardNames();
        sketch.sheet.creator = "BAY 3 (4:5) [6] -7 +8";
        QVERIFY(!sheetOf(sketch, path).isEmpty());
        const QString text =
            outputOf(reader, {QStringLiteral("-enc"), QStringLiteral("UTF-8"), path, QStringLiteral("-")});
        QVERIFY2(text.contains(QStringLiteral("BAY 3 (4:5) [6] -7 +8")), qPrintable(text));
    }

    void aStricterReaderFindsNothingToMend()
    {
        const QString reader = QStandardPaths::findExecutable(QStringLiteral("qpdf"));
        if (reader.isEmpty())
            QSKIP("qpdf (Debian: qpdf) is not installed");
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        QVERIFY(!sheetOf(withAwkwardNames(), path).isEmpty());
        // 0: nothing, 3: warnings, for instance of a table that had to be rebuilt.
        QCOMPARE(QProcess::execute(reader, {QStringLiteral("--check"), path}), 0);
    }

    /// PDF/A-1 (ISO 19005-1, from memory) allows no transparency, no encryption and wants fonts in the file.
    void nothingInTheFileIsForbiddenToAnArchivalOne()
    {
        const QTemporaryDir folder;
        const QByteArray pdf = sheetOf(withAwkwardNames(), folder.filePath(QStringLiteral("sheet.pdf")));
        QVERIFY(pdf.contains("/OutputIntents"));
        QVERIFY(pdf.contains("/FontFile"));
        QVERIFY(pdf.contains("/ToUnicode"));
        QCOMPARE(pdf.count("/SMask"), pdf.count("/SMask /None"));
        for (const char* forbidden : {"/Encrypt", "/JavaScript", "/EmbeddedFile", "/LZWDecode"})
            QVERIFY2(!pdf.contains(forbidden), forbidden);
    }

    void aFileLaidOutOtherwiseStaysAsItIs()
    {
        const QByteArray other("%PDF-1.4\n% of another writer\n");
        QCOMPARE(sheet::withMetadata(other, {QStringLiteral("A"), QStringLiteral("B")}), other);
    }
};

QTEST_MAIN(TestPdfMetadata)
#include "test_pdf_metadata.moc"
