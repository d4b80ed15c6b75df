#pragma once

#include "app/paper/paperwork.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace siphonwright::paper {

class EditTable;

/// The tasks with their hours, which can be typed over; own tasks can be added.
class WorkPage : public QWidget {
    Q_OBJECT
public:
    explicit WorkPage(Document& document, QWidget* parent = nullptr);
    void show(const Paperwork& paperwork);

private:
    QString takeHours(int row, int column, const QString& typed);
    QString takeName(const JobTask& task, const QString& typed);
    void forget();
    void follow();

    Document& document_;
    EditTable* table_;
    QLabel* problem_;
    QPushButton* back_;
    std::vector<JobTask> tasks_;
};

} // namespace siphonwright::paper
