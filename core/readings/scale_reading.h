// What an instrument with a scale of its own shows, and how far it may be off.
#pragma once

#include "units/sentence.h"

#include <cmath>
#include <optional>
#include <vector>

namespace firn {

/// One reason why a reading may be off: one standard deviation, in the scale's own units.
struct ErrorPart {
    Sentence reason;
    double sd = 0.0;
};

/// All reasons together, as independent of one another.
inline double combined(const std::vector<ErrorPart>& parts)
{
    double sum = 0.0;
    for (const ErrorPart& part : parts)
        sum += part.sd * part.sd;
    return std::sqrt(sum);
}

enum class OnScale { Yes, Below, Above };

struct ScaleReading {
    OnScale onScale = OnScale::Yes;
    std::optional<double> value;    // none off the scale
    std::vector<ErrorPart> errors;  // the largest need not be first
};

}  // namespace firn
