#pragma once

#include "app/canvas/shelf_part.h"
#include "app/drawing/look.h"

#include <QListWidget>

namespace siphonwright {

/// Parts to be dragged onto the drawing; Enter puts the current one in the middle.
class Shelf : public QListWidget {
    Q_OBJECT
public:
    explicit Shelf(QWidget* parent = nullptr);

    void setLook(drawing::Look look);
    ShelfPart partOf(const QListWidgetItem& item) const;

Q_SIGNALS:
    void wanted(const siphonwright::ShelfPart& part);

protected:
    QMimeData* mimeData(const QList<QListWidgetItem*>& items) const override;
    QStringList mimeTypes() const override;
    void startDrag(Qt::DropActions actions) override;
    QSize sizeHint() const override { return {190, 200}; }

private:
    void addHeading(const QString& title);
    void addPart(ShelfPart::What what, const std::string& template_id, const QString& title,
                 const QString& icon);

    std::vector<ShelfPart> parts_;
};

} // namespace siphonwright
