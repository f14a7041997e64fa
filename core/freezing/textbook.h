// The textbook method: sucrose equivalents in the water, a table of freezing-point depressions, and a term for milk salts.
// Source: H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6; table after A. Leighton, J. Dairy Sci. 10 (1927) 300.
#pragma once

#include "derivation/working.h"
#include "mix/mix.h"

#include <optional>
#include <vector>

namespace firn {

/// The book's molar mass of sucrose.
inline constexpr double sucroseOfTextbook_g_mol = 342.3;

/// What the method starts from, grams.
struct TextbookMix {
    Grams sucroseEquivalents;
    Grams milkAndWheySolidsNotFat;
    Grams water;
};

/// The method's printed steps.
struct TextbookFreezing {
    double sucroseEquivalents_per100gWater = 0.0;
    KelvinDifference depressionOfSugars;
    KelvinDifference depressionOfSalts;
    Celsius freezingPoint;
    bool isBeyondTable =
        false;  // above 180 g per 100 g water, where the last step of the table goes on, as in the book's own example
};

/// Strongest solution, in g per 100 g water, for which the last step of the table is continued: the book's own example goes to 184.83.
inline constexpr double mostBeyondTable_g = 200.0;

/// Freezing point when a share of the water is frozen already. None without water, or for a solution stronger than that.
std::optional<TextbookFreezing> textbookFreezing(
    const TextbookMix& mix, double shareOfWaterFrozen = 0.0, Working* working = nullptr);

/// A printed row of the table of depressions.
struct DepressionRow {
    double sucrose_per100gWater;
    KelvinDifference depression;
};

/// The rows between which a strength is looked up, with one more on either side where there is one.
std::vector<DepressionRow> depressionRowsAround(double sucrose_per100gWater);

/// Grams of sucrose that a gram of this counts as; 0 for what does not dissolve.
double sucroseEquivalentOf(Constituent constituent);

/// The mix in the terms of the method: every dissolved thing by its factor to sucrose.
TextbookMix textbookMix(const Mix& mix, Working* working = nullptr);

}  // namespace firn
