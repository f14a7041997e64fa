// A batch and what rounding did to it, in words.
#pragma once

#include "analysis/batch_size.h"

#include <QString>

namespace firn::app {

/// "× 1.84: 1,870 g, 1.70 L"
QString batchText(const Batch& batch);

/// What rounding did to sugars and freezing point, as a sentence.
QString roundingText(const RoundingEffect& effect, const Recipe& recipe, std::size_t component);

}  // namespace firn::app
