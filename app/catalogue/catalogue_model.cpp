#include "catalogue/catalogue_model.h"

#include "bench/ingredient_model.h"
#include "bench/tool_tip.h"
#include "catalogue/ingredient_wording.h"
#include "gauges/ribbon.h"

#include <algorithm>

namespace firn::app {

CatalogueModel::CatalogueModel(Pantry& pantry, QObject* parent)
    : QAbstractListModel(parent)
    , m_pantry(pantry)
    , m_found(filtered(pantry.catalogue(), m_filter))
{
    connect(&pantry, &Pantry::changed, this, &CatalogueModel::look);
}

void CatalogueModel::setFilter(const CatalogueFilter& filter)
{
    if (filter == m_filter)
        return;
    m_filter = filter;
    look();
}

void CatalogueModel::look()
{
    beginResetModel();
    m_found = filtered(m_pantry.catalogue(), m_filter);
    endResetModel();
}

const Ingredient* CatalogueModel::ingredientAt(const QModelIndex& index) const
{
    const bool isThere = index.isValid() && index.row() < rowCount();
    return isThere ? m_found[std::size_t(index.row())] : nullptr;
}

QModelIndex CatalogueModel::indexOf(const std::string& id) const
{
    const auto found = std::ranges::find(m_found, id, &Ingredient::id);
    return found == m_found.end() ? QModelIndex() : index(int(found - m_found.begin()));
}

int CatalogueModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_found.size()); }

QVariant CatalogueModel::data(const QModelIndex& index, int role) const
{
    const Ingredient* ingredient = ingredientAt(index);
    if (!ingredient)
        return {};
    const bool isOwn = m_pantry.isOwn(ingredient->id);
    const QString name = fromCore(ingredient->name);
    switch (role) {
    case Qt::DisplayRole:
        return name;
    case Qt::ToolTipRole:
        return toolTipText(ribbonText(ribbonOf(ingredient->composition.per100g)));
    case Qt::AccessibleTextRole:
        return isOwn ? tr("%1, own, %2").arg(name, fromCore(ingredient->group))
                     : tr("%1, %2").arg(name, fromCore(ingredient->group));
    case GroupRole:
        return fromCore(ingredient->group);
    case IsOwnRole:
        return isOwn;
    case RibbonRole:
        return QVariant::fromValue(ribbonOf(ingredient->composition.per100g));
    case IdRole:
        return fromCore(ingredient->id);
    default:
        return {};
    }
}

}  // namespace firn::app
