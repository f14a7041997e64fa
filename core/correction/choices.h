// What can be added to a mix to bring it to a target, and what each addition does.
#pragma once

#include "analysis/preparation.h"
#include "correction/correction.h"

#include <functional>

namespace firn {

MixFigures figuresOf(const Mix& mix, const TextureInput& input);

/// What the choices start from, and what is wanted of them.
struct Wanted {
    StrengthTarget target;
    MixFigures intended;
    TextureInput texture;
    MassFraction nowSugars_sd;
    std::function<Mix(const std::vector<Row>&)> mixWith;  // with these rows added; empty where they go in as they are
};

struct Choices {
    std::vector<CorrectionChoice> ranked;  // none larger than the mix, and none that makes another kind of dessert of it
    std::vector<Sentence> leftOut;
};

/// Sugar, dextrose, a sugar syrup of 65 °Bx, water, milk for a mix with milk, and what the component already holds, as far as it moves `now` to
/// the target.
Choices choicesFor(const Component& component, const PreparedComponent& prepared, const Catalogue& catalogue, const Mix& now,
    const Wanted& wanted);

}  // namespace firn
