// The recipes of the notebook that pass its filter, as a list.
#pragma once

#include "notebook/search.h"

#include <QAbstractListModel>

namespace firn::app {

class NotebookFolder;

class NotebookModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        FileRole = Qt::UserRole,  // QString
        FiguresRole,              // QString: class and sugar, or why the file cannot be read
        FreezingRole,             // QString
        DateRole,                 // QString
        RibbonRole,               // Ribbon, if there are figures
        IsFavouriteRole,          // bool
        IsReadableRole,           // bool
        IsOpenRole                // bool: it is on the bench
    };

    /// The folder must outlive the model.
    explicit NotebookModel(const NotebookFolder& folder, QObject* parent = nullptr);

    void setFilter(const NotebookFilter& filter);
    void setOrder(CardOrder order);
    void setOpenFile(const QString& file);
    const NotebookFilter& filter() const { return m_filter; }

    /// Takes the folder's cards as they are now.
    void readAnew();

    /// None for a row that is not there. The card lasts until the folder changes.
    const RecipeCard* cardAt(const QModelIndex& index) const;
    QModelIndex indexOf(const QString& file) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    void look();

    const NotebookFolder& m_folder;
    NotebookFilter m_filter;
    CardOrder m_order = CardOrder::Title;
    QString m_openFile;
    std::vector<std::size_t> m_ordered;  // all cards
    std::vector<std::size_t> m_found;
};

}  // namespace firn::app
