#include "app/sizing/season_edit.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/quantity_edit.h"
#include "app/panels/wrapped_row.h"

#include "core/paperwork/power_table.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace siphonwright::sizing {

namespace {

constexpr std::size_t most_rows = 60; // as in the file
constexpr double most_nights = 366;
constexpr double coldest_degC = -80;
constexpr double hottest_degC = 60;
constexpr double colder_by_K = 5; ///< a new row is so much colder than the last

} // namespace

SeasonEdit::SeasonEdit(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      grid_(new QGridLayout),
      total_(new QLabel(this)),
      problem_(new QLabel(this))
{
    auto* heading = new QLabel(tr("Nights of a season"), this);
    heading->setWordWrap(true);
    heading->setProperty("role", QStringLiteral("heading"));
    auto* add = new QPushButton(tr("Add nights"), this);
    add->setObjectName(QStringLiteral("season-add"));
    auto* sample = new QPushButton(tr("Try a season (invented)"), this);
    sample->setObjectName(QStringLiteral("season-sample"));
    sample->setToolTip(tr("150 nights from -30 to 0 °C: invented, no weather record"));
    total_->setObjectName(QStringLiteral("season-total"));
    total_->setWordWrap(true);
    total_->setProperty("role", QStringLiteral("faint"));
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    grid_->setHorizontalSpacing(4);
    grid_->setVerticalSpacing(2);
    auto* buttons = new panels::WrappedRow;
    buttons->setSpacing(4);
    buttons->addWidget(add);
    buttons->addWidget(sample);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(heading);
    column->addLayout(grid_);
    column->addWidget(problem_);
    column->addWidget(total_);
    column->addLayout(buttons);
    connect(add, &QPushButton::clicked, this, [this] {
        document_.apply(tr("Add nights"), [](Sketch& sketch) {
            std::vector<ColdNights>& season = sketch.supply.season;
            if (season.size() < most_rows)
                season.push_back({season.empty() ? sketch.site.ambient_degC.value.value_or(-10)
                                                 : season.back().ambient_degC - colder_by_K,
                                  10});
        });
    });
    connect(sample, &QPushButton::clicked, this, [this] {
        document_.apply(tr("Try an invented season"),
                        [](Sketch& sketch) { sketch.supply.season = inventedSeason(); });
    });
    connect(&document_, &Document::changed, this, &SeasonEdit::refresh);
    refresh();
}

void SeasonEdit::addRow()
{
    const std::size_t index = rows_.size();
    Row row;
    const auto edit = [&](Unit unit, const QString& name, double least, double most, auto set) {
        auto* line = new panels::QuantityEdit(unit, this);
        line->setObjectName(QStringLiteral("%1-%2").arg(name).arg(index + 1));
        line->setRange(least, most);
        connect(line, &panels::QuantityEdit::committed, this, [this, line, index, set] {
            document_.apply(tr("Change nights"), [&](Sketch& sketch) {
                if (index < sketch.supply.season.size())
                    set(sketch.supply.season[index], *line->value());
            });
        });
        connect(line, &panels::QuantityEdit::problemChanged, this, [this](const QString& sentence) {
            problem_->setText(sentence);
            problem_->setVisible(!sentence.isEmpty());
        });
        return line;
    };
    row.ambient = edit(Unit::degC, QStringLiteral("season-ambient"), coldest_degC, hottest_degC,
                       [](ColdNights& nights, double value) { nights.ambient_degC = value; });
    row.ambient->setAccessibleName(tr("Temperature of the nights"));
    row.nights = edit(Unit::none, QStringLiteral("season-nights"), 0, most_nights,
                      [](ColdNights& nights, double value) { nights.nights = value; });
    row.nights->setAccessibleName(tr("How many nights"));
    row.remove = new QPushButton(tr("Remove"), this);
    row.remove->setObjectName(QStringLiteral("season-remove-%1").arg(index + 1));
    row.remove->setProperty("role", QStringLiteral("link"));
    connect(row.remove, &QPushButton::clicked, this, [this, index] {
        document_.apply(tr("Remove nights"), [index](Sketch& sketch) {
            std::vector<ColdNights>& season = sketch.supply.season;
            if (index < season.size())
                season.erase(season.begin() + static_cast<std::ptrdiff_t>(index));
        });
    });
    const int line = static_cast<int>(index);
    grid_->addWidget(row.nights, line, 0);
    grid_->addWidget(new QLabel(tr("nights at"), this), line, 1);
    grid_->addWidget(row.ambient, line, 2);
    grid_->addWidget(row.remove, line, 3);
    grid_->setColumnStretch(0, 1);
    grid_->setColumnStretch(2, 1);
    rows_.push_back(row);
}

/// The row may be the one whose button led here, so it goes only when control is back in the loop.
void SeasonEdit::dropRow()
{
    const int line = static_cast<int>(rows_.size()) - 1;
    for (int column = 0; column < 4; ++column)
        if (QLayoutItem* item = grid_->itemAtPosition(line, column)) {
            QWidget* widget = item->widget();
            grid_->removeWidget(widget);
            widget->hide();
            widget->deleteLater();
        }
    rows_.pop_back();
}

void SeasonEdit::refresh()
{
    const Sketch& sketch = document_.sketch();
    const std::vector<ColdNights>& season = sketch.supply.season;
    while (rows_.size() < season.size())
        addRow();
    while (rows_.size() > season.size())
        dropRow();
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        rows_[i].ambient->setUnits(panels::unitsOf(sketch));
        rows_[i].ambient->setValue(season[i].ambient_degC);
        rows_[i].nights->setValue(season[i].nights);
    }
    total_->setText(season.empty()
                        ? tr("none entered")
                        : tr("%1 nights in all")
                              .arg(inWords(nightsIn(sketch.supply), Unit::none, panels::unitsOf(sketch))));
}

} // namespace siphonwright::sizing
