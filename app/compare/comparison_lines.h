// A comparison as lines of text: what the table shows, what is copied, and what is printed.
#pragma once

#include "compare/comparison.h"

#include <QHash>
#include <QStringList>
#include <vector>

namespace firn::app {

struct ComparisonLine {
    enum Kind { Section, Cells, Sentence };

    Kind kind = Cells;
    QString label;                   // a section's name, a row's name, or the sentence
    QStringList cells = {};          // of each side, the value and then, but for the first side, its change
    std::vector<bool> isOther = {};  // for each cell, whether it differs from the first side's
    QStringList figures = {};        // for each cell, the key of its figure in the workings of its side, or of the differences
    friend bool operator==(const ComparisonLine&, const ComparisonLine&) = default;
};

/// Whose cell this is.
inline std::size_t sideOfCell(std::size_t cell) { return (cell + 1) / 2; }
inline bool isChangeCell(std::size_t cell) { return cell > 0 && cell % 2 == 0; }

/// Label, first side, then value and change of each further side.
QStringList columnNames(const Comparison& comparison);

/// Ingredients, what else differs, texture, figures and readings.
std::vector<ComparisonLine> linesOf(const Comparison& comparison);

/// "100 g", "a portion of 80 g"
QString basisText(const Basis& basis);

/// "+2.1", "−0.13", or "0.0" without a sign.
QString changeText(double change, int decimals, std::string_view unit);

/// A unit of core as it is shown: °F in place of °C where the person reads those.
QString shownUnit(std::string_view unit);

/// A side's figures as the lines show them, without their bands, by their keys; and those of its differences from the first side.
QHash<QString, QString> shownFigures(const Comparison& comparison, std::size_t side);
QHash<QString, QString> shownDifferences(const Comparison& comparison, std::size_t side);

/// All of it with tabs between the cells, for a spreadsheet: fairness, table, and what did it.
QString tabbedText(const Comparison& comparison);

}  // namespace firn::app
