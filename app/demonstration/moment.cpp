#include "app/demonstration/moment.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <QPainter>

#include <cmath>

namespace siphonwright::demonstration {

void paintMoment(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Moment& moment,
                 const drawing::Style& style)
{
    drawing::Style with = style;
    with.contents = &moment.contents;
    drawing::paintElevation(painter, sketch, analysis, with);
}

QString titleOf(PhaseKind phase)
{
    switch (phase) {
    case PhaseKind::fill:
        return tr("Filling");
    case PhaseKind::engine_runs:
        return tr("Engine running");
    case PhaseKind::topped_up:
        return tr("Topped up");
    case PhaseKind::energised:
        return tr("Heater on");
    }
    return {};
}

QString wordsOf(const Moment& moment, UnitSystem units)
{
    std::vector<Message> all{moment.words};
    all.insert(all.end(), moment.more.begin(), moment.more.end());
    return wordsOf(all, units);
}

QString wordsOf(const std::vector<Message>& sentences, UnitSystem units)
{
    QStringList words;
    for (const Message& sentence : sentences)
        if (!sentence.pattern.empty())
            words << inWords(sentence, units);
    return words.join(QLatin1Char(' '));
}

QString clockOf(const Moment& moment)
{
    if (moment.phase != PhaseKind::energised)
        return {};
    const int minutes = int(std::floor(moment.clock_s / 60 + 1e-9));
    return minutes < 60 ? tr("%1 min").arg(minutes)
                        : tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

} // namespace siphonwright::demonstration
