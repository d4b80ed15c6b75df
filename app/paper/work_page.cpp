#include "app/paper/work_page.h"

#include "app/paper/edit_table.h"

#include "core/paperwork/money.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright::paper {

namespace {

struct WorkColumn {
    enum { task, first, further, all, amount, basis, count };
};
constexpr std::int64_t most_hours = 1'000'000; ///< hundredths

QString hoursText(std::int64_t hundredths)
{
    return decimalWords(hundredths, 2);
}

} // namespace

WorkPage::WorkPage(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      table_(new EditTable(
          {tr("Task"), tr("First vehicle, h"), tr("Each further one, h"), tr("Hours"), tr("Amount"),
           tr("Where the hours come from")},
          [this](int row, int column, const QString& typed) { return takeHours(row, column, typed); }, this)),
      problem_(new QLabel(this)),
      back_(new QPushButton(tr("&Back to the usual hours"), this))
{
    table_->setObjectName(QStringLiteral("work-table"));
    table_->setAccessibleName(tr("Work"));
    QHeaderView* header = table_->horizontalHeader();
    for (int column = 0; column < WorkColumn::count; ++column)
        header->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    header->setSectionResizeMode(WorkColumn::task, QHeaderView::Stretch);
    auto* what = new QLabel(tr("The usual hours are our own estimate for what is drawn: put in your own. "
                               "Electrical work is for a licensed electrician."),
                            this);
    what->setWordWrap(true);
    problem_->setObjectName(QStringLiteral("work-problem"));
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* add = new QPushButton(tr("&Add a task"), this);
    add->setObjectName(QStringLiteral("add-task"));
    back_->setObjectName(QStringLiteral("usual-hours"));
    auto* row = new QHBoxLayout;
    row->addWidget(what, 1);
    row->addWidget(back_);
    row->addWidget(add);
    auto* page = new QVBoxLayout(this);
    page->addLayout(row);
    page->addWidget(problem_);
    page->addWidget(table_, 1);
    connect(add, &QPushButton::clicked, this, [this] {
        document_.apply(tr("Add a task"),
                        [](Sketch& sketch) { addOwnTask(sketch, WorkPage::tr("Own task").toStdString()); });
        table_->setCurrentCell(table_->rowCount() - 1, WorkColumn::task);
        table_->setFocus();
    });
    connect(back_, &QPushButton::clicked, this, &WorkPage::forget);
    connect(table_, &QTableWidget::currentCellChanged, this, &WorkPage::follow);
    connect(table_, &EditTable::problemChanged, this, [this](const QString& problem) {
        problem_->setText(problem);
        problem_->setVisible(!problem.isEmpty());
    });
}

void WorkPage::show(const Paperwork& paperwork)
{
    tasks_ = tasksOf(document_.sketch());
    const Quote& quote = quoteOf(document_.sketch());
    table_->setRowCount(static_cast<int>(tasks_.size()));
    for (std::size_t i = 0; i < tasks_.size(); ++i) {
        const JobTask& task = tasks_[i];
        const int row = static_cast<int>(i);
        const auto line = std::find_if(paperwork.estimate.lines.begin(), paperwork.estimate.lines.end(),
                                       [&](const EstimateLine& other) { return other.task == task.id; });
        const bool priced = line != paperwork.estimate.lines.end() && line->amount_minor;
        table_->put(row, WorkColumn::task, words(task.name),
                    task.own ? EditTable::Kind::typed : EditTable::Kind::shown);
        table_->put(row, WorkColumn::first, hoursText(task.hours_hundredths), EditTable::Kind::typed,
                    EditTable::figures);
        table_->put(row, WorkColumn::further, hoursText(task.repeat_hundredths), EditTable::Kind::typed,
                    EditTable::figures);
        table_->put(row, WorkColumn::all,
                    hoursText(task.hours_hundredths + task.repeat_hundredths * (quote.vehicles - 1)),
                    EditTable::Kind::shown, EditTable::figures);
        table_->put(row, WorkColumn::amount,
                    priced ? money(*line->amount_minor, quote) : tr("▲ labour rate not entered"),
                    EditTable::Kind::shown, EditTable::figures);
        table_->put(row, WorkColumn::basis,
                    task.own     ? tr("own task")
                    : task.usual ? tr("own estimate, not looked at")
                                 : tr("entered"));
    }
    follow();
}

void WorkPage::follow()
{
    const int row = table_->currentRow();
    const bool chosen = row >= 0 && static_cast<std::size_t>(row) < tasks_.size();
    const bool own = chosen && tasks_[static_cast<std::size_t>(row)].own;
    back_->setText(own ? tr("&Remove the task") : tr("&Back to the usual hours"));
    back_->setEnabled(chosen && (own || !tasks_[static_cast<std::size_t>(row)].usual));
}

QString WorkPage::takeName(const JobTask& task, const QString& typed)
{
    const std::string name = typed.trimmed().toStdString();
    if (name.empty() || name.size() > 400)
        return tr("A task has a name of up to 400 characters.");
    changeQuote(document_, tr("Rename a task"), [&](Quote& quote) {
        for (LabourTask& entered : quote.labour)
            if (entered.id == task.id)
                entered.name = name;
    });
    return {};
}

QString WorkPage::takeHours(int row, int column, const QString& typed)
{
    if (row < 0 || static_cast<std::size_t>(row) >= tasks_.size())
        return {};
    const JobTask task = tasks_[static_cast<std::size_t>(row)];
    if (column == WorkColumn::task)
        return takeName(task, typed);
    std::optional<std::int64_t> hours;
    const QString refused = takeDecimal(typed, 2, 0, most_hours, hours);
    if (!refused.isEmpty() || !hours)
        return refused.isEmpty() ? tr("Hours are a number such as 1.25.") : refused;
    document_.apply(tr("Change the hours of a task"), [&](Sketch& sketch) {
        setHours(sketch, task.id, column == WorkColumn::first ? *hours : task.hours_hundredths,
                 column == WorkColumn::further ? *hours : task.repeat_hundredths);
    });
    return {};
}

void WorkPage::forget()
{
    const int row = table_->currentRow();
    if (row < 0 || static_cast<std::size_t>(row) >= tasks_.size())
        return;
    const std::string id = tasks_[static_cast<std::size_t>(row)].id;
    document_.apply(tr("Back to the usual hours"), [&id](Sketch& sketch) { forgetHours(sketch, id); });
}

} // namespace siphonwright::paper
