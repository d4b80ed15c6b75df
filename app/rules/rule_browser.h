#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QWidget>

class QLineEdit;
class QScrollArea;
class QTreeView;

namespace siphonwright::rules {

class RuleList;
class RulePage;
class RuleSearch;

/// A window of its own beside the drawing: all rules on the left, the chosen one's page on the right.
class RuleBrowser : public QWidget {
    Q_OBJECT
public:
    explicit RuleBrowser(Document& document, QWidget* parent = nullptr);

    /// Turn to a rule; an unknown id leaves the page as it is.
    void showRule(const QString& rule);
    QString currentRule() const;
    void setLook(drawing::Look look);

private:
    QWidget* makeLeft();
    void search(const QString& words);
    void turnTo(const QString& rule);

    Document& document_;
    RuleList* list_;
    RuleSearch* search_;
    QLineEdit* sought_;
    QTreeView* tree_;
    QScrollArea* right_;
    RulePage* page_ = nullptr;
    drawing::Look look_ = drawing::Look::light;
};

} // namespace siphonwright::rules
