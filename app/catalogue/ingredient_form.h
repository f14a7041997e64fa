// An own ingredient to be typed. Nothing is kept before the person says so and nothing is wrong with it.
#pragma once

#include "bench/number_field.h"
#include "catalogue/check_grid.h"
#include "ingredients/own_ingredient.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QScrollArea;

namespace firn::app {

class ConstituentsEditor;
class InkLabel;
class MeasuresEditor;
class NumberLine;

class IngredientForm : public QWidget {
    Q_OBJECT

public:
    explicit IngredientForm(QWidget* parent = nullptr);

    /// Puts an ingredient into the form; with `isTyped` it counts as changed from the start, as one that came back does.
    void edit(const Ingredient& ingredient, const QString& title, bool isTyped = false);
    void offerGroups(const std::vector<std::string>& groups);

    Ingredient ingredient() const;
    bool isChanged() const { return m_isChanged; }

    /// Says all that is wrong at once, each beside its field. False if anything is.
    bool check();
    void sayNameFault(const QString& fault);
    /// Says why it could not be kept.
    void sayProblem(const QString& problem);

signals:
    void keepWanted();
    void leaveWanted();

private:
    NumberLine* addNumber(const char* name, const QString& title, NumberField::Reader reader, const QString& unit);
    QLineEdit* addText(const char* name, const QString& title);
    void addRow(const QString& title, QWidget* field);
    void addNames();
    void addComposition();
    void addRest();
    void follow();
    void showEstimatedDensity();

    Ingredient m_beginning;
    bool m_isChanged = false;
    QGridLayout* m_fields;
    QScrollArea* m_area;
    QLabel* m_title;
    QLineEdit* m_name;
    InkLabel* m_nameFault;
    QLineEdit* m_synonyms;
    QComboBox* m_group;
    ConstituentsEditor* m_constituents;
    NumberLine* m_milkFat;
    NumberLine* m_milkSolidsNotFat;
    NumberLine* m_yolkSolids;
    AllergenGrid* m_allergens;
    HazardGrid* m_hazards;
    MeasuresEditor* m_measures;
    NumberLine* m_density;
    QLineEdit* m_densitySource;
    NumberLine* m_waterSpread;
    NumberLine* m_sugarsSpread;
    QCheckBox* m_isEstimate;
    NumberLine* m_energy;
    QLineEdit* m_source;
    InkLabel* m_problem;
};

}  // namespace firn::app
