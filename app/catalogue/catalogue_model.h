// The catalogue as a list: what passes the filter, and nothing else.
#pragma once

#include "document/pantry.h"
#include "ingredients/catalogue_filter.h"

#include <QAbstractListModel>

namespace firn::app {

class CatalogueModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        GroupRole = Qt::UserRole,  // QString
        IsOwnRole,                 // bool
        RibbonRole,                // Ribbon
        IdRole                     // QString
    };

    explicit CatalogueModel(Pantry& pantry, QObject* parent = nullptr);

    const CatalogueFilter& filter() const { return m_filter; }
    void setFilter(const CatalogueFilter& filter);

    /// None for a row that is not there. The ingredient lasts until the pantry changes.
    const Ingredient* ingredientAt(const QModelIndex& index) const;
    QModelIndex indexOf(const std::string& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    void look();

    Pantry& m_pantry;
    CatalogueFilter m_filter;
    std::vector<const Ingredient*> m_found;
};

}  // namespace firn::app
