// The edits that come of measuring: like those of edits.h, each is one named step of the undo history, or none where nothing would change.
#pragma once

#include "correction/correction.h"

#include <cstddef>
#include <vector>

namespace firn::app {

class Document;

/// Saves readings that were made together, behind those of before.
void keepReadings(Document& document, const std::vector<ReadingRecord>& readings);

/// Deletes a reading, or a correction of a batch, by its number in the recipe.
void removeReading(Document& document, std::size_t reading);
void removeBatchCorrection(Document& document, std::size_t correction);

/// Changes the rows to what they must have been when the mix was made.
void applyCause(Document& document, std::size_t component, const Cause& cause);

/// What a choice adds, as it is weighed: to a gram, and to a tenth below ten.
std::vector<Row> asWeighed(const CorrectionChoice& choice);

/// Changes the component's rows by what a choice adds.
void addToRecipe(Document& document, std::size_t component, const CorrectionChoice& choice);

/// Puts on record what a choice adds to this batch, and the readings that led to it. The rows stay as they are.
void addToBatch(Document& document, std::size_t component, const CorrectionChoice& choice, MassFraction sugarsBefore,
    const std::vector<ReadingRecord>& readings, const std::string& date);

}  // namespace firn::app
