// One tasting: when, what, who, how cold, scores, words, a photo. Every field is an edit of the recipe.
#pragma once

#include "document/document.h"

#include <QWidget>

class QComboBox;
class QDateEdit;
class QPushButton;

namespace firn::app {

class FieldGrid;
class InkLabel;
class KeptNumber;
class NumberField;
class PhotoView;
class Questions;
class ScoreLines;
class TypedLine;
class TypedParagraph;

class TastingForm : public QWidget {
    Q_OBJECT

public:
    /// Document and questions must outlive the form.
    TastingForm(Document& document, Questions& questions, QWidget* parent = nullptr);

    /// The tasting at this place in the recipe, which must be there.
    void show(std::size_t place);

    /// Another one will come next, be it at the same place.
    void forget() { m_isShown = false; }

    void takeFocus();

signals:
    void measuringWanted();

private:
    const Tasting& tasting() const { return m_document.recipe().tastings.at(m_place); }
    KeptNumber* addNumber(FieldGrid& grid, const QString& label, NumberField* field, std::optional<double> Tasting::*member);
    void addText(FieldGrid& grid, const QString& label, TypedLine* field, std::string Tasting::*member);
    void buildWhat(FieldGrid& grid);
    void buildPhoto(FieldGrid& grid);
    void showDay();
    void showTasted();
    void showReadings();
    void showPhoto();
    void takeDay();
    void takeTasted();
    void choosePhoto();
    void keepBench();

    Document& m_document;
    Questions& m_questions;
    std::size_t m_place = 0;
    bool m_isShown = false;
    QDateEdit* m_day;
    QComboBox* m_tasted;
    QWidget* m_loose;  // what was tasted is no version yet
    TypedLine* m_tasters;
    KeptNumber* m_served = nullptr;
    KeptNumber* m_frozen = nullptr;
    ScoreLines* m_scores;
    TypedParagraph* m_words;
    TypedLine* m_next;
    InkLabel* m_readings;
    QPushButton* m_measure;  // what is on the bench
    InkLabel* m_photoFile;
    QPushButton* m_removePhoto;
    PhotoView* m_photo;
};

}  // namespace firn::app
