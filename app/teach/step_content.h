// What one step of a derivation has to show, on the screen and on paper alike.
#pragma once

#include "derivation/working.h"

#include <QString>
#include <QStringList>

namespace firn::app {

/// What a symbol stands for.
struct SymbolLine {
    Symbol symbol;
    QString value;  // "22.18 g"; empty for what stands for any term of a sum, and for a table
    QString meaning;
    std::string figure;  // its key, where it is a figure that can be opened
};

/// One term of a sum.
struct TermLine {
    QString label;
    Formula withValues;
    QString source;      // empty where it is the step's
    std::string figure;  // the first figure that the term is made of, if any
};

struct StepContent {
    Formula formula;
    std::vector<Formula> values;      // the same with this recipe's values put in, and the result, in one or two equations
    std::vector<SymbolLine> symbols;  // the result first; none of those that the terms explain
    std::vector<TermLine> terms;
    QStringList notes;  // how it was solved, where it holds, how uncertain it is
    QString source;
};

StepContent contentOf(const WorkingStep& step);

/// Whether a step is from the same source as the one before it, so that it need not be said again.
bool isSourceRepeated(const std::vector<WorkingStep>& steps, std::size_t index);

}  // namespace firn::app
