#pragma once

#include "app/document/document.h"

#include <QFrame>

#include <cstddef>
#include <optional>
#include <set>

class QLabel;
class QPushButton;
class QToolButton;

namespace siphonwright {

class Actions;

/// Leads through a first sketch in a strip over the elevation: one step at a time, what to do in a sentence,
/// a button that starts it. That a step is done is seen in the document. Steps can be skipped, the strip can
/// be left, and Help begins it again.
class FirstSteps : public QFrame {
    Q_OBJECT
public:
    FirstSteps(Document& document, Selection& selection, const Actions& actions, QWidget* parent);

    /// For another drawing on the table: lead through it, unless its loop is drawn or the user has left.
    void restart();
    /// From the first step that is not done, whatever was skipped or left before.
    void begin();
    /// Offer it beside the drawing that greets a first start.
    void invite();

private:
    enum class Stage { away, invites, leads };
    struct Step {
        const char* name;
        const char* sentence;
        const char* button;
        const char* action;
        bool (*done)(const FirstSteps&);
    };
    static const std::vector<Step>& steps();

    void refresh();
    void act();
    void handToolAgain();
    void skip();
    void leave();
    bool loopIsDrawn() const;
    std::size_t current() const;
    QString overview() const;

    Document& document_;
    Selection& selection_;
    const Actions& actions_;
    QLabel* title_;
    QLabel* sentence_;
    QPushButton* do_;
    QPushButton* skip_;
    QToolButton* close_;
    Stage stage_ = Stage::away;
    std::set<std::size_t> skipped_;
    std::optional<std::size_t> acted_; ///< the step whose button was pressed last
    std::ptrdiff_t valves_ = 0;        ///< in the drawing when it was
    bool looked_ = false;              ///< a finding was selected since the strip began
};

} // namespace siphonwright
