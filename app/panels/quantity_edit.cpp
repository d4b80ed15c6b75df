#include "app/panels/quantity_edit.h"

#include "app/language/in_words.h"

#include <QCursor>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QPixmap>
#include <QPolygonF>
#include <QStyle>

#include <cmath>
#include <limits>

namespace siphonwright::panels {

QuantityEdit::QuantityEdit(Unit unit, QWidget* parent)
    : QLineEdit(parent),
      unit_(unit),
      least_(std::numeric_limits<double>::lowest()),
      most_(std::numeric_limits<double>::max())
{
    connect(this, &QLineEdit::textEdited, this, [this] {
        typed_ = true;
        setProblem({});
    });
}

void QuantityEdit::setUnits(UnitSystem system)
{
    system_ = system;
    if (!typed_)
        showValue();
}

void QuantityEdit::setValue(std::optional<double> value)
{
    // What somebody is typing outlives a refresh that brings nothing new.
    if (typed_ && value == value_)
        return;
    value_ = value;
    typed_ = false;
    setProblem({});
    showValue();
}

void QuantityEdit::setMayBeEmpty(bool may_be_empty)
{
    may_be_empty_ = may_be_empty;
    setPlaceholderText(may_be_empty ? tr("not entered") : QString());
}

void QuantityEdit::setRange(double least, double most)
{
    least_ = least;
    most_ = most;
}

void QuantityEdit::setStock(const std::vector<std::pair<QString, double>>& stock)
{
    pick_ = new QAction(tr("Pick a usual size"), this);
    inkPick();
    addAction(pick_, QLineEdit::TrailingPosition);
    constexpr int room_for_button_px = 30;
    setMinimumWidth(minimumSizeHint().width() + fontMetrics().horizontalAdvance(QStringLiteral("00.0 mm")) +
                    room_for_button_px);
    auto* menu = new QMenu(this);
    for (const auto& [title, value] : stock) {
        const double chosen = value;
        connect(menu->addAction(title), &QAction::triggered, this, [this, chosen] {
            value_ = chosen;
            typed_ = false;
            setProblem({});
            showValue();
            Q_EMIT committed();
        });
    }
    connect(pick_, &QAction::triggered, this,
            [this, menu] { menu->popup(mapToGlobal(rect().bottomLeft())); });
}

/// The style's arrow is black on any ground.
void QuantityEdit::inkPick()
{
    constexpr int side_px = 64; // scaled down for any screen
    QPixmap arrow(side_px, side_px);
    arrow.fill(Qt::transparent);
    QPainter painter(&arrow);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette().color(QPalette::Text));
    painter.drawPolygon(QPolygonF({QPointF(14, 24), QPointF(50, 24), QPointF(32, 44)}));
    painter.end();
    pick_->setIcon(arrow);
}

void QuantityEdit::changeEvent(QEvent* event)
{
    QLineEdit::changeEvent(event);
    if (pick_ && (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange))
        inkPick();
}

bool QuantityEdit::commit()
{
    if (!typed_)
        return problem_.isEmpty();
    const QString typed = text().trimmed();
    std::optional<double> next;
    if (!(typed.isEmpty() && may_be_empty_)) {
        std::string why;
        next = parse(typedQuantity(typed, unit_), unit_, system_, &why);
        if (!next) {
            setProblem(inWords(why));
            return false;
        }
        if (const auto refused = refusal(*next)) {
            setProblem(*refused);
            return false;
        }
    }
    typed_ = false;
    const bool changed = next != value_;
    value_ = next;
    setProblem({});
    showValue();
    if (changed)
        Q_EMIT committed();
    return true;
}

std::optional<QString> QuantityEdit::refusal(double value) const
{
    const auto shown = [this](double limit) { return inWords(limit, unit_, system_); };
    if (!std::isfinite(value))
        return tr("This number is too large.");
    if (value < least_)
        return tr("Not under %1.").arg(shown(least_));
    if (value > most_)
        return tr("Not over %1.").arg(shown(most_));
    return std::nullopt;
}

void QuantityEdit::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (commit())
            selectAll();
        event->accept();
        return;
    }
    if (event->key() == Qt::Key_Escape && (typed_ || !problem_.isEmpty())) {
        typed_ = false;
        setProblem({});
        showValue();
        selectAll();
        event->accept();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

bool QuantityEdit::event(QEvent* event)
{
    // Escape belongs to the line while something is typed, not to the window's shortcut.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape && typed_) {
            event->accept();
            return true;
        }
    }
    return QLineEdit::event(event);
}

void QuantityEdit::focusOutEvent(QFocusEvent* event)
{
    QLineEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason)
        commit();
}

void QuantityEdit::showValue()
{
    setText(value_ ? inWords(*value_, unit_, system_) : QString());
    setCursorPosition(0);
}

void QuantityEdit::setProblem(const QString& sentence)
{
    if (problem_ == sentence)
        return;
    problem_ = sentence;
    setProperty("refused", !sentence.isEmpty());
    style()->unpolish(this);
    style()->polish(this);
    setAccessibleDescription(sentence);
    Q_EMIT problemChanged(sentence);
}

} // namespace siphonwright::panels
