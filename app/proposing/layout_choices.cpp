#include "app/proposing/layout_choices.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"

#include "core/layout/wording.h"
#include "core/sketch/templates.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>

#include <algorithm>
#include <array>
#include <cmath>

namespace siphonwright::proposing {
namespace {

constexpr double same_mm = 0.3; // 3/4 in and 19 mm are one hose
/// Bores that heaters of this kind are usually plumbed with; own choice, after the usual stock.
constexpr std::array usual_mm = {15.875, 19.05, 25.4};
constexpr double least_shown_mm = 12;
constexpr double most_shown_mm = 33;

QString lengthText(double mm, UnitSystem units)
{
    return inWords(mm, Unit::mm, units);
}

/// The number alone: the unit stands before all of them.
QString numberText(double mm, UnitSystem units)
{
    const QString text = lengthText(mm, units);
    return text.left(text.lastIndexOf(QLatin1Char(' ')));
}

bool isUsual(double bore_mm)
{
    return std::any_of(usual_mm.begin(), usual_mm.end(),
                       [&](double usual) { return std::abs(usual - bore_mm) < same_mm; });
}

} // namespace

LayoutChoices::LayoutChoices(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      form_(new QFormLayout(this)),
      heater_(new QComboBox(this)),
      place_(new QComboBox(this)),
      area_row_(new QWidget(this)),
      area_text_(new QLabel(area_row_)),
      draw_(new QPushButton(tr("&Draw area…"), area_row_)),
      bore_grid_(new QGridLayout),
      rank_(new QComboBox(this))
{
    heater_->setObjectName(QStringLiteral("layout-heater"));
    heater_->setAccessibleName(tr("Heater to propose for"));
    place_->setObjectName(QStringLiteral("layout-place"));
    place_->setAccessibleName(tr("Where the heater may hang"));
    place_->addItems({tr("Where it is drawn"), tr("Anywhere under the engine"), tr("In an area I draw")});
    draw_->setObjectName(QStringLiteral("layout-draw-area"));
    draw_->setToolTip(tr("Drag a rectangle on the elevation, or click two opposite corners"));
    area_text_->setWordWrap(true);
    rank_->setObjectName(QStringLiteral("layout-rank"));
    rank_->setAccessibleName(tr("What comes first"));
    rank_->addItems({tr("Best of all three"), tr("Shortest hoses"), tr("Most flow"), tr("Lowest price")});
    rank_->setItemData(0, tr("Length of hose, price by bore and flow weighed in one figure"),
                       Qt::ToolTipRole);
    for (QComboBox* box : {heater_, place_, rank_}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(12);
        connect(box, &QComboBox::currentIndexChanged, this, &LayoutChoices::changed);
        connect(box, &QComboBox::currentTextChanged, box, &QWidget::setToolTip); // it may end in dots
        box->setToolTip(box->currentText());
    }
    auto* row = new QHBoxLayout(area_row_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(area_text_, 1);
    row->addWidget(draw_);
    bore_grid_->setContentsMargins(0, 0, 0, 0);
    bore_grid_->setHorizontalSpacing(2);
    bore_grid_->setVerticalSpacing(2);
    form_->setContentsMargins(0, 0, 0, 0);
    form_->setVerticalSpacing(4);
    form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form_->addRow(tr("Heater"), heater_);
    form_->addRow(tr("It hangs"), place_);
    form_->addRow(QString(), area_row_);
    form_->addRow(tr("Bores, mm"), bore_grid_);
    form_->addRow(tr("First"), rank_);
    connect(place_, &QComboBox::activated, this, &LayoutChoices::placeChosen);
    connect(draw_, &QPushButton::clicked, this, &LayoutChoices::areaWanted);
    connect(&document_, &Document::changed, this, &LayoutChoices::refresh);
    connect(place_, &QComboBox::currentIndexChanged, this, &LayoutChoices::showArea);
    refresh();
    showArea();
}

Id LayoutChoices::heater() const
{
    return heater_->currentData().toString().toStdString();
}

LayoutChoices::Place LayoutChoices::place() const
{
    return static_cast<Place>(place_->currentIndex());
}

HangingSpace LayoutChoices::space() const
{
    HangingSpace space = spaceUnder(document_.sketch(), heater());
    if (place() == Place::area && area_) {
        space.least.x = area_->first.x;
        space.least.z = area_->first.z;
        space.most.x = area_->second.x;
        space.most.z = area_->second.z;
    }
    return space;
}

std::optional<ProposeOptions> LayoutChoices::options() const
{
    if (!lacking().isEmpty())
        return std::nullopt;
    ProposeOptions out;
    out.heater = heater();
    if (place() != Place::stays)
        out.space = space();
    for (const Bore& bore : bores_)
        if (bore.taken)
            out.stock_bores_mm.push_back(bore.mm);
    constexpr std::array ranks = {RankBy::balance, RankBy::length, RankBy::flow, RankBy::price};
    out.rank_by = ranks.at(static_cast<std::size_t>(rank_->currentIndex()));
    return out;
}

QString LayoutChoices::lacking() const
{
    if (heater().empty())
        return tr("Place a heater first.");
    if (place() == Place::area && !area_)
        return tr("Draw the area in which the heater may hang.");
    if (std::none_of(bores_.begin(), bores_.end(), [](const Bore& bore) { return bore.taken; }))
        return tr("Choose at least one bore of hose.");
    return {};
}

std::vector<Vec2> LayoutChoices::outline() const
{
    if (heater().empty() || place() == Place::stays || (place() == Place::area && !area_))
        return {};
    const HangingSpace all = space();
    return {{all.least.x, all.least.z},
            {all.most.x, all.least.z},
            {all.most.x, all.most.z},
            {all.least.x, all.most.z}};
}

void LayoutChoices::setArea(Vec2 least, Vec2 most)
{
    area_ = {least, most};
    const QSignalBlocker quiet(place_);
    place_->setCurrentIndex(static_cast<int>(Place::area));
    showArea();
    Q_EMIT changed();
}

void LayoutChoices::placeChosen()
{
    if (place() == Place::area && !area_)
        Q_EMIT areaWanted();
}

void LayoutChoices::showArea()
{
    form_->setRowVisible(area_row_, place() == Place::area);
    const UnitSystem units = panels::unitsOf(document_.sketch());
    area_text_->setText(!area_ ? tr("Not drawn yet")
                               : tr("%1 by %2")
                                     .arg(lengthText(area_->second.x - area_->first.x, units),
                                          lengthText(area_->second.z - area_->first.z, units)));
    draw_->setText(area_ ? tr("&Draw anew…") : tr("&Draw area…"));
}

void LayoutChoices::refresh()
{
    refreshHeaters();
    refreshBores();
    showArea();
}

void LayoutChoices::refreshHeaters()
{
    const QSignalBlocker quiet(heater_);
    const QString before = heater_->currentData().toString();
    heater_->clear();
    for (const Heater& heater : document_.sketch().heaters)
        heater_->addItem(inWords(nameOfHeater(heater)), QString::fromStdString(heater.id));
    heater_->setCurrentIndex(std::max(0, heater_->findData(before)));
    form_->setRowVisible(heater_, heater_->count() > 1);
}

/// Stock sizes, and what the hoses are drawn with. What somebody chose stays; the rest follows the drawing.
void LayoutChoices::refreshBores()
{
    const UnitSystem units = panels::unitsOf(document_.sketch());
    std::vector<Bore> wanted;
    const auto add = [&](double mm, bool taken) {
        const auto known = std::find_if(wanted.begin(), wanted.end(),
                                        [&](const Bore& bore) { return std::abs(bore.mm - mm) < same_mm; });
        if (known != wanted.end())
            known->taken = known->taken || taken;
        else
            wanted.push_back({mm, taken, false, nullptr});
    };
    for (const HoseSize& size : hoseSizes())
        if (size.bore_mm > least_shown_mm && size.bore_mm < most_shown_mm)
            add(std::round(size.bore_mm * 1000) / 1000, isUsual(size.bore_mm));
    for (const Shared<Hose>& hose : document_.sketch().hoses)
        if (hose->bore_mm.known())
            add(*hose->bore_mm.value, true);
    std::sort(wanted.begin(), wanted.end(), [](const Bore& a, const Bore& b) { return a.mm < b.mm; });
    const auto same = [](const Bore& a, const Bore& b) { return std::abs(a.mm - b.mm) < same_mm; };
    for (Bore& bore : wanted)
        for (const Bore& before : bores_)
            if (same(bore, before) && before.chosen) {
                bore.taken = before.taken;
                bore.chosen = true;
            }
    const bool as_before =
        units == bores_shown_in_ &&
        std::equal(wanted.begin(), wanted.end(), bores_.begin(), bores_.end(),
                   [&](const Bore& a, const Bore& b) { return same(a, b) && a.taken == b.taken; });
    if (as_before)
        return;
    for (const Bore& before : bores_)
        delete before.box;
    bores_ = std::move(wanted);
    bores_shown_in_ = units;
    if (auto* label = qobject_cast<QLabel*>(form_->labelForField(bore_grid_)))
        label->setText(units == UnitSystem::inch ? tr("Bores, in") : tr("Bores, mm"));
    constexpr int columns = 5;
    for (std::size_t i = 0; i < bores_.size(); ++i) {
        auto* box = new QToolButton(this);
        box->setText(numberText(bores_[i].mm, units));
        box->setToolTip(tr("Hose of this bore may be used"));
        box->setCheckable(true);
        box->setFocusPolicy(Qt::StrongFocus);
        box->setChecked(bores_[i].taken);
        box->setAccessibleName(tr("Hose of bore %1").arg(lengthText(bores_[i].mm, units)));
        box->setObjectName(QStringLiteral("layout-bore"));
        bores_[i].box = box;
        bore_grid_->addWidget(box, static_cast<int>(i) / columns, static_cast<int>(i) % columns);
        connect(box, &QToolButton::toggled, this, [this, i](bool on) {
            bores_[i].taken = on;
            bores_[i].chosen = true;
            Q_EMIT changed();
        });
    }
}

} // namespace siphonwright::proposing
