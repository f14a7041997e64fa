#include "analysis/measured_brix.h"

#include "mix/mix.h"
#include "readings/readings.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Composition pear()
{
    Composition composition;  // USDA SR28, NDB 09252, rounded
    composition.per100g[Constituent::Water] = {84.0};
    composition.per100g[Constituent::Fructose] = {6.4};
    composition.per100g[Constituent::Glucose] = {2.6};
    composition.per100g[Constituent::Sucrose] = {0.7};
    composition.per100g[Constituent::Sorbitol] = {2.0};
    composition.per100g[Constituent::Fibre] = {3.1};
    composition.per100g[Constituent::Other] = {1.2};
    return composition;
}

TEST(MeasuredBrix, TheNewCompositionReadsWhatWasMeasured)
{
    for (const double brix : {8.0, 12.0, 14.0, 18.0, 30.0}) {
        const auto found = measuredComposition(pear(), brix);
        ASSERT_TRUE(found.has_value()) << brix;
        Mix mix;
        mix.add(*found, {100.0});
        EXPECT_NEAR(*readings(mix, {20.0})->refractometer_brix, brix, 1e-6);
        EXPECT_NEAR(found->per100g.total().value, pear().per100g.total().value, 1e-9);
        EXPECT_NEAR(found->per100g[Constituent::Fructose] / found->per100g[Constituent::Glucose], 6.4 / 2.6, 1e-9);
        EXPECT_EQ(found->per100g[Constituent::Fibre], pear().per100g[Constituent::Fibre]);
    }
}

TEST(MeasuredBrix, WhatCannotBeIsSaid)
{
    EXPECT_FALSE(measuredComposition(pear(), 1.0).has_value());  // the sorbitol alone reads more
    EXPECT_FALSE(measuredComposition(pear(), 94.9).has_value());
    Composition oil;
    oil.per100g[Constituent::Fat] = {100.0};
    EXPECT_FALSE(measuredComposition(oil, 10.0).has_value());
}

}  // namespace
}  // namespace firn
