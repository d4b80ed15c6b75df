#pragma once

#include "app/document/recovery.h"

#include <QDialog>
#include <QList>
#include <QString>
#include <QStringList>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace siphonwright {

/// What can be recovered, to be opened, kept for later, or thrown away one by one. Nothing goes by itself.
class RecoveryOffer : public QDialog {
    Q_OBJECT
public:
    /// \param reports crash reports to be told of
    RecoveryOffer(const QString& folder, const QStringList& reports, QWidget* parent);

Q_SIGNALS:
    void wanted(const QString& recovery_file);

private:
    void refresh();
    void discard();
    const RecoveryEntry* current() const;

    const QString folder_;
    QList<RecoveryEntry> entries_;
    QLabel* sentence_;
    QTreeWidget* list_;
    QPushButton* open_;
    QPushButton* discard_;
};

} // namespace siphonwright
