#include "app/window/gallery.h"

#include "app/language/in_words.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright {

namespace {

constexpr QSize picture_px(210, 150);
constexpr double edge_px = 20; // marks of the levels stand out

QString shown(double value, Unit unit, UnitSystem units)
{
    return inWords(value, unit, units);
}

/// The largest scale at which every picture has room.
double commonScale(const std::vector<Sketch>& sketches)
{
    double px_per_mm = 1;
    for (const Sketch& sketch : sketches) {
        const QRectF box = drawing::boundsOf(sketch, analyse(sketch));
        if (!box.isEmpty())
            px_per_mm = std::min({px_per_mm, (picture_px.width() - 2 * edge_px) / box.width(),
                                  (picture_px.height() - 2 * edge_px) / box.height()});
    }
    return px_per_mm;
}

} // namespace

Sketch sketchOf(const EngineTemplate& engine)
{
    Sketch sketch;
    sketch.engine = engine.engine;
    return sketch;
}

Sketch sketchOf(const HeaterTemplate& heater)
{
    Sketch sketch;
    sketch.heaters.push_back(heater.heater);
    return sketch;
}

QPixmap pictureOf(const Sketch& sketch, QSize size, double px_per_mm, double device_ratio, drawing::Look look)
{
    constexpr double usual_px_per_mm = 96 / 25.4; // of the screen, for line widths
    const Analysis analysis = analyse(sketch);
    drawing::Style style;
    style.palette = drawing::paletteOf(look);
    style.scale = px_per_mm / usual_px_per_mm;
    style.labels = false;
    style.balloons = false;
    style.running = false;
    style.findings = false;
    QPixmap picture(size * device_ratio);
    picture.setDevicePixelRatio(device_ratio);
    picture.fill(style.palette.ground);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(size.width() / 2.0, size.height() / 2.0);
    painter.scale(px_per_mm, px_per_mm);
    painter.translate(-drawing::boundsOf(sketch, analysis).center());
    drawing::paintElevation(painter, sketch, analysis, style);
    return picture;
}

QString captionOf(const EngineTemplate& engine, UnitSystem units)
{
    const QString title = inWords(engine.title);
    if (!engine.engine.displacement_l.value)
        return title;
    return TemplateGallery::tr("%1\n%2").arg(title,
                                             shown(*engine.engine.displacement_l.value, Unit::litre, units));
}

QString captionOf(const HeaterTemplate& heater, UnitSystem units)
{
    const Heater& body = heater.heater;
    if (!body.power_W.value)
        return inWords(heater.title);
    return TemplateGallery::tr("%1, %2\n%3 high, hose %4")
        .arg(shown(*body.power_W.value, Unit::watt, units),
             body.rated_V.value ? shown(*body.rated_V.value, Unit::volt, units) : QString(),
             shown(body.length_mm, Unit::mm, units),
             body.manual_min_bore_mm.value ? shown(*body.manual_min_bore_mm.value, Unit::mm, units)
                                           : TemplateGallery::tr("not stated"));
}

TemplateGallery::TemplateGallery(TemplateKind kind, const QString& title, drawing::Look look,
                                 UnitSystem units, QWidget* parent)
    : QDialog(parent), list_(new QListWidget(this))
{
    setObjectName(QStringLiteral("gallery"));
    setWindowTitle(title);
    setAttribute(Qt::WA_DeleteOnClose);
    list_->setViewMode(QListView::IconMode);
    list_->setResizeMode(QListView::Adjust);
    list_->setMovement(QListView::Static);
    list_->setIconSize(picture_px);
    list_->setWordWrap(true);
    list_->setSpacing(6);
    list_->setAccessibleName(title);
    fill(kind, look, units);
    auto* hint =
        new QLabel(tr("Typical sizes, to be shaped to what stands before you. All to one scale."), this);
    hint->setProperty("role", QStringLiteral("faint"));
    hint->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    take_ = buttons->button(QDialogButtonBox::Ok);
    take_->setText(tr("&Take it"));
    if (kind == TemplateKind::engines) {
        auto* air = buttons->addButton(tr("&Air-cooled engine…"), QDialogButtonBox::HelpRole);
        connect(air, &QPushButton::clicked, this, &TemplateGallery::airCooledChosen);
    }
    auto* column = new QVBoxLayout(this);
    column->addWidget(list_, 1);
    column->addWidget(hint);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &TemplateGallery::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(list_, &QListWidget::itemActivated, this, &TemplateGallery::accept);
    list_->setFocus();
    const int em = fontMetrics().height();
    resize(QSize(3 * picture_px.width() + 170, 2 * picture_px.height() + 14 * em)
               .boundedTo(parent->size() - QSize(40, 40)));
}

void TemplateGallery::fill(TemplateKind kind, drawing::Look look, UnitSystem units)
{
    std::vector<Sketch> sketches;
    QStringList ids;
    QStringList captions;
    if (kind == TemplateKind::engines)
        for (const EngineTemplate& engine : engineTemplates()) {
            sketches.push_back(sketchOf(engine));
            ids << QString::fromStdString(engine.id);
            captions << captionOf(engine, units);
        }
    else
        for (const HeaterTemplate& heater : heaterTemplates()) {
            sketches.push_back(sketchOf(heater));
            ids << QString::fromStdString(heater.id);
            captions << captionOf(heater, units);
        }
    const double px_per_mm = commonScale(sketches);
    const int lines = 3;
    for (std::size_t i = 0; i < sketches.size(); ++i) {
        const auto at = static_cast<qsizetype>(i);
        auto* item = new QListWidgetItem(captions[at], list_);
        const QPixmap picture = pictureOf(sketches[i], picture_px, px_per_mm, devicePixelRatioF(), look);
        QIcon icon(picture);
        icon.addPixmap(picture, QIcon::Selected); // chosen it is framed, not tinted
        item->setIcon(icon);
        item->setData(Qt::UserRole, ids[at]);
        item->setSizeHint(
            {picture_px.width() + 16, picture_px.height() + lines * fontMetrics().lineSpacing() + 12});
    }
    list_->setCurrentRow(0);
}

void TemplateGallery::accept()
{
    const QListWidgetItem* item = list_->currentItem();
    if (!item || !isVisible()) // Enter in the list comes a second time, as the dialog's own
        return;
    const QString id = item->data(Qt::UserRole).toString();
    QDialog::accept();
    Q_EMIT chosen(id);
}

} // namespace siphonwright
