#include "app/paper/roll_form.h"

#include "app/language/in_words.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>

#include <algorithm>

namespace siphonwright::paper {

namespace {

QString lengthText(double length_mm, UnitSystem units)
{
    return inWords(length_mm, Unit::mm, units);
}

QString rollsText(const Quote& quote, const std::optional<double>& bore_mm, UnitSystem units)
{
    QStringList lengths;
    for (const HoseRoll& roll : quote.rolls)
        if (roll.bore_mm == bore_mm)
            lengths << lengthText(roll.length_mm, units);
    return lengths.join(QStringLiteral("; "));
}

} // namespace

RollForm::RollForm(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      grid_(new QGridLayout(this)),
      vehicles_(new EntryLine(
          tr("Identical vehicles"), [this](const QString& typed) { return takeVehicles(typed); }, this)),
      allowance_(new EntryLine(
          tr("Allowance on each cut"), [this](const QString& typed) { return takeAllowance(typed); }, this)),
      whole_rolls_(new QCheckBox(tr("Charge whole rolls"), this)),
      problem_(new QLabel(this))
{
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setColumnStretch(5, 1);
    vehicles_->setObjectName(QStringLiteral("cut-vehicles"));
    allowance_->setObjectName(QStringLiteral("cut-allowance"));
    whole_rolls_->setObjectName(QStringLiteral("whole-rolls"));
    whole_rolls_->setToolTip(tr("Hose at the rolls it comes off instead of at its cuts"));
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setObjectName(QStringLiteral("cut-problem"));
    problem_->setWordWrap(true);
    for (EntryLine* line : {vehicles_, allowance_})
        line->setMaximumWidth(110);
    grid_->addWidget(new QLabel(tr("Identical vehicles"), this), 0, 0);
    grid_->addWidget(vehicles_, 0, 1);
    grid_->addWidget(new QLabel(tr("Allowance on each cut"), this), 0, 2);
    grid_->addWidget(allowance_, 0, 3);
    grid_->addWidget(whole_rolls_, 0, 4);
    grid_->addWidget(problem_, 1, 0, 1, 6);
    problem_->hide();
    for (EntryLine* line : {vehicles_, allowance_})
        connect(line, &EntryLine::problemChanged, this, [this](const QString& why) {
            problem_->setText(why);
            problem_->setVisible(!why.isEmpty());
        });
    connect(whole_rolls_, &QCheckBox::clicked, this, [this](bool on) {
        changeQuote(document_, tr("Charge whole rolls"),
                    [on](Quote& quote) { quote.charge_whole_rolls = on; });
    });
}

RollForm::Line RollForm::addLine(const std::optional<double>& bore_mm)
{
    Line line{bore_mm, new QLabel(this), nullptr};
    line.rolls = new EntryLine(
        tr("Lengths of roll"), [this, bore_mm](const QString& typed) { return takeRolls(bore_mm, typed); },
        this);
    line.rolls->setPlaceholderText(tr("lengths it is bought in, set apart by semicolons"));
    line.rolls->setObjectName(QStringLiteral("rolls-%1").arg(bore_mm ? *bore_mm : 0));
    connect(line.rolls, &EntryLine::problemChanged, this, [this](const QString& why) {
        problem_->setText(why);
        problem_->setVisible(!why.isEmpty());
    });
    const int row = grid_->rowCount();
    grid_->addWidget(line.label, row, 0);
    grid_->addWidget(line.rolls, row, 1, 1, 5);
    return line;
}

void RollForm::show(const Paperwork& paperwork)
{
    const Quote& quote = quoteOf(document_.sketch());
    const UnitSystem units = unitsOf(document_.sketch());
    vehicles_->showText(QString::number(quote.vehicles));
    allowance_->showText(lengthText(quote.cut_allowance_mm, units));
    whole_rolls_->setChecked(quote.charge_whole_rolls);
    std::vector<std::optional<double>> bores;
    const auto want = [&bores](const std::optional<double>& bore_mm) {
        if (std::find(bores.begin(), bores.end(), bore_mm) == bores.end())
            bores.push_back(bore_mm);
    };
    for (const BorePlan& bore : paperwork.plans)
        if (bore.bore_mm)
            want(bore.bore_mm);
    for (const HoseRoll& roll : quote.rolls)
        want(roll.bore_mm);
    for (const std::optional<double>& bore_mm : bores)
        if (std::none_of(lines_.begin(), lines_.end(),
                         [&](const Line& line) { return line.bore_mm == bore_mm; }))
            lines_.push_back(addLine(bore_mm));
    for (const Line& line : lines_) {
        const bool wanted = std::find(bores.begin(), bores.end(), line.bore_mm) != bores.end();
        line.label->setVisible(wanted);
        line.rolls->setVisible(wanted);
        line.label->setText(line.bore_mm ? tr("Rolls of bore %1").arg(lengthText(*line.bore_mm, units))
                                         : tr("Rolls of any bore"));
        line.rolls->showText(rollsText(quote, line.bore_mm, units));
    }
}

QString RollForm::takeRolls(const std::optional<double>& bore_mm, const QString& typed)
{
    std::vector<HoseRoll> rolls;
    for (const QString& part : typed.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        if (part.trimmed().isEmpty())
            continue;
        std::string why;
        const auto length =
            parse(typedQuantity(part.trimmed(), Unit::mm), Unit::mm, unitsOf(document_.sketch()), &why);
        if (!length)
            return inWords(why);
        constexpr double shortest_mm = 1;
        constexpr double longest_mm = 1'000'000;
        if (!(*length >= shortest_mm && *length <= longest_mm) || rolls.size() >= 20)
            return tr("A roll is from 1 mm to 1 km long, and there are at most 20 lengths.");
        HoseRoll roll;
        roll.bore_mm = bore_mm;
        roll.length_mm = *length;
        rolls.push_back(roll);
    }
    changeQuote(document_, tr("Change lengths of roll"), [&](Quote& quote) {
        std::erase_if(quote.rolls, [&](const HoseRoll& roll) { return roll.bore_mm == bore_mm; });
        quote.rolls.insert(quote.rolls.end(), rolls.begin(), rolls.end());
    });
    return {};
}

QString RollForm::takeAllowance(const QString& typed)
{
    std::string why;
    const auto length = parse(typedQuantity(typed, Unit::mm), Unit::mm, unitsOf(document_.sketch()), &why);
    if (!length)
        return inWords(why);
    if (!(*length >= 0 && *length <= 10'000))
        return tr("An allowance is from 0 to 10 m.");
    changeQuote(document_, tr("Change the allowance on cuts"),
                [length](Quote& quote) { quote.cut_allowance_mm = *length; });
    return {};
}

QString RollForm::takeVehicles(const QString& typed)
{
    std::optional<std::int64_t> count;
    const QString why = takeDecimal(typed, 0, 1, 10'000, count);
    if (!why.isEmpty() || !count)
        return why.isEmpty() ? tr("At least one vehicle.") : why;
    changeQuote(document_, tr("Change the number of vehicles"),
                [count](Quote& quote) { quote.vehicles = *count; });
    return {};
}

} // namespace siphonwright::paper
