// Å. Melinder, Properties of Secondary Working Fluids (IIR 2010): freezing points of glycerol in water, % by mass and °C, rounded to 0.01. The CRC
// Handbook is about 0.3 K colder at 20 to 30 %; the model follows the colder one there.

#include "../solutions.h"
#include "freezing/freezing_curve.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

TEST(Melinder, Glycerol)
{
    struct Row {
        double mass_percent, temperature_c;
    };
    for (const Row& row : {Row{19.5, -4.93}, Row{24.5, -6.92}, Row{29.5, -9.22}, Row{34.5, -11.92}, Row{39.5, -15.05},
             Row{44.5, -18.65}, Row{49.5, -22.85}, Row{54.5, -27.97}, Row{59.5, -34.52}, Row{63, -40.38}}) {
        const double found_c = freezingCurve(solutionOf(Constituent::Glycerol, row.mass_percent)).freezingPoint->temperature.value;
        EXPECT_NEAR(found_c, row.temperature_c, 0.7) << row.mass_percent;
    }
}

}  // namespace
}  // namespace firn
