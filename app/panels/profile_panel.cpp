#include "app/panels/profile_panel.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"

#include <QComboBox>
#include <QMouseEvent>
#include <QScrollBar>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace siphonwright::panels {

namespace {

constexpr int samples_per_hose = 240;

} // namespace

ProfilePanel::ProfilePanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      times_(new QComboBox(this)),
      scroll_(new QScrollBar(Qt::Vertical, this))
{
    times_->addItem(tr("Fit"), 0);
    for (const int times : {1, 2, 5, 10})
        times_->addItem(tr("%1×").arg(times), times);
    times_->setAccessibleName(tr("How many times larger heights are drawn than lengths"));
    times_->setToolTip(tr("Draw heights larger than lengths, so that a small hump is seen"));
    times_->setObjectName(QStringLiteral("profile-exaggeration"));
    scroll_->setAccessibleName(tr("Heights in sight"));
    scroll_->hide();
    connect(times_, &QComboBox::currentIndexChanged, this,
            [this] { setExaggeration(times_->currentData().toInt()); });
    connect(scroll_, &QScrollBar::valueChanged, this, [this](int hidden_mm) {
        looked_at_mm_ = highest_mm_ - hidden_mm - roomForHeights() / px_per_mm_ / 2;
        update();
    });
    setMouseTracking(true);
    setAccessibleName(tr("Run profile"));
    setToolTip(tr("Height along the hoses, seen from where the coolant comes from"));
    connect(&document_, &Document::changed, this, &ProfilePanel::sample);
    connect(&document_, &Document::analysed, this, &ProfilePanel::sample);
    connect(&selection_, &Selection::hoverChanged, this, &ProfilePanel::follow);
    connect(&selection_, &Selection::partChanged, this, qOverload<>(&QWidget::update));
    sample();
}

void ProfilePanel::setLook(drawing::Look look)
{
    look_ = look;
    update();
}

void ProfilePanel::sample()
{
    std::vector<Strip> before = std::move(strips_);
    strips_.clear();
    const Layout& layout = document_.analysis().layout;
    // An unchanged hose keeps its samples: a large drawing has hundreds.
    std::unordered_map<const Route*, Strip*> sampled;
    if (sampled_up_ == layout.plumb.up())
        for (Strip& strip : before)
            sampled.emplace(strip.route.get(), &strip);
    sampled_up_ = layout.plumb.up();
    lowest_mm_ = 1e300;
    highest_mm_ = -1e300;
    for (const ResolvedHose& hose : layout.hoses) {
        if (hose->path.line.empty())
            continue;
        Strip strip;
        strip.hose = hose.id();
        strip.role = hose.role();
        strip.route = hose.route;
        strip.length_mm = hose->path.line.length();
        if (const auto held = sampled.find(hose.route.get()); held != sampled.end())
            strip.samples = std::move(held->second->samples);
        for (int i = 0; i <= samples_per_hose && strip.samples.size() <= samples_per_hose; ++i) {
            Sample at{strip.length_mm * i / samples_per_hose, {}};
            at.heights = heightsAt(hose->path, layout.plumb, at.along_mm);
            strip.samples.push_back(at);
        }
        for (const Sample& at : strip.samples) {
            lowest_mm_ = std::min(lowest_mm_, at.heights.invert_mm);
            highest_mm_ = std::max(highest_mm_, at.heights.crown_mm);
        }
        strips_.push_back(std::move(strip));
    }
    if (strips_.empty())
        lowest_mm_ = highest_mm_ = 0; // nothing was met
    // Supply before return, as the coolant meets them.
    std::stable_sort(strips_.begin(), strips_.end(),
                     [](const Strip& a, const Strip& b) { return a.role < b.role; });
    if (const auto& level = layout.levels.cold_min_mm; level && !strips_.empty())
        highest_mm_ = std::max(highest_mm_, *level);
    const double room = std::max(5.0, 0.06 * (highest_mm_ - lowest_mm_));
    lowest_mm_ -= room;
    highest_mm_ += room;
    const bool other_hoses = !std::equal(before.begin(), before.end(), strips_.begin(), strips_.end(),
                                         [](const Strip& a, const Strip& b) { return a.hose == b.hose; });
    if (other_hoses)
        looked_at_mm_ = worthSeeing();
    arrange();
}

