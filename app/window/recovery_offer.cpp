#include "app/window/recovery_offer.h"

#include "app/window/plain_box.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace siphonwright {

RecoveryOffer::RecoveryOffer(const QString& folder, const QStringList& reports, QWidget* parent)
    : QDialog(parent), folder_(folder), sentence_(new QLabel(this)), list_(new QTreeWidget(this))
{
    setObjectName(QStringLiteral("recovery-offer"));
    setWindowTitle(tr("Recover drawings"));
    setAttribute(Qt::WA_DeleteOnClose);
    sentence_->setWordWrap(true);
    list_->setObjectName(QStringLiteral("recovery-list"));
    list_->setAccessibleName(tr("Drawings that can be recovered"));
    list_->setRootIsDecorated(false);
    list_->setHeaderLabels({tr("Drawing"), tr("Last kept"), tr("Folder")});
    auto* column = new QVBoxLayout(this);
    column->addWidget(sentence_);
    column->addWidget(list_, 1);
    for (const QString& report : reports) {
        auto* told =
            new QLabel(tr("A report of the unexpected end, without names or texts of yours, is in %1")
                           .arg(QDir::toNativeSeparators(report)),
                       this);
        told->setObjectName(QStringLiteral("crash-report"));
        told->setWordWrap(true);
        told->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        column->addWidget(told);
    }
    auto* buttons = new QDialogButtonBox(this);
    open_ = buttons->addButton(tr("&Open"), QDialogButtonBox::ActionRole);
    discard_ = buttons->addButton(tr("&Throw away…"), QDialogButtonBox::ActionRole);
    auto* later = buttons->addButton(tr("&Keep for later"), QDialogButtonBox::RejectRole);
    open_->setObjectName(QStringLiteral("recovery-open"));
    discard_->setObjectName(QStringLiteral("recovery-discard"));
    later->setObjectName(QStringLiteral("recovery-later"));
    open_->setDefault(true);
    column->addWidget(buttons);
    connect(later, &QPushButton::clicked, this, &QDialog::reject);
    connect(discard_, &QPushButton::clicked, this, &RecoveryOffer::discard);
    const auto want = [this] {
        if (const RecoveryEntry* entry = current()) {
            const QString file = entry->file;
            accept();
            Q_EMIT wanted(file);
        }
    };
    connect(open_, &QPushButton::clicked, this, want);
    connect(list_, &QTreeWidget::itemActivated, this, want);
    resize(720, 320);
    refresh();
}

const RecoveryEntry* RecoveryOffer::current() const
{
    const int row = list_->indexOfTopLevelItem(list_->currentItem());
    return row < 0 ? nullptr : &entries_[row];
}

void RecoveryOffer::refresh()
{
    entries_ = recoverable(folder_);
    list_->clear();
    for (const RecoveryEntry& entry : entries_) {
        const QFileInfo original(entry.original);
        const QString name = entry.original.isEmpty() ? tr("untitled") : original.fileName();
        const QString place = entry.original.isEmpty() ? tr("not saved yet")
                                                       : QDir::toNativeSeparators(original.absolutePath());
        new QTreeWidgetItem(
            list_, {name, QLocale().toString(entry.edited.toLocalTime(), QLocale::ShortFormat), place});
    }
    if (!entries_.isEmpty())
        list_->setCurrentItem(list_->topLevelItem(0));
    list_->header()->resizeSections(QHeaderView::ResizeToContents);
    list_->setVisible(!entries_.isEmpty());
    open_->setEnabled(!entries_.isEmpty());
    discard_->setEnabled(!entries_.isEmpty());
    sentence_->setText(
        entries_.isEmpty()
            ? tr("There is no drawing to recover.")
            : tr("These drawings have edits that were not saved. Open one to go on with it; its "
                 "file stays as it is until you save."));
}

void RecoveryOffer::discard()
{
    const RecoveryEntry* entry = current();
    if (!entry)
        return;
    auto* box = new QMessageBox(QMessageBox::Warning, tr("Throw away"),
                                tr("Throw away the unsaved edits of %1?").arg(list_->currentItem()->text(0)),
                                QMessageBox::Cancel, this);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setInformativeText(tr("They cannot be brought back. The drawing's own file stays as it is."));
    showPlainText(*box);
    auto* away = box->addButton(tr("&Throw away"), QMessageBox::DestructiveRole);
    box->setDefaultButton(QMessageBox::Cancel);
    connect(box, &QMessageBox::buttonClicked, this,
            [this, away, doomed = *entry](const QAbstractButton* pressed) {
                if (pressed != away)
                    return;
                discardRecovery(doomed);
                refresh();
            });
    box->open();
}

} // namespace siphonwright
