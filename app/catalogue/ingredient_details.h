// All that the catalogue knows of one ingredient.
#pragma once

#include "ingredients/ingredient.h"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace firn::app {

class CompositionTable;
class RibbonBar;

class IngredientDetails : public QWidget {
    Q_OBJECT

public:
    explicit IngredientDetails(QWidget* parent = nullptr);

    /// Nothing to show without an ingredient; `hint` then says what to do.
    void show(const Ingredient* ingredient, bool isOwn, const QString& hint);

private:
    struct Fact {
        QLabel* caption;
        QLabel* text;
    };
    Fact addFact(const char* name, const QString& title);
    static void setFact(const Fact& fact, const QString& text);

    QLabel* m_name;
    QLabel* m_origin;
    QLabel* m_hint;
    QWidget* m_whole;
    RibbonBar* m_ribbon;
    CompositionTable* m_table;
    QGridLayout* m_facts;
    Fact m_synonyms;
    Fact m_allergens;
    Fact m_hazards;
    Fact m_measures;
    Fact m_density;
    Fact m_spread;
    Fact m_energy;
    Fact m_source;
};

}  // namespace firn::app
