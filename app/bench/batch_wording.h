// A batch and what rounding did to it, in words.
#pragma once

#include "analysis/batch_size.h"

#include <QString>

namespace firn::app {

/// "× 1.84: 1,870 g, 1.70 L"
QString batchText(const Batch& batch);

/// What rounding did to sugars and freezing point, as a sentence, and how many rows are off.
QString roundingText(const Batch& batch, const Recipe& recipe, std::size_t component);

/// "granita: sugar"; the ingredient alone where there is one component.
QString nameText(const BatchRow& row, const Recipe& recipe);

/// "1 1/2 cups", "0,5 g", with the mark of the locale and no others.
QString writtenAmount(const Amount& amount);

/// "exact", "+0.8 %", or "+4.2 %: off by more than 2 %".
QString deviationText(const RoundedAmount& amount);

}  // namespace firn::app
