// A comparison as lines of text: what the table shows, what is copied, and what is printed.
#pragma once

#include "compare/comparison.h"

#include <QStringList>
#include <vector>

namespace firn::app {

struct ComparisonLine {
    enum Kind { Section, Cells, Sentence };

    Kind kind = Cells;
    QString label;                   // a section's name, a row's name, or the sentence
    QStringList cells = {};          // of each side, the value and then, but for the first side, its change
    std::vector<bool> isOther = {};  // for each cell, whether it differs from the first side's
    friend bool operator==(const ComparisonLine&, const ComparisonLine&) = default;
};

/// Label, first side, then value and change of each further side.
QStringList columnNames(const Comparison& comparison);

/// Ingredients, what else differs, texture, figures and readings.
std::vector<ComparisonLine> linesOf(const Comparison& comparison);

/// "100 g", "a portion of 80 g"
QString basisText(const Basis& basis);

/// "+2.1", "−0.13", or "0.0" without a sign.
QString changeText(double change, int decimals);

/// All of it with tabs between the cells, for a spreadsheet: fairness, table, and what did it.
QString tabbedText(const Comparison& comparison);

}  // namespace firn::app
