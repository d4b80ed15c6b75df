#pragma once

#include "tests/near.h"
#include "tests/sound_loop.h"

#include "app/canvas/elevation_view.h"

#include <QApplication>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>

namespace siphonwright::test {

/// A drawing on the screen with a hand that points in millimetres of the drawing.
struct Bench {
    Document document;
    Selection selection;
    ElevationView view{document, selection};
    QPointF last;

    explicit Bench(Sketch sketch = soundLoop())
    {
        document.reset(std::move(sketch));
        view.resize(1200, 900);
        view.show();
        view.zoomToFit();
    }

    const Sketch& sketch() const { return document.sketch(); }
    const Hose& hose(std::size_t index) const { return *document.sketch().hoses.at(index); }

    bool found(const std::string& rule) const
    {
        const auto& findings = document.analysis().findings;
        return std::any_of(findings.begin(), findings.end(),
                           [&](const Finding& f) { return f.rule == rule; });
    }

    void send(QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons held,
              Qt::KeyboardModifiers modifiers)
    {
        last = at;
        QMouseEvent event(type, at, view.mapToGlobal(at), button, held, modifiers);
        QApplication::sendEvent(&view, &event);
    }
    void press(Vec2 at, Qt::KeyboardModifiers modifiers = {})
    {
        send(QEvent::MouseButtonPress, view.toScreen(at), Qt::LeftButton, Qt::LeftButton, modifiers);
    }
    /// Move with the button held, in steps as a hand does.
    void pull(Vec2 to, Qt::KeyboardModifiers modifiers = {})
    {
        const QPointF from = last;
        const QPointF end = view.toScreen(to);
        for (int i = 1; i <= 5; ++i)
            send(QEvent::MouseMove, from + (end - from) * i / 5, Qt::NoButton, Qt::LeftButton, modifiers);
    }
    void release(Qt::KeyboardModifiers modifiers = {})
    {
        send(QEvent::MouseButtonRelease, last, Qt::LeftButton, Qt::NoButton, modifiers);
    }
    void drag(Vec2 from, Vec2 to, Qt::KeyboardModifiers modifiers = {})
    {
        press(from, modifiers);
        pull(to, modifiers);
        release(modifiers);
    }
    void hover(Vec2 at, Qt::KeyboardModifiers modifiers = {})
    {
        send(QEvent::MouseMove, view.toScreen(at), Qt::NoButton, Qt::NoButton, modifiers);
    }
    void click(Vec2 at, Qt::KeyboardModifiers modifiers = {})
    {
        hover(at, modifiers);
        press(at, modifiers);
        release(modifiers);
    }
    void doubleClick(Vec2 at)
    {
        click(at);
        send(QEvent::MouseButtonDblClick, view.toScreen(at), Qt::LeftButton, Qt::LeftButton, {});
        release();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&view, key, modifiers); }
};

/// The sound loop without its return hose: outlet stop at x 1030, z 260; port stop at x 830, z 700.
inline Sketch withoutReturn()
{
    Sketch sketch = soundLoop();
    sketch.hoses.pop_back();
    return sketch;
}

constexpr Vec2 outlet_stop = {1030, 260};
constexpr Vec2 return_stop = {830, 700};
constexpr Vec2 return_bend = {1030, 690};

} // namespace siphonwright::test
