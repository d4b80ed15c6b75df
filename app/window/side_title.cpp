#include "app/window/side_title.h"

#include <QDockWidget>
#include <QEvent>
#include <QPainter>
#include <QStyle>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright {

namespace {

constexpr int margin_px = 3;

QToolButton* button(QStyle::StandardPixmap picture, const QString& name, QWidget& title)
{
    auto* made = new QToolButton(&title);
    made->setIcon(title.style()->standardIcon(picture));
    made->setToolTip(name);
    made->setAccessibleName(name);
    made->setFocusPolicy(Qt::NoFocus); // as a dock's own: the menu View has both by key
    // The style's frame and padding would make the title as wide as a tool bar.
    made->setStyleSheet(QStringLiteral("QToolButton { padding: 1px; }"));
    return made;
}

} // namespace

SideTitle::SideTitle(QDockWidget& dock) : QWidget(&dock), dock_(dock)
{
    setObjectName(QStringLiteral("side-title"));
    setToolTip(dock.windowTitle());
    connect(&dock, &QWidget::windowTitleChanged, this, [this](const QString& name) {
        setToolTip(name);
        update();
    });
    auto* close = button(QStyle::SP_TitleBarCloseButton, tr("Close this panel"), *this);
    auto* lift = button(QStyle::SP_TitleBarNormalButton, tr("Lift this panel out of the window"), *this);
    connect(close, &QToolButton::clicked, &dock, &QWidget::close);
    connect(lift, &QToolButton::clicked, &dock, [&dock] { dock.setFloating(!dock.isFloating()); });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin_px, margin_px, margin_px, margin_px);
    column->setSpacing(margin_px);
    column->addWidget(close, 0, Qt::AlignHCenter);
    column->addWidget(lift, 0, Qt::AlignHCenter);
    column->addStretch();
    sizeButtons();
}

/// Their pictures grow with the type.
void SideTitle::sizeButtons()
{
    const int side_px = fontMetrics().ascent();
    for (auto* one : findChildren<QToolButton*>())
        one->setIconSize({side_px, side_px});
}

void SideTitle::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        sizeButtons();
}

QSize SideTitle::minimumSizeHint() const
{
    const QSize buttons = layout()->minimumSize();
    return {std::max(buttons.width(), fontMetrics().height() + 2 * margin_px), buttons.height()};
}

void SideTitle::paintEvent(QPaintEvent*)
{
    const int room = height() - layout()->minimumSize().height() - 2 * margin_px;
    if (fontMetrics().horizontalAdvance(dock_.windowTitle()) > room)
        return;
    QPainter painter(this);
    painter.translate(0, height() - margin_px);
    painter.rotate(-90);
    painter.drawText(QRect(0, 0, room, width()), Qt::AlignLeft | Qt::AlignVCenter, dock_.windowTitle());
}

void putTitleAtSide(QDockWidget& dock)
{
    auto* title = new SideTitle(dock);
    const auto put = [&dock, title](bool floats) {
        dock.setFeatures(dock.features().setFlag(QDockWidget::DockWidgetVerticalTitleBar, !floats));
        dock.setTitleBarWidget(floats ? nullptr : title);
        title->setVisible(!floats);
    };
    put(dock.isFloating());
    QObject::connect(&dock, &QDockWidget::topLevelChanged, title, put);
}

} // namespace siphonwright
