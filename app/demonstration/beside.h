#pragma once

#include "app/canvas/elevation_view.h"
#include "app/demonstration/player.h"

class QLabel;

namespace siphonwright::demonstration {

/// A second drawing beside the one that plays, from a file, to be looked at only: as found beside as fixed,
/// by the same clock.
class Beside : public QWidget {
    Q_OBJECT
public:
    explicit Beside(const Player& player, QWidget* parent = nullptr);

    void take(SketchFile file);
    /// Findings, and whether it circulates.
    void setFindingsShown(bool shown);
    ElevationView& view() { return *view_; }
    /// What is shown there now; null before a file was opened.
    const Moment* moment() const;

protected:
    /// It is looked at only, so it always shows all.
    void resizeEvent(QResizeEvent* event) override;

private:
    void follow();
    void remake();

    const Player& player_;
    Document document_;
    Selection selection_;
    ElevationView* view_;
    Demonstration demonstration_;
    std::size_t index_ = 0;
    bool engine_runs_ = true;
    QLabel* name_;
    QLabel* words_;
    QLabel* verdict_;
};

} // namespace siphonwright::demonstration
