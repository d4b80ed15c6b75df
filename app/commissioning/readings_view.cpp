#include "app/commissioning/readings_view.h"

#include "app/commissioning/reading_chart.h"
#include "app/commissioning/targets.h"
#include "app/commissioning/words.h"
#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/text_size.h"
#include "app/panels/wrapped_row.h"

#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright::commissioning {
namespace {

/// The table's rows: time, ambient, the instruments, power on, note.
constexpr int time_row = 0;
constexpr int ambient_row = 1;
constexpr int first_channel_row = 2;
constexpr int energised_row = first_channel_row + static_cast<int>(channel_count);
constexpr int note_row = energised_row + 1;
constexpr int row_count = note_row + 1;

bool isChannel(int row)
{
    return row >= first_channel_row && row < energised_row;
}
Channel channelOf(int row)
{
    return static_cast<Channel>(row - first_channel_row);
}

QString capital(const QString& words)
{
    return words.left(1).toUpper() + words.mid(1);
}

/// A typed value without the mark that stands before it.
QString withoutMark(QString typed)
{
    for (const Fit fit : {Fit::fits, Fit::doubtful, Fit::off, Fit::over_limit})
        if (typed.startsWith(markOf(fit)))
            typed = typed.mid(markOf(fit).size());
    return typed.trimmed();
}

/// A day and a time of this year, a time alone on the day that the reading has, or ISO 8601.
QDateTime momentTyped(const QString& typed, const std::string& before)
{
    if (const QTime clock = QTime::fromString(typed, QStringLiteral("H:mm")); clock.isValid()) {
        const QDateTime day =
            QDateTime::fromString(QString::fromStdString(before), Qt::ISODate).toLocalTime();
        return {day.isValid() ? day.date() : QDate::currentDate(), clock};
    }
    QDateTime moment = QLocale().toDateTime(typed, shownTimeFormat());
    moment.setDate(QDate(QDate::currentDate().year(), moment.date().month(), moment.date().day()));
    return moment.isValid() ? moment : QDateTime::fromString(typed, Qt::ISODate);
}

} // namespace

ReadingsView::ReadingsView(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      table_(new QTableWidget(row_count, 0, this)),
      switched_(new QLabel(this)),
      words_(new QLabel(this)),
      remove_(new QPushButton(tr("Remove this reading"), this)),
      chart_(new ReadingChart(this))
{
    layOut();
    connect(remove_, &QPushButton::clicked, this, &ReadingsView::removeReading);
    connect(table_, &QTableWidget::itemChanged, this, &ReadingsView::edited);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &ReadingsView::sayVerdicts);
    connect(&document_, &Document::changed, this, &ReadingsView::refresh);
    refresh();
}

void ReadingsView::layOut()
{
    table_->setObjectName(QStringLiteral("readings"));
    table_->setAccessibleName(tr("Readings"));
    QStringList names = {tr("Time"), tr("Ambient")};
    for (const Instrument& row : instruments())
        names << capital(text(row.title));
    names << tr("Power on") << tr("Note");
    table_->setVerticalHeaderLabels(names);
    table_->horizontalHeader()->hide();
    table_->horizontalHeader()->setDefaultSectionSize(90);
    table_->verticalHeader()->setDefaultSectionSize(least_target_px);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setMinimumHeight(5 * least_target_px);
    switched_->setObjectName(QStringLiteral("switched"));
    switched_->setWordWrap(true);
    words_->setObjectName(QStringLiteral("reading-words"));
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    panels::setTextSize(*words_, 14);

    auto* add = new QPushButton(tr("＋ Add a reading now"), this);
    add->setObjectName(QStringLiteral("reading-add"));
    auto* on = new QPushButton(tr("Turned on now"), this);
    on->setObjectName(QStringLiteral("turned-on"));
    auto* off = new QPushButton(tr("Turned off now"), this);
    off->setObjectName(QStringLiteral("turned-off"));
    remove_->setObjectName(QStringLiteral("reading-remove"));
    for (QPushButton* one : {add, on, off, remove_}) {
        one->setMinimumHeight(least_target_px);
        panels::setTextSize(*one, 15);
    }
    connect(add, &QPushButton::clicked, this, &ReadingsView::addReading);
    connect(on, &QPushButton::clicked, this, [this] { noteSwitching(true); });
    connect(off, &QPushButton::clicked, this, [this] { noteSwitching(false); });
    auto* switching = new panels::WrappedRow;
    for (QPushButton* one : {on, off})
        one->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    switching->addWidget(on);
    switching->addWidget(off);

    auto* inside = new QWidget(this);
    auto* stack = new QVBoxLayout(inside);
    stack->setContentsMargins(4, 4, 4, 4);
    stack->addWidget(add);
    stack->addLayout(switching);
    stack->addWidget(switched_);
    stack->addWidget(table_, 3);
    stack->addWidget(words_);
    stack->addWidget(chart_, 2);
    stack->addWidget(remove_);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(inside);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
}

