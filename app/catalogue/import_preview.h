// What a file of ingredients would bring, before any of it is kept.
#pragma once

#include "document/pantry.h"
#include "exchange/imported_ingredient.h"

#include <QWidget>

class QLabel;
class QListWidget;
class QPushButton;

namespace firn::app {

class IngredientDetails;

class ImportPreview : public QWidget {
    Q_OBJECT

public:
    explicit ImportPreview(const Pantry& pantry, QWidget* parent = nullptr);

    void show(const QString& fileName, std::vector<ImportedIngredient> imported);

    /// Those that are ticked. One that takes the place of an own ingredient has that one's id, the others have none.
    std::vector<Ingredient> chosen() const;

signals:
    void keepWanted();
    void leaveWanted();

private:
    void showOne(int row);
    void countChosen();
    QString accountOf(const ImportedIngredient& imported) const;

    const Pantry& m_pantry;
    std::vector<ImportedIngredient> m_imported;
    QLabel* m_summary;
    QListWidget* m_list;
    IngredientDetails* m_details;
    QLabel* m_account;
    QPushButton* m_keep;
};

}  // namespace firn::app
