#include "app/window/first_steps.h"

#include "app/window/actions.h"
#include "app/window/settings.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace siphonwright {

namespace {

const Hose* hoseOf(const Sketch& sketch, HoseRole role)
{
    const auto found = std::find_if(sketch.hoses.begin(), sketch.hoses.end(),
                                    [role](const Shared<Hose>& hose) { return hose->role == role; });
    return found == sketch.hoses.end() ? nullptr : &**found;
}

bool hasPort(const Sketch& sketch, PortRole role)
{
    return std::any_of(sketch.ports.begin(), sketch.ports.end(),
                       [role](const Port& port) { return port.role == role; });
}

std::ptrdiff_t valvesIn(const Hose& hose)
{
    return std::count_if(hose.parts.begin(), hose.parts.end(),
                         [](const InlinePart& part) { return part.kind == InlineKind::isolation_valve; });
}

bool hasValve(const Hose* hose)
{
    return hose && valvesIn(*hose) > 0;
}

std::ptrdiff_t valvesIn(const Sketch& sketch)
{
    std::ptrdiff_t valves = 0;
    for (const Shared<Hose>& hose : sketch.hoses)
        valves += valvesIn(*hose);
    return valves;
}

} // namespace

const std::vector<FirstSteps::Step>& FirstSteps::steps()
{
    static const std::vector<Step> all = {
        {QT_TR_NOOP("engine"),
         QT_TR_NOOP("Place an engine: take the picture that comes nearest, and shape it by dragging later."),
         QT_TR_NOOP("&Choose an engine…"), "insert-engine",
         [](const FirstSteps& s) { return s.document_.sketch().engine.has_value(); }},
        {QT_TR_NOOP("supply port"),
         QT_TR_NOOP("Mark the supply port, low at the front, where coolant leaves the jacket."),
         QT_TR_NOOP("&Mark it"), "insert-supply-port",
         [](const FirstSteps& s) { return hasPort(s.document_.sketch(), PortRole::supply); }},
        {QT_TR_NOOP("return port"),
         QT_TR_NOOP("Mark the return port, high at the rear, where warm coolant comes back in."),
         QT_TR_NOOP("&Mark it"), "insert-return-port",
         [](const FirstSteps& s) { return hasPort(s.document_.sketch(), PortRole::return_); }},
        {QT_TR_NOOP("heater"),
         QT_TR_NOOP("Place a heater well under the jacket, so that warm coolant rises by itself."),
         QT_TR_NOOP("&Choose a heater…"), "insert-heater",
         [](const FirstSteps& s) { return !s.document_.sketch().heaters.empty(); }},
        {QT_TR_NOOP("supply hose"),
         QT_TR_NOOP(
             "Draw the supply hose: click the supply port, then point by point, last the heater's inlet."),
         QT_TR_NOOP("D&raw it"), "supply-hose",
         [](const FirstSteps& s) { return hoseOf(s.document_.sketch(), HoseRole::supply) != nullptr; }},
        {QT_TR_NOOP("return hose"),
         QT_TR_NOOP("Draw the return hose from the heater's outlet to the return port, rising all the way."),
         QT_TR_NOOP("D&raw it"), "return-hose",
         [](const FirstSteps& s) { return hoseOf(s.document_.sketch(), HoseRole::return_) != nullptr; }},
        {QT_TR_NOOP("valves"),
         QT_TR_NOOP("Put an isolation valve into each hose, near the engine: click the hose with this tool."),
         QT_TR_NOOP("&Take the valve"), "valve",
         [](const FirstSteps& s) {
             return hasValve(hoseOf(s.document_.sketch(), HoseRole::supply)) &&
                    hasValve(hoseOf(s.document_.sketch(), HoseRole::return_));
         }},
        {QT_TR_NOOP("findings"),
         QT_TR_NOOP(
             "Go through the findings, those that stop the job first: each shows its place and a way out."),
         QT_TR_NOOP("Sh&ow the next"), "next-finding",
         [](const FirstSteps& s) {
             const Analysis& analysis = s.document_.analysis();
             return (s.looked_ || analysis.findings.empty()) && analysis.count(Severity::stop) == 0 &&
                    analysis.count(Severity::caution) == 0;
         }},
        {QT_TR_NOOP("save"), QT_TR_NOOP("Save the sketch: its file is the record of the job."),
         QT_TR_NOOP("&Save…"), "save",
         [](const FirstSteps& s) { return !s.document_.path().isEmpty() && !s.document_.isModified(); }},
    };
    return all;
}

