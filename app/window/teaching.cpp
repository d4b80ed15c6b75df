#include "app/window/teaching.h"

#include "app/language/language.h"

#include <QCoreApplication>
#include <QDialog>
#include <QFile>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextCursor>
#include <QTextDocument>
#include <QUrl>
#include <QVBoxLayout>

namespace siphonwright {

namespace {

/// Room over headings and between paragraphs, which Markdown brings none of.
void spaceOut(QTextDocument& document)
{
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        QTextBlockFormat format = block.blockFormat();
        format.setTopMargin(format.headingLevel() > 0 ? 18 : format.topMargin());
        format.setBottomMargin(format.headingLevel() > 0 ? 6 : 4);
        QTextCursor(block).setBlockFormat(format);
    }
}

} // namespace

void showTeaching(QWidget& window, const std::function<void(const QString&)>& open_sample)
{
    const QString name = QStringLiteral("teaching");
    if (auto* open = window.findChild<QDialog*>(name)) {
        open->raise();
        open->activateWindow();
        return;
    }
    QFile page(QStringLiteral(":/teaching_%1.md").arg(language::inUse()));
    if (!page.exists())
        page.setFileName(QStringLiteral(":/teaching.md"));
    if (!page.open(QIODevice::ReadOnly))
        return;
    auto* dialog = new QDialog(&window);
    dialog->setObjectName(name);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(QCoreApplication::translate("Teaching", "Teaching air locks"));
    auto* text = new QTextBrowser(dialog);
    text->setMarkdown(QString::fromUtf8(page.readAll()));
    spaceOut(*text->document());
    text->setOpenLinks(false);
    text->setAccessibleName(dialog->windowTitle());
    QObject::connect(text, &QTextBrowser::anchorClicked, &window, [open_sample](const QUrl& link) {
        if (link.scheme() == QLatin1String("sample"))
            open_sample(link.path());
    });
    text->setFrameShape(QFrame::NoFrame);
    text->document()->setDocumentMargin(18);
    auto* column = new QVBoxLayout(dialog);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(text);
    dialog->resize(760, 720);
    dialog->show();
}

} // namespace siphonwright
