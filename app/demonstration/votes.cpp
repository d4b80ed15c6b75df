#include "app/demonstration/votes.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>

#include <algorithm>

namespace siphonwright::demonstration {

Votes::Votes(QWidget* parent)
    : QFrame(parent), reveal_(new QPushButton(tr("Reveal"), this)), answer_(new QLabel(this))
{
    setObjectName(QStringLiteral("votes"));
    // Raised, so that a hand that counts finds them.
    setStyleSheet(
        QStringLiteral("QFrame#votes QToolButton { border: 1px solid palette(mid); border-radius: 4px; "
                       "min-width: 1.3em; padding: 1px 5px; }"
                       "QFrame#votes QToolButton:pressed { background: palette(midlight); }"
                       "QLabel#votes-yes, QLabel#votes-no { font-weight: 700; }"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 4, 10, 4);
    row->setSpacing(6);
    auto* question = new QLabel(tr("Will it circulate?"), this);
    question->setProperty("role", QStringLiteral("title"));
    question->setObjectName(QStringLiteral("votes-question"));
    row->addWidget(question);
    row->addSpacing(12);
    const QString names[2] = {tr("Yes"), tr("No")};
    const char* ids[2] = {"yes", "no"};
    for (int side = 0; side < 2; ++side) {
        row->addWidget(new QLabel(names[side], this));
        counts_[side] = new QLabel(this);
        counts_[side]->setMinimumWidth(24);
        counts_[side]->setAlignment(Qt::AlignCenter);
        counts_[side]->setObjectName(QStringLiteral("votes-%1").arg(QLatin1String(ids[side])));
        const auto button = [&](const QString& text, const char* what, int by) {
            auto* one = new QToolButton(this);
            one->setText(text);
            one->setFocusPolicy(Qt::TabFocus);
            one->setObjectName(QStringLiteral("%1-%2").arg(QLatin1String(ids[side]), QLatin1String(what)));
            one->setAccessibleName(by > 0 ? tr("One more %1").arg(names[side])
                                          : tr("One less %1").arg(names[side]));
            connect(one, &QToolButton::clicked, this, [this, side, by] {
                count_[side] = std::max(0, count_[side] + by);
                refresh();
            });
            return one;
        };
        row->addWidget(button(QStringLiteral("−"), "less", -1));
        row->addWidget(counts_[side]);
        row->addWidget(button(QStringLiteral("+"), "more", 1));
        row->addSpacing(12);
    }
    reveal_->setFocusPolicy(Qt::TabFocus);
    reveal_->setObjectName(QStringLiteral("votes-reveal"));
    connect(reveal_, &QPushButton::clicked, this, &Votes::reveal);
    row->addWidget(reveal_);
    answer_->setObjectName(QStringLiteral("votes-answer"));
    answer_->setWordWrap(true);
    row->addWidget(answer_, 1);
    refresh();
}

void Votes::setAnswer(const QString& verdict)
{
    answer_text_ = verdict;
    refresh();
}

void Votes::startAgain()
{
    count_[0] = count_[1] = 0;
    revealed_ = false;
    refresh();
}

void Votes::reveal()
{
    revealed_ = true;
    refresh();
    Q_EMIT revealing();
}

void Votes::refresh()
{
    for (int side = 0; side < 2; ++side)
        counts_[side]->setText(QString::number(count_[side]));
    reveal_->setEnabled(!revealed_);
    answer_->setText(revealed_ ? answer_text_ : QString());
}

} // namespace siphonwright::demonstration
