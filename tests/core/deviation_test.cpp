#include "units/deviation.h"

#include "compare/compared_figures.h"
#include "units/number.h"

#include <cmath>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

TEST(Deviation, IsNeverRoundedAway)
{
    EXPECT_DOUBLE_EQ(shownDeviation(1, 0.13), 0.1);
    EXPECT_DOUBLE_EQ(shownDeviation(1, 0.03), 0.1);
    EXPECT_DOUBLE_EQ(shownDeviation(0, 0.2), 1.0);
    EXPECT_DOUBLE_EQ(shownDeviation(2, 1e-9), 0.01);
    EXPECT_DOUBLE_EQ(shownDeviation(1, 2.26), 2.3);
    EXPECT_EQ(shownDeviation(1, 0.0), 0.0) << "what is exact has none";
}

RC_GTEST_PROP(Deviation, OfAnySizeShowsAndIsNotMadeMuchLarger, ())
{
    const int decimals = *rc::gen::inRange(0, 5);
    const double deviation = *rc::gen::inRange(1, 1000000) / 1e5;
    const double shown = shownDeviation(decimals, deviation), lastDigit = std::pow(10.0, -decimals);
    RC_ASSERT(roundedTo(decimals, shown) >= 0.999 * lastDigit);
    RC_ASSERT(std::abs(shown - deviation) <= lastDigit);
}

TEST(Deviation, StandsBesideAComparedFigureHoweverSmall)
{
    ComparedFigure figure;
    figure.decimals = 1;
    figure.values = {30.4, 30.4};
    figure.uncertainties = {0.03, 0.0};
    EXPECT_DOUBLE_EQ(*shownUncertainty(figure, 0), 0.1);
    EXPECT_FALSE(shownUncertainty(figure, 1));
}

}  // namespace
}  // namespace firn
