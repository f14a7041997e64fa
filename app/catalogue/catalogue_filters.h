// What to look for: text, group, allergens; and how many were found.
#pragma once

#include "ingredients/catalogue_filter.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;

namespace firn::app {

class CatalogueFilters : public QWidget {
    Q_OBJECT

public:
    explicit CatalogueFilters(QWidget* parent = nullptr);

    CatalogueFilter filter() const;
    QLineEdit* search() { return m_search; }

    void offerGroups(const std::vector<std::string>& groups);
    void showCount(int found, int all);
    void clear();

signals:
    void changed();

private:
    QToolButton* allergenButton(const QString& name, const QString& spoken);
    void wordAllergens();

    QLineEdit* m_search;
    QComboBox* m_group;
    QToolButton* m_contains;
    QToolButton* m_freeOf;
    QLabel* m_count;
    QToolButton* m_clear;
};

}  // namespace firn::app
