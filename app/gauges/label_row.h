// Labels that stand in one row and must not touch.
#pragma once

#include <vector>

namespace firn::app {

/// A label's stretch of the row, pixels.
struct LabelSpan {
    double left = 0.0;
    double width = 0.0;
    double right() const { return left + width; }
};

/// Moves labels, given from left to right where they would like to stand, just so far that they keep `gap` apart and stay between
/// the ends. Where they do not all fit, they run over the right end.
void spreadApart(std::vector<LabelSpan>& labels, double leftEnd, double rightEnd, double gap);

}  // namespace firn::app
