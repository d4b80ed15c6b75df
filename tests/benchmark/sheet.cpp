#include "tests/benchmark/timing.h"
#include "tests/sheet/sample_files.h"
#include "tests/sheet/text_recorder.h"

#include "app/paper/sheet_set.h"
#include "app/sheet/sheet.h"

#include <QApplication>
#include <QBuffer>
#include <QFileInfo>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <QTextDocument>

#include <cstdio>
#include <cstdlib>

/// How long a sheet of four pages takes, from a proved analysis to the PDF on disk: page 1 with all that
/// is needed to cut and fit, and of the checklist what makes four. Beside it, in the same run, Qt's own text
/// layout (QTextDocument) puts the same words on pages through the same PDF writer. A sample's path as the
/// argument takes that one.
namespace {

using namespace siphonwright;

constexpr std::size_t page_count = 4;
constexpr int calls = 15;

std::vector<sheet::FurtherPage> fourPages(const Sketch& sketch, const Analysis& analysis,
                                          sheet::Options options)
{
    paper::SheetSet set;
    set.checklist = true;
    set.parts = true;
    std::vector<sheet::FurtherPage> pages = paper::pagesOf(sketch, analysis, set, options);
    pages.resize(std::min(pages.size(), page_count));
    return pages;
}

void printByQt(const QString& words)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    QTextDocument document(words);
    document.print(&writer);
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const QString path = argc > 1 ? QString::fromLocal8Bit(argv[1])
                                  : QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/sound-bus.siphon");
    const Sketch sketch = test::sketchAt(path);
    ProofOptions with_bands;
    with_bands.bands = true;
    const Analysis analysis = proved(sketch, with_bands);
    const sheet::Options options;
    const QTemporaryDir folder;
    const QString to = folder.filePath(QStringLiteral("sheet.pdf"));
    const QString words = test::wordsOn(fourPages(sketch, analysis, options), QLatin1Char('\n'));
    const double reference = timing::median_us(calls, [&words] { printByQt(words); });
    timing::line("reference: the same words, QTextDocument to PDF", reference, reference);
    const double sheet_us = timing::median_us(calls, [&] {
        if (!sheet::write(to, fourPages(sketch, analysis, options), sketch, options.png_dpi).isEmpty())
            std::abort();
    });
    timing::line("four pages, planned, painted and written", sheet_us, reference);
    std::printf("%zu pages, %lld bytes; wanted: under 300 ms and 500 kB\n",
                fourPages(sketch, analysis, options).size(), static_cast<long long>(QFileInfo(to).size()));
    return EXIT_SUCCESS;
}
