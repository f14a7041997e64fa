#include "recipe/scaling.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

Recipe recipe()
{
    Recipe result;
    result.components.front().rows = {{"sugar", {150.0, Unit::Gram}, {}, {}}, {"water", {1.5, Unit::Cup}, {}, {}},
        {"egg yolk", {3.0, Unit::Piece}, {}, {}}, {"glucose", {5.0, Unit::PercentOfMix}, {}, {}}};
    result.components.front().steps = {Step{StepKind::Strain, {}, {}, HeldBack{{80.0}}, {}, {}},
        Step{StepKind::Reduce, {}, {}, BoiledToMass{{300.0}}, {}, {}}, Step{StepKind::Reduce, {}, {}, BoiledToBrix{60.0}, {}, {}}};
    return result;
}

TEST(Scaling, MultipliesAmountsAndMassesOfStepsButNotShares)
{
    const Recipe twice = scaled(recipe(), 2.0);
    const auto& rows = twice.components.front().rows;
    EXPECT_EQ(rows[0].amount.value, 300.0);
    EXPECT_EQ(rows[1].amount.value, 3.0);
    EXPECT_EQ(rows[3].amount.value, 5.0);
    const auto& steps = twice.components.front().steps;
    EXPECT_EQ(std::get<HeldBack>(steps[0].loss).mass.value, 160.0);
    EXPECT_EQ(std::get<BoiledToMass>(steps[1].loss).mass.value, 600.0);
    EXPECT_EQ(std::get<BoiledToBrix>(steps[2].loss).brix, 60.0);
}

RC_GTEST_PROP(Scaling, ThereAndBackIsTheSame, ())
{
    const double factor = *rc::gen::inRange(1, 100000) / 997.0;
    const Recipe back = scaled(scaled(recipe(), factor), 1.0 / factor);
    for (std::size_t i = 0; i < recipe().components.front().rows.size(); ++i) {
        const double before = recipe().components.front().rows[i].amount.value;
        RC_ASSERT(std::abs(back.components.front().rows[i].amount.value - before) <= 1e-12 * before);
    }
}

}  // namespace
}  // namespace firn
