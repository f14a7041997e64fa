#include "gauges/label_row.h"

#include <algorithm>

namespace firn::app {

void spreadApart(std::vector<LabelSpan>& labels, double leftEnd, double rightEnd, double gap)
{
    // Neighbours that touch share the way that they have to give; a few rounds settle it, as labels are few.
    for (std::size_t rounds = labels.size(); rounds > 0; --rounds) {
        for (std::size_t i = 0; i + 1 < labels.size(); ++i) {
            const double overlap = labels[i].right() + gap - labels[i + 1].left;
            if (overlap > 0.0) {
                labels[i].left -= 0.5 * overlap;
                labels[i + 1].left += 0.5 * overlap;
            }
        }
    }
    double limit = rightEnd;
    for (auto label = labels.rbegin(); label != labels.rend(); ++label) {
        label->left = std::min(label->left, limit - label->width);
        limit = label->left - gap;
    }
    limit = leftEnd;
    for (LabelSpan& label : labels) {
        label.left = std::max(label.left, limit);
        limit = label.right() + gap;
    }
}

}  // namespace firn::app
