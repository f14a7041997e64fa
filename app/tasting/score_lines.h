// The scores of one tasting: a field for each of the recipe's scales, with the words for both ends beside it.
#pragma once

#include "document/document.h"

#include <QWidget>
#include <vector>

class QVBoxLayout;

namespace firn::app {

class InkLabel;
class KeptNumber;

class ScoreLines : public QWidget {
    Q_OBJECT

public:
    explicit ScoreLines(Document& document, QWidget* parent = nullptr);

    /// Of the tasting at this place in the recipe.
    void show(std::size_t tasting, bool isSomethingElse);

    /// Tab comes to the scores from this field of the same window.
    void followInTabOrder(QWidget* before);

private:
    void build();
    void showOthers();
    void orderTabs();

    Document& m_document;
    std::size_t m_tasting = 0;
    std::vector<TastingScale> m_scales;
    QVBoxLayout* m_layout;
    QWidget* m_body = nullptr;
    InkLabel* m_hint;
    InkLabel* m_others;
    std::vector<KeptNumber*> m_lines;
    std::vector<QWidget*> m_fields;
    QWidget* m_before = nullptr;  // in the order of Tab
};

}  // namespace firn::app
