#pragma once

#include <QVBoxLayout>
#include <QWidget>

#include <functional>
#include <utility>

namespace siphonwright {

/// The place of a panel that is built when it is first wanted: one that stands behind another's tab, or is
/// away, costs the program's start nothing.
template <class Panel>
class LatePanel : public QWidget {
public:
    using Build = std::function<Panel*(QWidget* parent)>;

    /// @param size what the panel will ask for; without one, what the others in its place have
    explicit LatePanel(Build build, QSize size = {}, QWidget* parent = nullptr)
        : QWidget(parent), build_(std::move(build)), size_(size)
    {
        auto* whole = new QVBoxLayout(this);
        whole->setContentsMargins(0, 0, 0, 0);
    }

    /// Builds it when it is not yet.
    Panel& panel()
    {
        if (!panel_) {
            panel_ = build_(this);
            layout()->addWidget(panel_);
        }
        return *panel_;
    }
    /// Nothing before it is wanted.
    Panel* built() const { return panel_; }

    QSize sizeHint() const override { return size_.isValid() ? size_ : QWidget::sizeHint(); }

private:
    Build build_;
    QSize size_;
    Panel* panel_ = nullptr;
};

} // namespace siphonwright
