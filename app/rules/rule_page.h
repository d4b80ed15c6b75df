#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace siphonwright::rules {

/// All about one rule: why, the wrong and the right case, what it says about this drawing, its limits, basis
/// and fix.
class RulePage : public QWidget {
    Q_OBJECT
public:
    RulePage(Document& document, const Rule& rule, drawing::Look look, QWidget* parent = nullptr);

    const Rule& rule() const { return rule_; }

private:
    void addHeading(const QString& text);
    QLabel* addText(const QString& text, const char* name);
    void addDrawings(drawing::Look look);
    void refresh();
    QString saysAboutThisDrawing() const;

    Document& document_;
    const Rule& rule_;
    QVBoxLayout* column_;
    QLabel* here_;
};

} // namespace siphonwright::rules
