// The figures of what is compared, as derivations show them: of one side, of its readings, and of how it differs from the first.
#pragma once

#include "compare/comparison.h"
#include "ingredients/catalogue.h"
#include "teach/figure_set.h"

#include <array>

namespace firn::app {

/// Reckoned for a side when somebody asks about it, and kept until the comparison is another one.
class SideFigures {
public:
    void forget() { m_ofSides = {}; }

    /// Those of a side that hold this figure. What an instrument shows is reckoned as warm as its sample was, which other figures are not.
    SharedFigures having(const QString& figure, const Comparison& comparison, std::size_t side, const Catalogue& catalogue);

    /// A side less the first one, and what did it.
    SharedFigures differences(const Comparison& comparison, std::size_t side, const Catalogue& catalogue);

private:
    SharedFigures of(const Comparison& comparison, std::size_t side, const Catalogue& catalogue);

    std::array<SharedFigures, mostCompared> m_ofSides;
};

}  // namespace firn::app
