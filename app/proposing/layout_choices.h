#pragma once

#include "app/document/document.h"

#include "core/proposing/propose.h"

#include <QWidget>

#include <optional>
#include <vector>

class QComboBox;
class QFormLayout;
class QGridLayout;
class QLabel;
class QPushButton;
class QToolButton;

namespace siphonwright::proposing {

/// What layouts are to be proposed from: the heater, where it may hang, hoses in stock, and what comes first.
class LayoutChoices : public QWidget {
    Q_OBJECT
public:
    explicit LayoutChoices(Document& document, QWidget* parent = nullptr);

    /// For the sketch as it is now. Nothing where it cannot be asked for yet; lacking() says what lacks.
    std::optional<ProposeOptions> options() const;
    QString lacking() const;
    /// Outline of where the heater may hang, in the elevation; empty: it stays.
    std::vector<Vec2> outline() const;
    /// The area that was asked for by areaWanted().
    void setArea(Vec2 least, Vec2 most);

Q_SIGNALS:
    void changed();
    void areaWanted();

private:
    enum class Place { stays, under, area };
    struct Bore {
        double mm = 0;
        bool taken = false;
        bool chosen = false; ///< by somebody: then another drawing does not change it
        QToolButton* box = nullptr;
    };
    Id heater() const;
    Place place() const;
    HangingSpace space() const; ///< where it does not stay
    void placeChosen();
    void refresh();
    void refreshHeaters();
    void refreshBores();
    void showArea();

    Document& document_;
    QFormLayout* form_;
    QComboBox* heater_;
    QComboBox* place_;
    QWidget* area_row_;
    QLabel* area_text_;
    QPushButton* draw_;
    QGridLayout* bore_grid_;
    QComboBox* rank_;
    std::vector<Bore> bores_;
    UnitSystem bores_shown_in_ = UnitSystem::metric;
    std::optional<std::pair<Vec2, Vec2>> area_;
};

} // namespace siphonwright::proposing
