#include "app/survey/blank_form.h"

#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/sketch/survey_letters.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace siphonwright::survey {

namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr double margin_mm = 12;
constexpr double text_mm = 1.9;
constexpr double small_mm = 1.6;

/// Pen, palette and the page while it is painted from the top down.
class Page {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::survey)

public:
    Page(QPainter& painter, const BlankForm& form)
        : painter_(painter),
          form_(form),
          left_(margin_mm + 3), // for punching
          right_(pageSize(form).width() - margin_mm),
          y_(margin_mm),
          row_mm_(pageSize(form).height() < 285 ? 6.6 : 7.4)
    {}

    void all()
    {
        heading();
        elevationAndCautions();
        places();
        numbers();
        ports();
        rest();
        foot();
    }

private:
    QString length() const { return form_.units == UnitSystem::inch ? tr("in") : tr("mm"); }
    double width() const { return right_ - left_; }

    void write(double x, double y, const QString& text, double size = text_mm,
               Weight weight = Weight::regular, Anchor anchor = Anchor::left) const
    {
        drawing::paintWeightedText(painter_, {x, y}, text, anchor, palette_.text, size, weight);
    }
    void thin() const { painter_.setPen(QPen(palette_.ink, 0.18)); }
    void rule(double from, double to, double y) const
    {
        thin();
        painter_.drawLine(QPointF(from, y), QPointF(to, y));
    }
    /// A line to write on after its name; returns where it ends.
    double blank(double x, double y, const QString& name, double length_mm, const QString& unit = {}) const
    {
        write(x, y, name);
        const double from = x + drawing::textWidth(name, text_mm) + 1.5;
        rule(from, from + length_mm, y + 0.8);
        if (!unit.isEmpty())
            write(from + length_mm + 1, y, unit, small_mm);
        return from + length_mm + (unit.isEmpty() ? 0 : drawing::textWidth(unit, small_mm) + 1) + 4;
    }
    /// A box to tick with what it stands for; returns where the next may begin.
    double tick(double x, double y, const QString& what) const
    {
        thin();
        painter_.setBrush(Qt::NoBrush);
        painter_.drawRect(QRectF(x, y - 2.6, 3, 3));
        write(x + 4, y, what);
        return x + 4 + drawing::textWidth(what, text_mm) + 3.5;
    }
    void cell(double x, double w, double h) const
    {
        thin();
        painter_.setBrush(Qt::NoBrush);
        painter_.drawRect(QRectF(x, y_, w, h));
    }
    double baseline() const { return y_ + row_mm_ / 2 + text_mm / 2; }

    void heading()
    {
        write(left_, y_ + 5, tr("Survey before a coolant heater is drawn"), 3.6, Weight::strong);
        y_ += 13;
        const double x = blank(left_, y_, tr("Vehicle or set"), 62);
        if (!form_.vehicle.isEmpty())
            write(left_ + drawing::textWidth(tr("Vehicle or set"), text_mm) + 2.5, y_, form_.vehicle);
        blank(blank(x, y_, tr("By"), 38), y_, tr("Date"), std::max(10.0, right_ - x - 38 - 26));
        y_ += 4;
    }

    void elevationAndCautions()
    {
        const double high = pageSize(form_).height() < 285 ? 58 : 66;
        const double drawn = high / 60 * 84;
        paintLetteredElevation(painter_, QRectF(left_, y_, drawn, high), palette_);
        const double x = left_ + drawn + 5;
        double y = y_ + 4;
        const auto paragraph = [&](const QString& text, Weight weight = Weight::regular) {
            for (const QString& line : drawing::wrapped(text, right_ - x, text_mm, weight)) {
                write(x, y, line, text_mm, weight);
                y += 1.6 * text_mm;
            }
            y += 0.9;
        };
        paragraph(tr("How to measure"), Weight::strong);
        paragraph(
            tr("Heights: tape held plumb, from the frame rail's upper edge (under it: minus) or from the "
               "floor. Tick which."));
        paragraph(
            tr("Station: along the frame rail from the block's front face, + to the engine's rear. Across: "
               "out from the crankshaft, + to the engine's right side."));
        paragraph(tr("Slopes: inclinometer along the engine, in ° or %; + is higher at the engine's front."));
        paragraph(
            tr("What was not measured stays empty: an empty place is asked for again, a guess is not."));
        y += 1;
        paragraph(tr("Cautions"), Weight::strong);
        paragraph(tr("Engine cold: open the cap only cold. Hot surfaces; belts and fan may start."));
        paragraph(
            tr("Wheels chocked, air suspension blocked, automatic start inhibited, key out. Never under an "
               "unsupported vehicle."));
        y_ += high + 2;
    }

    /// Column edges of the table of places.
    std::vector<double> edges() const
    {
        const double w = width();
        return {left_,
                left_ + 8,
                left_ + w * 0.46,
                left_ + w * 0.46 + 30,
                left_ + w * 0.46 + 30 + (w * 0.54 - 30) / 3,
                left_ + w * 0.46 + 30 + (w * 0.54 - 30) * 2 / 3,
                right_};
    }

    void places()
    {
        const std::vector<double> x = edges();
        const QStringList heads = {QString(),
                                   tr("Place"),
                                   tr("Measured from"),
                                   tr("Height, %1").arg(length()),
                                   tr("Station, %1").arg(length()),
                                   tr("Across, %1").arg(length())};
        for (qsizetype i = 0; i < heads.size(); ++i)
            write(x[std::size_t(i)] + 1.5, y_ + 3.4, heads[i], small_mm, Weight::strong);
        y_ += 4.6;
        for (const SurveyLetter& letter : surveyLetters()) {
            if (!letter.isPoint())
                continue;
            for (std::size_t i = 0; i + 1 < x.size(); ++i)
                cell(x[i], x[i + 1] - x[i], row_mm_);
            write(x[0] + 4, baseline(), QString(QLatin1Char(letter.letter)), 2.4, Weight::strong,
                  Anchor::centre);
            write(x[1] + 1.5, y_ + row_mm_ / 2 - 0.4, inWords(letter.what));
            write(x[1] + 1.5, y_ + row_mm_ / 2 + 2.3, inWords(letter.how), 1.5);
            tick(tick(x[2] + 1.5, baseline(), tr("rail")), baseline(), tr("floor"));
            const bool asked[] = {letter.height, letter.along, letter.across};
            for (std::size_t i = 0; i < 3; ++i)
                if (!asked[i])
                    shade(x[i + 3], x[i + 4]);
            y_ += row_mm_;
        }
        y_ += 2.2;
    }

    /// Nothing is asked for here.
    void shade(double from, double to) const
    {
        painter_.fillRect(QRectF(from + 0.1, y_ + 0.1, to - from - 0.2, row_mm_ - 0.2),
                          QColor(225, 225, 225));
    }

    /// Lengths and slopes, two columns of them.
    void numbers()
    {
        const double half = (width() - 4) / 2;
        double ys[2] = {y_, y_};
        for (const SurveyLetter& letter : surveyLetters()) {
            if (letter.isPoint())
                continue;
            const bool slope = letter.unit == Unit::degree;
            double& y = ys[slope ? 1 : 0];
            const double x = left_ + (slope ? half + 4 : 0);
            y_ = y;
            cell(x, 8, row_mm_);
            cell(x + 8, half - 38, row_mm_);
            cell(x + half - 30, 30, row_mm_);
            write(x + 4, baseline(), QString(QLatin1Char(letter.letter)), 2.4, Weight::strong,
                  Anchor::centre);
            write(x + 9.5, y_ + row_mm_ / 2 - 0.4, inWords(letter.what));
            for (const QString& line : drawing::wrapped(inWords(letter.how), half - 40, 1.5).mid(0, 1))
                write(x + 9.5, y_ + row_mm_ / 2 + 2.3, line, 1.5);
            if (slope)
                tick(tick(x + half - 17, baseline(), QStringLiteral("°")), baseline(), QStringLiteral("%"));
            else
                write(right(x + half), baseline(), length(), small_mm, Weight::regular, Anchor::right);
            y += row_mm_;
        }
        y_ = std::max(ys[0], ys[1]) + 2.2;
    }
    static double right(double edge) { return edge - 1.5; }

    void ports()
    {
        for (const QString& name : {tr("Supply port"), tr("Return port")}) {
            thin();
            painter_.setBrush(Qt::NoBrush);
            painter_.drawRect(QRectF(left_, y_, width(), 12));
            write(left_ + 1.5, y_ + 4.4, name, text_mm, Weight::strong);
            double x = left_ + 24;
            for (const QString& kind :
                 {tr("drain port"), tr("core plug"), tr("lower hose tee"), tr("head port"), tr("cabin line")})
                x = tick(x, y_ + 4.4, kind);
            double y = y_ + 10;
            x = blank(left_ + 1.5, y, tr("Thread"), 26);
            x = blank(x, y, tr("Bore"), 15, length());
            write(x, y, tr("Points to"));
            x += drawing::textWidth(tr("Points to"), text_mm) + 2;
            for (const QString& way :
                 {tr("front"), tr("rear"), tr("left"), tr("right"), tr("up"), tr("down")})
                x = tick(x, y, way) - 1;
            blank(x + 1, y, tr("tilt"), std::max(8.0, right_ - x - 13), QStringLiteral("°"));
            y_ += 13.2;
        }
        y_ += 3.4;
    }

    void rest()
    {
        double x = left_;
        write(x, y_, tr("Engine's thermostat on the"));
        x += drawing::textWidth(tr("Engine's thermostat on the"), text_mm) + 2;
        x = tick(tick(x, y_, tr("outlet side")), y_, tr("inlet side"));
        blank(x + 4, y_, tr("Supply voltage at the bay"), 18, tr("V"));
        y_ += 6.4;
        x = left_;
        write(x, y_, tr("Coolant in it now"));
        x += drawing::textWidth(tr("Coolant in it now"), text_mm) + 2;
        for (const QString& kind :
             {tr("ethylene glycol"), tr("propylene glycol"), tr("water"), tr("not known")})
            x = tick(x, y_, kind);
        x = blank(x + 1, y_, QString(), 11, tr("% by volume"));
        blank(x, y_, tr("colour"), std::max(8.0, right_ - x - 10));
        y_ += 6.6;
        write(left_, y_, tr("What is hot or moves nearby; notes"));
        const double bottom = pageSize(form_).height() - margin_mm - 3.5;
        double from = left_ + drawing::textWidth(tr("What is hot or moves nearby; notes"), text_mm) + 1.5;
        for (double line = y_ + 0.8; line < bottom; line += 7) {
            rule(from, right_, line);
            from = left_;
        }
    }

    void foot()
    {
        const double y = pageSize(form_).height() - margin_mm + 1;
        write(left_, y, tr("The engine's and the heater's own manuals rule over this form."), 1.5);
        write(right_, y, QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION), 1.5, Weight::regular,
              Anchor::right);
    }

    QPainter& painter_;
    const BlankForm& form_;
    const drawing::Palette palette_ = drawing::Palette::paper();
    double left_;
    double right_;
    double y_;      ///< where the next thing begins
    double row_mm_; ///< room for a hand
};

