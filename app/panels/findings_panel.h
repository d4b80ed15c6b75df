#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;

namespace siphonwright::panels {

class FindingRow;
class FixBar;
class FindingsModel;

/// What was found, what could not be judged, and how much of each; choosing one selects its part.
class FindingsPanel : public QWidget {
    Q_OBJECT
public:
    FindingsPanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    void setLook(drawing::Look look);
    QString summary() const;
    void fix(); ///< as its button does: makes the change that is offered, if one is

Q_SIGNALS:
    void findingChosen(int index); ///< its place is wanted in view
    void ruleWanted(const QString& rule);

private:
    void rowChosen();
    void followSelection();
    void refresh();
    QString ruleOfRow() const;
    void showRuleLink();
    void showMenu(const QPoint& at);

    Document& document_;
    Selection& selection_;
    FindingsModel* model_;
    FindingRow* row_;
    QLabel* summary_;
    QListView* list_;
    FixBar* fix_;
    QPushButton* about_rule_;
    bool following_ = false;
};

} // namespace siphonwright::panels
