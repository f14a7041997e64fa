// Serving windows that the texture model gave in November 2026: the temperatures between which a mix is neither softer nor harder than its process
// wants. They rest on edges of firmness that are judgement; no source prints them.

#include "texture/texture.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

Texture ofSucrose(double percent, Process process)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {percent};
    mix.amounts[Constituent::Water] = {100.0 - percent};
    return texture(mix, freezingCurve(mix), {process, 0.0, {-12.0}, {-18.0}});
}

constexpr double shown_k = 0.1;

TEST(ServingWindow, OfSorbet)
{
    const Texture sorbet = ofSucrose(35.5, Process::Churned);
    ASSERT_TRUE(sorbet.servingWindow.has_value());
    EXPECT_NEAR(sorbet.servingWindow->warmest.value, -10.4, shown_k);
    EXPECT_NEAR(sorbet.servingWindow->coldest.value, -16.4, shown_k);
}

}  // namespace
}  // namespace firn