QPageSize paperOf(const BlankForm& form)
{
    const bool letter = form.paper == sheet::Paper::letter || form.paper == sheet::Paper::tabloid;
    return QPageSize(letter ? QPageSize::Letter : QPageSize::A4);
}

} // namespace

QSizeF pageSize(const BlankForm& form)
{
    return paperOf(form).size(QPageSize::Millimeter);
}

QPageLayout pageLayout(const BlankForm& form)
{
    QPageLayout layout(paperOf(form), QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter);
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

void paintBlankForm(QPainter& painter, const BlankForm& form)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Page(painter, form).all();
    painter.restore();
}

QStringList exportBlankForm(const QString& path, const BlankForm& form, const PutFile& put)
{
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    QPdfWriter writer(&file);
    writer.setTitle(tr("Survey form"));
    writer.setCreator(QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION));
    writer.setResolution(1200);
    QPainter painter;
    if (!writer.setPageLayout(pageLayout(form)) || !painter.begin(&writer))
        return {tr("%1: the form could not be drawn.").arg(path)};
    painter.scale(writer.logicalDpiX() / 25.4, writer.logicalDpiX() / 25.4);
    paintBlankForm(painter, form);
    painter.end();
    return put(path, file.data());
}

} // namespace siphonwright::survey
