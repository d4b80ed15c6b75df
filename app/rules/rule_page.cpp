#include "app/rules/rule_page.h"

#include "app/language/in_words.h"
#include "app/language/margin_words.h"
#include "app/panels/field.h"
#include "app/rules/case_view.h"
#include "app/rules/limit_form.h"
#include "app/rules/rule_choices.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace siphonwright::rules {

namespace {

QString severityWord(Severity severity)
{
    switch (severity) {
    case Severity::stop:
        return RulePage::tr("Stop");
    case Severity::caution:
        return RulePage::tr("Caution");
    case Severity::advice:
        return RulePage::tr("Advice");
    }
    return {};
}

QString tiltWords(Tilt tilt)
{
    switch (tilt) {
    case Tilt::same:
        return RulePage::tr("Judged on the level; the grade does not change it.");
    case Tilt::shifts:
        return RulePage::tr("Judged on the level and over the grades.");
    case Tilt::traps:
        return RulePage::tr(
            "Judged on the level and over the grades; it decides in which grades the loop is sound.");
    }
    return {};
}

QString sentence(QString words)
{
    words[0] = words[0].toUpper();
    return words + QLatin1Char('.');
}

} // namespace

RulePage::RulePage(Document& document, const Rule& rule, drawing::Look look, QWidget* parent)
    : QWidget(parent), document_(document), rule_(rule), column_(new QVBoxLayout(this))
{
    column_->setContentsMargins(14, 10, 14, 12);
    column_->setSpacing(6);
    addText(words(rule.title), "rule-title")->setProperty("role", QStringLiteral("page-title"));
    addText(words(rule.id), "rule-id")->setProperty("role", QStringLiteral("faint"));
    addText(words(rule.why), "rule-why");
    addDrawings(look);
    addHeading(tr("In this drawing"));
    here_ = addText({}, "rule-here");
    addHeading(tr("Limits"));
    column_->addWidget(new LimitForm(document, rule, this));
    addHeading(tr("What to do"));
    addText(words(rule.fix), "rule-fix");
    addHeading(tr("Basis"));
    QString basis = words(rule.basis);
    basis[0] = basis[0].toUpper();
    addText(basis + QLatin1Char('.'), "rule-basis");
    addText(tiltWords(rule.tilt), "rule-tilt");
    column_->addStretch(1);
    connect(&document_, &Document::changed, this, &RulePage::refresh);
    connect(&document_, &Document::analysed, this, &RulePage::refresh);
    refresh();
}

void RulePage::addHeading(const QString& text)
{
    auto* heading = new QLabel(text, this);
    heading->setProperty("role", QStringLiteral("heading"));
    heading->setIndent(0);
    column_->addWidget(heading);
}

QLabel* RulePage::addText(const QString& text, const char* name)
{
    auto* label = new QLabel(text, this);
    label->setObjectName(QString::fromLatin1(name));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    column_->addWidget(label);
    return label;
}

void RulePage::addDrawings(drawing::Look look)
{
    const RuleDrawing* drawing = drawingOf(rule_.id);
    if (!drawing)
        return;
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(4);
    for (const bool right : {false, true}) {
        const int column = right ? 1 : 0;
        grid->addWidget(new CaseView(*drawing, right, look, this), 0, column);
        auto* caption = new QLabel(drawing->caption(right), this);
        caption->setWordWrap(true);
        caption->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        grid->addWidget(caption, 1, column);
        grid->setColumnStretch(column, 1);
    }
    column_->addLayout(grid);
}

void RulePage::refresh()
{
    here_->setText(saysAboutThisDrawing());
}

QString RulePage::saysAboutThisDrawing() const
{
    const Analysis& analysis = document_.analysis();
    const UnitSystem units = panels::unitsOf(document_.sketch());
    if (const LimitChange* off = switchedOff(rule_.id, document_.sketch()))
        return tr("Not judged by choice: %1").arg(QString::fromStdString(off->reason));
    QStringList lines;
    for (const Finding* finding : findingsOf(analysis, rule_.id))
        lines += QStringLiteral("%1: %2").arg(severityWord(finding->severity), inWords(finding->text, units));
    for (const NotJudged& one : analysis.not_judged)
        if (one.rule == rule_.id)
            lines += tr("Not judged: %1.").arg(inWords(one.missing));
    for (const Margin& margin : analysis.margins)
        if (margin.rule == rule_.id)
            lines += sentence(marginWords(margin, units));
    lines.removeDuplicates();
    if (lines.isEmpty())
        return document_.sketch().hoses.empty() ? tr("Nothing to judge until hoses are drawn.")
                                                : tr("Nothing found.");
    return lines.join(QLatin1Char('\n'));
}

} // namespace siphonwright::rules