void ReadingsView::setHeater(const Id& heater)
{
    heater_ = heater;
    judged_.reset();
    refresh();
}

void ReadingsView::setLook(drawing::Look look)
{
    chart_->setLook(look);
}

void ReadingsView::show(const Outcome* outcome, bool of_before)
{
    judged_.reset();
    if (outcome && !of_before)
        judged_ = outcome->judged;
    chart_->setUnits(panels::unitsOf(document_.sketch()));
    if (outcome)
        chart_->show(*outcome, of_before);
    else
        chart_->clear();
    refresh();
}

const ReadingVerdict* ReadingsView::verdictOn(std::size_t reading, Channel channel) const
{
    if (judged_)
        for (const ReadingVerdict& one : judged_->verdicts)
            if (one.reading == reading && one.channel == channel)
                return &one;
    return nullptr;
}

void ReadingsView::fillColumn(int column, const Reading& reading)
{
    const UnitSystem units = panels::unitsOf(document_.sketch());
    const auto put = [&](int row, const QString& words) {
        table_->setItem(row, column, new QTableWidgetItem(words));
    };
    put(time_row, shownTime(reading.time));
    put(ambient_row, reading.ambient_degC ? text(*reading.ambient_degC, Unit::degC, units) : QString());
    for (int row = first_channel_row; row < energised_row; ++row) {
        const Channel channel = channelOf(row);
        const std::optional<double>& value = readOn(reading, channel);
        QString words = value ? text(*value, instrumentFor(channel).unit, units) : QString();
        if (const ReadingVerdict* verdict = verdictOn(columns_[static_cast<std::size_t>(column)], channel))
            words = tr("%1 %2").arg(markOf(verdict->fit), words);
        put(row, words);
    }
    put(energised_row, reading.energised ? (*reading.energised ? tr("yes") : tr("no")) : QString());
    put(note_row, QString::fromStdString(reading.note));
}

void ReadingsView::refresh()
{
    const QSignalBlocker quiet(table_);
    const Sketch& sketch = document_.sketch();
    const bool first = !sketch.heaters.empty() && sketch.heaters.front().id == heater_;
    columns_.clear();
    for (std::size_t i = 0; i < sketch.readings.size(); ++i)
        if (sketch.readings[i].heater == heater_ || (first && sketch.readings[i].heater.empty()))
            columns_.push_back(i);
    const int row = table_->currentRow();
    const int column = table_->currentColumn();
    table_->setColumnCount(static_cast<int>(columns_.size()));
    for (std::size_t i = 0; i < columns_.size(); ++i)
        fillColumn(static_cast<int>(i), sketch.readings[columns_[i]]);
    if (!columns_.empty())
        table_->setCurrentCell(std::max(row, 0), column < 0 ? int(columns_.size()) - 1
                                                            : std::min(column, int(columns_.size()) - 1));
    QStringList seen;
    for (const SwitchSeen& one : sketch.checklist.switched)
        if (one.heater == heater_ || (first && one.heater.empty()))
            seen << (one.on ? tr("on %1") : tr("off %1")).arg(shownTime(one.time));
    constexpr qsizetype most = 6;
    const QString list = seen.mid(std::max<qsizetype>(0, seen.size() - most)).join(QStringLiteral(", "));
    switched_->setText(seen.isEmpty()
                           ? tr("When it was turned on is not entered: press \"Turned on now\" then.")
                           : tr("Seen to turn: %1").arg(list));
    sayVerdicts();
}