void ProfilePanel::arrange()
{
    double total = 0;
    for (const Strip& strip : strips_)
        total += strip.length_mm;
    const double gaps = gap * static_cast<double>(strips_.empty() ? 0 : strips_.size() - 1);
    const double room = std::max(1.0, width() - leftMargin() - right_margin - gaps);
    double left = leftMargin();
    for (Strip& strip : strips_) {
        strip.left = left;
        strip.width = room * strip.length_mm / total;
        left += strip.width + gap;
    }
    arrangeNames();
    arrangeHeights();
    update();
}

QString ProfilePanel::nameOf(const Strip& strip) const
{
    const Hose* hose = document_.sketch().hose(strip.hose);
    return hose && !hose->name.empty()      ? inWords(hose->name)
           : strip.role == HoseRole::supply ? tr("Supply hose")
                                            : tr("Return hose");
}

/// Each name starts over its strip in the first row that has room for it, or is moved to the left as far as
/// it must; a row more costs the profile less than a name that cannot be read.
void ProfilePanel::arrangeNames()
{
    constexpr int most_rows = 3;
    constexpr double apart = 14;
    const QFontMetricsF metrics(font());
    const auto limit = [this](int row) {
        const QSize box = times_->sizeHint(); // at the top, on the right
        return row * rowHeight() < box.height() ? width() - box.width() - 10.0 : width() - right_margin;
    };
    names_.clear();
    std::vector<double> ends = {0};
    const int rows_before = name_rows_;
    for (const Strip& strip : strips_) {
        Name name{nameOf(strip), {}, strip.left, strip.role};
        const double needed = metrics.horizontalAdvance(name.text) + 2;
        const auto leftIn = [&](int row) { return std::min(strip.left + 4, limit(row) - needed); };
        int row = 0;
        while (row + 1 < most_rows && leftIn(row) < ends.at(static_cast<std::size_t>(row)) &&
               ends.at(static_cast<std::size_t>(row)) > 0)
            if (++row == static_cast<int>(ends.size()))
                ends.push_back(0);
        double& end = ends.at(static_cast<std::size_t>(row));
        const double left = std::max(end, leftIn(row));
        const double room = std::max(0.0, limit(row) - left);
        name.text = metrics.elidedText(name.text, Qt::ElideRight, room);
        name.area = QRectF(left, 2 + row * rowHeight(), std::min(needed, room), 18 * scale());
        end = name.area.right() + apart;
        names_.push_back(name);
    }
    name_rows_ = static_cast<int>(ends.size());
    if (name_rows_ != rows_before)
        updateGeometry();
}

double ProfilePanel::roomForHeights() const
{
    return std::max(1.0, height() - topMargin() - bottomMargin());
}

/// Where the eye should be: at the greatest hump of all, else at the highest crown.
double ProfilePanel::worthSeeing() const
{
    const HighPoint* greatest = nullptr;
    for (const Strip& strip : strips_) {
        const ResolvedHose* hose = document_.analysis().layout.hose(strip.hose);
        for (const HighPoint& crest : hose->profile.high_points)
            if (!greatest || crest.height_mm > greatest->height_mm)
                greatest = &crest;
    }
    return greatest ? greatest->crown_mm : highest_mm_;
}

void ProfilePanel::arrangeHeights()
{
    const double room = roomForHeights();
    const double shown_mm = highest_mm_ - lowest_mm_;
    const double along = strips_.empty() ? 0 : strips_.front().width / strips_.front().length_mm;
    px_per_mm_ = exaggeration_ > 0 && along > 0 ? exaggeration_ * along : room / shown_mm;
    const int beyond = int(std::ceil(shown_mm - room / px_per_mm_));
    scroll_->setVisible(exaggeration_ > 0 && beyond > 0);
    scroll_->setPageStep(int(room / px_per_mm_));
    scroll_->setSingleStep(std::max(1, int(20 / px_per_mm_)));
    scroll_->setRange(0, std::max(0, beyond));
    lookAt(looked_at_mm_);
    const int bar = scroll_->sizeHint().width();
    scroll_->setGeometry(width() - bar, int(topMargin()), bar, int(room));
    const QSize box = times_->sizeHint();
    times_->setGeometry(width() - box.width() - 2, 1, box.width(),
                        std::min(box.height(), int(topMargin()) - 2));
}

