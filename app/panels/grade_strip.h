#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QWidget>

class QBoxLayout;
class QHBoxLayout;
class QLabel;
class QToolButton;

namespace siphonwright::panels {

class GradeSlider;

/// Under the elevation: how the vehicle stands, and in which grades the job is sound. Moving it tilts level
/// lines and plumb on the drawing, which stays square; the sketch is not changed.
class GradeStrip : public QWidget {
    Q_OBJECT
public:
    explicit GradeStrip(Document& document, QWidget* parent = nullptr);

    void setLook(drawing::Look look);
    /// What it says of the sound grades.
    QString verdict() const;

    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void arrange();
    void moved();
    void refresh();

    Document& document_;
    GradeSlider* along_;
    GradeSlider* across_;
    QLabel* stands_;
    QToolButton* level_;
    QLabel* sound_;
    QBoxLayout* whole_ = nullptr;
    QBoxLayout* sliders_ = nullptr; ///< both rows, beside or under each other
    QHBoxLayout* lengthways_ = nullptr;
    QHBoxLayout* crossways_ = nullptr; ///< with how the vehicle stands
};

} // namespace siphonwright::panels
