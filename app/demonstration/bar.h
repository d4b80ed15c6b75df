#pragma once

#include "app/demonstration/player.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLayout;
class QToolButton;

namespace siphonwright::demonstration {

class ScrubBar;
class Votes;

/// Under the elevation while demonstrating: play, step, scrub, speed, the line of words, and what a presenter
/// needs at hand. Keys: Space, Left and Right, Page up and down, Home, H, F11, Escape.
class DemonstrationBar : public QWidget {
    Q_OBJECT
public:
    DemonstrationBar(Player& player, const Document& document, QWidget* parent = nullptr);

    /// These keys do the same with the focus on another widget, as long as the demonstration runs.
    void takeKeysOf(QWidget& widget);
    bool findingsHidden() const;
    void setFindingsHidden(bool on);
    void setLarge(bool on);
    void ask(bool on);
    Votes& votes() { return *votes_; }
    QString words() const;

Q_SIGNALS:
    void findingsHiddenChanged(bool hidden);
    void fullScreenWanted();
    void leaveWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QToolButton* addButton(QLayout& row, const QString& text, const char* id, const QString& tip);
    void setSizes();
    void buildControls();
    void buildLine();
    bool isOurs(const QKeyEvent& event) const;
    bool act(const QKeyEvent& event);
    void remade();
    void moved();

    Player& player_;
    const Document& document_;
    ScrubBar* scrub_;
    QToolButton* play_ = nullptr;
    QToolButton* hide_ = nullptr;
    QToolButton* ask_ = nullptr;
    QComboBox* speed_;
    QLabel* clock_;
    QLabel* words_;
    Votes* votes_;
    bool large_ = false;
    int sized_for_px_ = 0; ///< the height of the usual text that sizes were last set for
};

} // namespace siphonwright::demonstration