std::optional<std::size_t> ReadingsView::chosen() const
{
    const auto column = static_cast<std::size_t>(table_->currentColumn());
    return table_->currentColumn() >= 0 && column < columns_.size() ? std::optional(columns_[column])
                                                                    : std::nullopt;
}

void ReadingsView::sayVerdicts()
{
    const UnitSystem units = panels::unitsOf(document_.sketch());
    QStringList lines;
    const std::optional<std::size_t> reading = chosen();
    if (!problem_.isEmpty())
        lines << problem_;
    if (reading && judged_) {
        for (const ReadingVerdict& one : judged_->verdicts)
            if (one.reading == *reading)
                lines << tr("%1 %2: %3")
                             .arg(markOf(one.fit), capital(text(instrumentFor(one.channel).title)),
                                  text(one.words, units));
        if (!judged_->missing.empty())
            lines << tr("Not judged against the drawing: %1.").arg(inWords(judged_->missing));
        else
            lines << tr("%1 %2").arg(markOf(judged_->cycles_fit), text(judged_->cycles_words, units));
    } else if (columns_.empty()) {
        lines << tr("No readings of this heater yet.");
    }
    words_->setText(lines.join(u'\n'));
    remove_->setVisible(reading.has_value());
}

void ReadingsView::addReading()
{
    Reading fresh;
    fresh.time = isoTime(QDateTime::currentDateTime());
    fresh.heater = heater_;
    fresh.energised = true;
    document_.apply(tr("Add a reading"), [&](Sketch& sketch) { sketch.readings.push_back(fresh); });
    if (columns_.empty())
        return;
    table_->setCurrentCell(first_channel_row, static_cast<int>(columns_.size()) - 1);
    table_->scrollToItem(table_->currentItem());
    table_->setFocus();
}

void ReadingsView::removeReading()
{
    const std::optional<std::size_t> reading = chosen();
    if (!reading)
        return;
    document_.apply(tr("Remove a reading"), [&](Sketch& sketch) {
        sketch.readings.erase(sketch.readings.begin() + static_cast<std::ptrdiff_t>(*reading));
    });
}

void ReadingsView::noteSwitching(bool on)
{
    const SwitchSeen seen = {isoTime(QDateTime::currentDateTime()), heater_, on};
    document_.apply(on ? tr("Note turning on") : tr("Note turning off"),
                    [&](Sketch& sketch) { sketch.checklist.switched.push_back(seen); });
}

void ReadingsView::edited(const QTableWidgetItem* item)
{
    const auto column = static_cast<std::size_t>(item->column());
    if (column >= columns_.size())
        return;
    const std::size_t index = columns_[column];
    const int row = item->row();
    const QString typed = withoutMark(item->text());
    const UnitSystem units = panels::unitsOf(document_.sketch());
    std::optional<double> value;
    problem_.clear();
    if ((isChannel(row) || row == ambient_row) && !typed.isEmpty()) {
        const Unit unit = row == ambient_row ? Unit::degC : instrumentFor(channelOf(row)).unit;
        std::string problem;
        value = parse(typedQuantity(typed, unit), unit, units, &problem);
        if (!value)
            problem_ = tr("\"%1\": %2").arg(typed, inWords(problem));
    }
    QDateTime moment;
    if (row == time_row) {
        moment = momentTyped(typed, document_.sketch().readings[index].time);
        if (!moment.isValid())
            problem_ = tr("\"%1\" is not a time: 25 Nov 07:30, or 2026-11-25T07:30.").arg(typed);
    }
    if (!problem_.isEmpty()) {
        refresh();
        return;
    }
    const bool changed = document_.apply(tr("Change a reading"), [&](Sketch& sketch) {
        Reading& reading = sketch.readings[index];
        if (row == time_row)
            reading.time = shownTime(reading.time) == typed ? reading.time : isoTime(moment);
        else if (row == ambient_row)
            reading.ambient_degC = value;
        else if (isChannel(row))
            readOn(reading, channelOf(row)) = value;
        else if (row == energised_row)
            reading.energised = typed.isEmpty() ? std::nullopt : std::optional(typed == tr("yes"));
        else
            reading.note = typed.toStdString();
    });
    if (!changed)
        refresh();
}

} // namespace siphonwright::commissioning
