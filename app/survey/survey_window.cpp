#include "app/survey/survey_window.h"

#include "app/language/in_words.h"
#include "app/panels/form_view.h"
#include "app/panels/wrapped_row.h"
#include "app/survey/blank_form.h"
#include "app/survey/letter_grid.h"
#include "app/survey/survey_access.h"

#include "core/sketch/draw_survey.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QVBoxLayout>

namespace siphonwright::survey {

namespace {

/// The lettered elevation on the screen.
class Picture : public QWidget {
public:
    explicit Picture(QWidget* parent) : QWidget(parent)
    {
        setMinimumHeight(190);
        setAccessibleName(SurveyWindow::tr("Where the letters are on an engine in its frame"));
    }
    void setLook(drawing::Look look)
    {
        palette_ = drawing::paletteOf(look);
        update();
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.fillRect(rect(), palette_.ground);
        paintLetteredElevation(painter, QRectF(rect()).adjusted(4, 4, -4, -4), palette_);
    }

private:
    drawing::Palette palette_ = drawing::Palette::light();
};

QScrollArea* scrolled(QWidget* inside, QWidget* parent)
{
    auto* area = new QScrollArea(parent);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(inside);
    area->setMinimumWidth(inside->minimumSizeHint().width() + area->verticalScrollBar()->sizeHint().width());
    return area;
}

} // namespace

QStringList reportSentences(const Sketch& sketch)
{
    const SurveyReport report = reportOn(sketch);
    const UnitSystem units = panels::unitsOf(sketch);
    QStringList sentences;
    for (const Message& one : report.disagree)
        sentences << QStringLiteral("▲ ") + inWords(one, units);
    for (const Message& one : report.taken)
        sentences << inWords(one, units);
    for (const Message& one : report.not_measured)
        sentences << inWords(one, units);
    return sentences;
}

SurveyWindow::SurveyWindow(Document& document, QWidget* parent)
    : QWidget(parent, Qt::Window),
      document_(document),
      report_(new QLabel(this)),
      draw_(new QPushButton(tr("Draw the engine from these"), this)),
      picture_(new Picture(this))
{
    setWindowTitle(tr("Survey"));
    setObjectName(QStringLiteral("survey-window"));
    resize(1240, 660);
    report_->setObjectName(QStringLiteral("survey-report"));
    report_->setWordWrap(true);
    report_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    report_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    report_->setAccessibleName(tr("What was not measured"));
    draw_->setObjectName(QStringLiteral("survey-draw"));
    draw_->setToolTip(tr("Make or update engine, tank and ports; one step to undo"));
    auto* form = new QPushButton(tr("Blank form as PDF…"), this);
    auto* print = new QPushButton(tr("Print blank form…"), this);
    form->setObjectName(QStringLiteral("survey-form"));
    print->setObjectName(QStringLiteral("survey-print"));

    auto* left = new QVBoxLayout;
    left->addWidget(scrolled(new LetterGrid(document_, this), this), 6);
    auto* open = new QLabel(tr("Stays typical or not known"), this);
    open->setProperty("role", QStringLiteral("title"));
    left->addWidget(open);
    left->addWidget(scrolled(report_, this), 1);
    auto* right = new QVBoxLayout;
    right->addWidget(picture_);
    right->addWidget(scrolled(new panels::FormView(document_, surveyForm(), this), this), 1);
    auto* columns = new QHBoxLayout;
    columns->addLayout(left, 1);
    columns->addLayout(right);
    auto* buttons = new panels::WrappedRow;
    buttons->addWidget(draw_);
    buttons->addStretch();
    buttons->addWidget(form);
    buttons->addWidget(print);
    auto* page = new QVBoxLayout(this);
    page->addLayout(columns, 1);
    page->addLayout(buttons);

    auto* close_key = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    connect(close_key, &QShortcut::activated, this, &QWidget::close);
    connect(draw_, &QPushButton::clicked, this, &SurveyWindow::drawEngine);
    connect(form, &QPushButton::clicked, this, &SurveyWindow::formWanted);
    connect(print, &QPushButton::clicked, this, &SurveyWindow::printWanted);
    connect(&document_, &Document::changed, this, &SurveyWindow::refresh);
    refresh();
}

void SurveyWindow::setLook(drawing::Look look)
{
    static_cast<Picture*>(picture_)->setLook(look);
}

void SurveyWindow::drawEngine()
{
    if (document_.apply(tr("Draw the engine from the survey"),
                        [](Sketch& sketch) { drawFromSurvey(sketch); }))
        Q_EMIT drawn();
}

void SurveyWindow::refresh()
{
    const Sketch& sketch = document_.sketch();
    draw_->setEnabled(sketch.survey.has_value());
    QStringList sentences = reportSentences(sketch);
    if (!sketch.engine)
        sentences.prepend(
            tr("There is no engine yet: an in-line 6 of typical shape will be drawn. For another, "
               "insert it first."));
    report_->setText(sentences.join(QLatin1Char('\n')));
}

} // namespace siphonwright::survey
