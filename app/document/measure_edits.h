// The edits that come of measuring: like those of edits.h, each is one named step of the undo history, or none where nothing would change.
#pragma once

#include "correction/correction.h"

#include <cstddef>
#include <vector>

namespace firn::app {

class Document;

/// Keeps readings that were made together, behind those of before.
void keepReadings(Document& document, const std::vector<ReadingRecord>& readings);

/// Forgets a reading by its number in the recipe.
void removeReading(Document& document, std::size_t reading);

/// Puts a row the way it must have been when the mix was made.
void putRight(Document& document, std::size_t component, const Cause& cause);

/// What a choice adds, as it is weighed: to a gram, and to a tenth below ten.
std::vector<Row> asWeighed(const CorrectionChoice& choice);

/// Adds it to the component.
void addChoice(Document& document, std::size_t component, const CorrectionChoice& choice);

}  // namespace firn::app
