// The scales on which tasters give scores: adding suggested ones or own ones, and changing names, numbers and words of their ends in place.
#pragma once

#include "document/document.h"

#include <QWidget>

class QMenu;
class QPushButton;
class QTableWidget;

namespace firn::app {

class InkLabel;

class ScalesView : public QWidget {
    Q_OBJECT

public:
    explicit ScalesView(Document& document, QWidget* parent = nullptr);

    void show();

private:
    void fill();
    void fillSuggestions();
    void add(const TastingScale& scale);
    void addOwn();
    void take(int row);
    void remove();
    Result<TastingScale> typedAt(int row) const;

    Document& m_document;
    std::vector<TastingScale> m_shown;
    QTableWidget* m_table;
    QMenu* m_suggestions;
    QPushButton* m_remove;
    InkLabel* m_problem;
};

}  // namespace firn::app