/// Brings a height into the middle, as far as there is more over and under it.
void ProfilePanel::lookAt(double height_mm)
{
    looked_at_mm_ = height_mm;
    const QSignalBlocker quiet(scroll_);
    scroll_->setValue(int(highest_mm_ - height_mm - roomForHeights() / px_per_mm_ / 2));
}

/// What is pointed at, here or on the elevation, stays in sight.
void ProfilePanel::follow()
{
    const auto at = positionOf(selection_.hoverHose(), selection_.hoverAlong());
    const double margin = roomForHeights() / 5;
    if (at && scroll_->isVisible() &&
        (at->y() < topMargin() + margin || at->y() > height() - bottomMargin() - margin)) {
        const ResolvedHose* hose = document_.analysis().layout.hose(selection_.hoverHose());
        lookAt(
            heightsAt((*hose)->path, document_.analysis().layout.plumb, selection_.hoverAlong()).centre_mm);
    }
    update();
}

void ProfilePanel::setExaggeration(int times)
{
    if (times == exaggeration_ || times_->findData(times) < 0)
        return;
    exaggeration_ = times;
    updateGeometry();
    times_->setCurrentIndex(times_->findData(times));
    looked_at_mm_ = worthSeeing();
    arrangeHeights();
    update();
    Q_EMIT exaggerationChanged(times);
}

QString ProfilePanel::scaleWords() const
{
    if (strips_.empty())
        return {};
    const double times = px_per_mm_ * strips_.front().length_mm / strips_.front().width;
    const double parts = times < 1 ? 100 : 10;
    return exaggeration_ == 1 ? tr("Heights to the scale of the lengths")
                              : tr("Heights %1 times the lengths")
                                    .arg(inWords(std::round(times * parts) / parts, Unit::none,
                                                 unitsOf(document_.sketch())));
}

void ProfilePanel::wheelEvent(QWheelEvent* event)
{
    if (!scroll_->isVisible()) {
        event->ignore();
        return;
    }
    scroll_->setValue(scroll_->value() - int(event->angleDelta().y() / 120.0 * 3 * scroll_->singleStep()));
    event->accept();
}

void ProfilePanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void ProfilePanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        arrange();
    }
}

double ProfilePanel::y(double height_mm) const
{
    const double hidden_mm = scroll_->maximum() > 0 ? scroll_->value() : 0;
    // What is less than the panel's height stands in its middle.
    const double spare = std::max(0.0, roomForHeights() - px_per_mm_ * (highest_mm_ - lowest_mm_)) / 2;
    return topMargin() + spare + px_per_mm_ * (highest_mm_ - hidden_mm - height_mm);
}

std::optional<QPointF> ProfilePanel::positionOf(const Id& hose, double along_mm) const
{
    const ResolvedHose* resolved = document_.analysis().layout.hose(hose);
    for (const Strip& strip : strips_) {
        if (strip.hose != hose || !resolved)
            continue;
        const double at = std::clamp(along_mm, 0.0, strip.length_mm);
        const BoreHeights heights = heightsAt((*resolved)->path, document_.analysis().layout.plumb, at);
        return QPointF(strip.x(at), y(heights.centre_mm));
    }
    return std::nullopt;
}

std::optional<ProfilePanel::Place> ProfilePanel::placeAt(const QPointF& at) const
{
    for (const Strip& strip : strips_)
        if (at.x() >= strip.left && at.x() <= strip.left + strip.width)
            return Place{strip.hose, (at.x() - strip.left) / strip.width * strip.length_mm};
    return std::nullopt;
}

void ProfilePanel::mouseMoveEvent(QMouseEvent* event)
{
    const auto place = placeAt(event->position());
    selection_.hover(place ? place->hose : Id(), place ? place->along_mm : 0);
}

void ProfilePanel::mousePressEvent(QMouseEvent* event)
{
    if (const auto place = placeAt(event->position()))
        selection_.select({PartKind::hose, place->hose, 0});
}

void ProfilePanel::leaveEvent(QEvent*)
{
    selection_.hover({}, 0);
}

} // namespace siphonwright::panels
