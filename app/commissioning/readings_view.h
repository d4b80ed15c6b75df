#pragma once

#include "app/commissioning/diagnoser.h"
#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableWidget;
class QTableWidgetItem;

namespace siphonwright::commissioning {

class ReadingChart;

/// One heater's readings as a table, a reading a column, each value with its mark; under it the verdicts in
/// words and the chart over what the drawing would give. The time of a new reading is now.
class ReadingsView : public QWidget {
    Q_OBJECT
public:
    ReadingsView(Document& document, QWidget* parent = nullptr);

    void setHeater(const Id& heater);
    void setLook(drawing::Look look);
    /// \param outcome null: none yet \param of_before the drawing has changed since
    void show(const Outcome* outcome, bool of_before);

private:
    void layOut();
    void refresh();
    void fillColumn(int column, const Reading& reading);
    void sayVerdicts();
    void addReading();
    void removeReading();
    void noteSwitching(bool on);
    void edited(const QTableWidgetItem* item);
    std::optional<std::size_t> chosen() const; ///< index in Sketch::readings
    const ReadingVerdict* verdictOn(std::size_t reading, Channel channel) const;

    Document& document_;
    Id heater_;
    std::vector<std::size_t> columns_; ///< index in Sketch::readings, by column
    std::optional<JudgedReadings> judged_;
    QString problem_;
    QTableWidget* table_;
    QLabel* switched_;
    QLabel* words_;
    QPushButton* remove_;
    ReadingChart* chart_;
};

} // namespace siphonwright::commissioning
