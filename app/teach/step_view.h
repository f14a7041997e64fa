// One step of a derivation: the formula, what its symbols mean, the same with this recipe's values, the result, and where it is from.
#pragma once

#include "teach/step_content.h"

#include <QWidget>

class QGridLayout;
class QVBoxLayout;

namespace firn::app {

class StepView : public QWidget {
    Q_OBJECT

public:
    struct Place {
        int number = 1;                 // counted from 1
        bool isSourceRepeated = false;  // the step before has the same one
        bool isFolded = true;
        bool hasLinks = true;  // to the figures that its symbols are
    };

    StepView(const WorkingStep& step, const Place& place, QWidget* parent = nullptr);

signals:
    void figureChosen(const QString& figure);
    void foldingChosen(bool isFolded);
    void sourceChosen(firn::Source source);

private:
    void addSymbols(const std::vector<SymbolLine>& symbols);
    void addTerms(const std::vector<TermLine>& terms);
    void addSource(const QString& text, Source source);
    QWidget* meaning(const QString& text, const std::string& figure);
    void addRow(QGridLayout* table, QWidget* symbol, QWidget* value, QWidget* what);

    Place m_place;
    QVBoxLayout* m_lines;
};

/// A label of plain text that wraps.
QWidget* plainLabel(const QString& text, bool isQuiet = false);

}  // namespace firn::app