FirstSteps::FirstSteps(Document& document, Selection& selection, const Actions& actions, QWidget* parent)
    : QFrame(parent),
      document_(document),
      selection_(selection),
      actions_(actions),
      title_(new QLabel(this)),
      sentence_(new QLabel(this)),
      do_(new QPushButton(this)),
      skip_(new QPushButton(tr("S&kip"), this)),
      close_(new QToolButton(this))
{
    setObjectName(QStringLiteral("first-steps"));
    title_->setProperty("role", QStringLiteral("title"));
    sentence_->setObjectName(QStringLiteral("first-steps-sentence"));
    sentence_->setWordWrap(true);
    do_->setObjectName(QStringLiteral("first-steps-do"));
    skip_->setObjectName(QStringLiteral("first-steps-skip"));
    skip_->setToolTip(tr("Go on to the next step without this one"));
    close_->setObjectName(QStringLiteral("first-steps-close"));
    close_->setText(QStringLiteral("×"));
    close_->setToolTip(tr("Leave the first sketch; Help begins it again"));
    close_->setAccessibleName(tr("Leave the first sketch"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 3, 6, 3);
    row->setSpacing(10);
    row->addWidget(title_);
    row->addWidget(sentence_, 1);
    row->addWidget(do_);
    row->addWidget(skip_);
    row->addWidget(close_);
    connect(do_, &QPushButton::clicked, this, &FirstSteps::act);
    connect(skip_, &QPushButton::clicked, this, &FirstSteps::skip);
    connect(close_, &QToolButton::clicked, this, &FirstSteps::leave);
    connect(&document_, &Document::changed, this, &FirstSteps::refresh);
    connect(&document_, &Document::analysed, this, &FirstSteps::refresh);
    // Queued, since the valve tool is put away after it has changed the document.
    connect(&document_, &Document::changed, this, &FirstSteps::handToolAgain, Qt::QueuedConnection);
    connect(&document_, &Document::fileChanged, this, &FirstSteps::refresh);
    connect(&selection_, &Selection::findingChanged, this, [this] {
        looked_ = looked_ || selection_.finding() >= 0;
        refresh();
    });
    for (const Step& step : steps())
        connect(actions_[QString::fromLatin1(step.action)], &QAction::enabledChanged, this,
                &FirstSteps::refresh);
    restart();
}

bool FirstSteps::loopIsDrawn() const
{
    const Sketch& sketch = document_.sketch();
    return sketch.engine && !sketch.heaters.empty() && hoseOf(sketch, HoseRole::supply) &&
           hoseOf(sketch, HoseRole::return_);
}

void FirstSteps::restart()
{
    skipped_.clear();
    looked_ = false;
    stage_ = loopIsDrawn() || settings::guide_left.get() ? Stage::away : Stage::leads;
    refresh();
}

void FirstSteps::begin()
{
    skipped_.clear();
    looked_ = false;
    settings::guide_left.set(false);
    stage_ = Stage::leads;
    refresh();
}

void FirstSteps::invite()
{
    if (!settings::guide_left.get())
        stage_ = Stage::invites;
    refresh();
}

std::size_t FirstSteps::current() const
{
    std::size_t at = 0;
    while (at < steps().size() && (skipped_.count(at) > 0 || steps()[at].done(*this)))
        ++at;
    return at;
}

QString FirstSteps::overview() const
{
    QStringList lines;
    for (std::size_t i = 0; i < steps().size(); ++i)
        lines << QStringLiteral("%1  %2. %3")
                     .arg(steps()[i].done(*this)  ? QStringLiteral("✓")
                          : skipped_.count(i) > 0 ? QStringLiteral("–")
                                                  : QStringLiteral("○"))
                     .arg(i + 1)
                     .arg(tr(steps()[i].name));
    return lines.join(QLatin1Char('\n'));
}

void FirstSteps::refresh()
{
    setVisible(stage_ != Stage::away);
    if (stage_ == Stage::away)
        return;
    const std::size_t at = current();
    const bool leads = stage_ == Stage::leads;
    const bool step = leads && at < steps().size();
    skip_->setVisible(step);
    do_->setVisible(step || !leads);
    setToolTip(leads ? overview() : QString());
    if (!leads) {
        title_->setText(tr("Welcome"));
        sentence_->setText(
            tr("This is a job that works, to look round in. Change anything, it is not saved."));
        do_->setText(tr("Draw your &own, step by step"));
    } else if (step) {
        title_->setText(tr("Step %1 of %2").arg(at + 1).arg(steps().size()));
        sentence_->setText(tr(steps()[at].sentence));
        do_->setText(tr(steps()[at].button));
        do_->setEnabled(actions_[QString::fromLatin1(steps()[at].action)]->isEnabled());
    } else {
        title_->setText(tr("Done"));
        sentence_->setText(
            tr("That is a whole sketch. The menu Job goes on: warm-up, parts and cuts, checklist."));
    }
    do_->setAccessibleDescription(sentence_->text());
}

void FirstSteps::act()
{
    if (stage_ == Stage::invites) {
        settings::guide_left.set(false);
        actions_[QStringLiteral("new")]->trigger(); // which leads through the empty drawing
        return;
    }
    if (const std::size_t at = current(); at < steps().size()) {
        acted_ = at;
        valves_ = valvesIn(document_.sketch());
        actions_[QString::fromLatin1(steps()[at].action)]->trigger();
    }
}

/// One valve is in, and the step wants another: the tool need not be asked for again.
void FirstSteps::handToolAgain()
{
    const bool placed = valvesIn(document_.sketch()) > valves_;
    if (stage_ == Stage::leads && placed && acted_ && *acted_ == current() &&
        std::string_view(steps()[*acted_].action) == "valve")
        act();
}

void FirstSteps::skip()
{
    skipped_.insert(current());
    refresh();
}

void FirstSteps::leave()
{
    settings::guide_left.set(true);
    stage_ = Stage::away;
    refresh();
}

} // namespace siphonwright
