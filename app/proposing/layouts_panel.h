#pragma once

#include "app/document/document.h"
#include "app/drawing/ghost.h"
#include "app/proposing/proposer.h"

#include <QWidget>

#include <cstdint>
#include <memory>
#include <optional>

class QLabel;
class QListWidget;
class QListWidgetItem;
class QProgressBar;
class QPushButton;
class QSplitter;

namespace siphonwright::proposing {

class LayoutChoices;

/// Whole layouts to choose from: what they are proposed from, the list, and what the chosen one changes and
/// leaves. The chosen one is shown as a ghost on the elevation while the panel is in sight; taking it is one
/// undo step. A list for an earlier drawing, or for other choices, has to be renewed first.
class LayoutsPanel : public QWidget {
    Q_OBJECT
public:
    LayoutsPanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    /// Look for layouts, if it can be done and there is no list for this drawing and these choices.
    void begin();
    /// The area that was asked for by areaWanted().
    void setArea(Vec2 least, Vec2 most);
    bool busy() const { return search_ != 0; }

Q_SIGNALS:
    void ghostChanged(std::shared_ptr<const siphonwright::drawing::Ghost> ghost);
    void areaWanted();
    void ruleWanted(const QString& rule);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void start();
    void stop(const QString& why);
    void takeAnswer();
    void showProposals();
    void documentChanged();
    void choicesChanged();
    void rowChosen();
    void activate(QListWidgetItem* item);
    void takeLayout();
    void showGhost();
    void divide();
    void refresh();
    bool isCurrent() const;
    const Proposal* chosen() const;
    QString stateText() const;

    Document& document_;
    Selection& selection_;
    LayoutChoices* choices_;
    QPushButton* propose_;
    QPushButton* stop_;
    QProgressBar* progress_;
    QLabel* state_;
    QListWidget* list_;
    QSplitter* split_;
    QLabel* details_;
    QPushButton* take_;
    Proposer* proposer_;
    std::uint64_t search_ = 0; ///< that runs; 0: none
    std::optional<Sketch> asked_for_;
    bool choices_as_asked_ = true;
    std::optional<Proposals> found_;
    std::optional<std::size_t> taken_; ///< the one that the drawing has become
    QString stopped_;                  ///< why there is no list
};

} // namespace siphonwright::proposing
