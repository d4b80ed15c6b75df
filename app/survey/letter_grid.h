#pragma once

#include "app/document/document.h"

#include "core/sketch/survey_letters.h"

#include <QWidget>

#include <functional>
#include <vector>

class QGridLayout;

namespace siphonwright::panels {
class QuantityEdit;
}

namespace siphonwright::survey {

/// A row for each letter of the survey: what was measured, typed with its unit, and what is drawn in the same
/// terms.
class LetterGrid : public QWidget {
    Q_OBJECT
public:
    explicit LetterGrid(Document& document, QWidget* parent = nullptr);

private:
    void addHeads(QGridLayout& grid);
    void addPlace(QGridLayout& grid, int row, const SurveyLetter& letter);
    void addLength(QGridLayout& grid, int row, const SurveyLetter& letter);
    void addSlope(QGridLayout& grid, int row, const SurveyLetter& letter);
    void addName(QGridLayout& grid, int row, const SurveyLetter& letter);
    panels::QuantityEdit* addEdit(const SurveyLetter& letter, const QString& column, Unit unit);
    void change(const SurveyLetter& letter, const std::function<void(Survey&)>& edit);
    void refresh();

    Document& document_;
    std::vector<std::function<void()>> refreshers_;
};

/// Of a letter's place or length, in words: "312 mm, 60 mm" of height and station; with "not measured" where
/// it was not.
QString drawnWords(const Sketch& sketch, const SurveyLetter& letter);

} // namespace siphonwright::survey
