// The rows of several recipes beside each other, with what differs from the first.
#pragma once

#include "compare/matching.h"

#include <string_view>

namespace firn {

/// How a row differs from the first recipe's, the gravest difference alone.
enum class RowDifference {
    Same,
    Wording,  // the same mass, written or noted in another way
    Less,
    More,
    Reading,     // another °Bx was measured in this fruit
    Ingredient,  // the same name stands for something else: the cook's own ingredient, or a linked recipe, was changed
    Added,
    LeftOut
};
std::string_view nameOf(RowDifference difference);
/// One character that says it by its shape; empty for the same.
std::string_view markOf(RowDifference difference);

/// A mass of the comparison in the digits that a kitchen scale can tell.
Figure figureOf(Grams mass);

struct ComparedCell {
    bool isThere = false;
    std::string written;  // "1 1/2 cups"; empty where there is no such row
    Grams mass;           // in the basis that is compared
    RowDifference difference = RowDifference::Same;
    std::optional<Sentence> problem;  // why the row counts for nothing
    std::string figure = {};          // key of its mass in the batch: "rows[3].grams"
};

struct ComparedRow {
    std::string name;  // of the ingredient, as the first recipe that has it writes it
    std::vector<ComparedCell> cells;
};

struct ComparedComponent {
    std::string name;
    std::vector<ComparedRow> rows;
};

/// How many times the first recipe the other one is made in: the ratio that most of their common rows have, if at least two have it and it is
/// not 1 for as many.
double batchFactor(std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching, std::size_t side);

/// Two amounts, of which the first is in another batch size.
bool isSameAmount(const Amount& first, const Amount& other, double factor);
bool isSameMass(Grams first, Grams other, double factor);

/// `perBasis` is what masses of each recipe are multiplied by, `batchFactors` how many times the first one's amounts each is made in.
std::vector<ComparedComponent> comparedRows(std::span<const WeighedRecipe> recipes, std::span<const MatchedComponent> matching,
    std::span<const double> perBasis, std::span<const double> batchFactors);

}  // namespace firn
