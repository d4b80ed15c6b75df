#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"
#include "app/warming/result.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QMenu;
class QToolButton;

namespace siphonwright::warming {

class ChartView;
class PlanForm;

/// The warm-up: what comes out in one line, the chart, and beside it what it is computed for. Up to three
/// results can be kept and lie under the present one.
class WarmUpPanel : public QWidget {
    Q_OBJECT
public:
    WarmUpPanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    void setLook(drawing::Look look);
    QSize minimumSizeHint() const override { return {420, 84}; }

    ChartView& chart() { return *chart_; }
    bool hasResult() const;
    /// Keep the present result under those to come; nothing when there is none or three are kept.
    void keep();
    void drop(std::size_t index);
    void dropAll();
    const std::vector<Result>& kept() const { return kept_; }
    bool mayKeep() const;
    /// Write what is shown; sentences when it cannot be.
    QStringList exportTo(const QString& path, const PutFile& put = putFile) const;

Q_SIGNALS:
    void exportWanted();
    void stateChanged(); ///< what can be kept, dropped or exported

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void fitLine();
    void refresh();
    void refreshHeaters();
    void refreshKept();
    void sayMissing();
    void goToMissing();
    Id heater() const;

    Document& document_;
    Selection& selection_;
    QComboBox* heaters_;
    QLabel* line_;
    QLabel* drivers_;
    QToolButton* keep_;
    QToolButton* drop_;
    QToolButton* export_;
    QMenu* kept_menu_;
    ChartView* chart_;
    PlanForm* plan_;
    std::vector<Result> kept_;
    Missing missing_;
    QString result_;
};

} // namespace siphonwright::warming
