// Water activity over ice. D. M. Murphy and T. Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539, and, independent of it for the ice,
// IAPWS R14-08(2011), Pressure along the melting and sublimation curves: p(230 K) = 8.947352740189151 Pa is its own check value. Pressures of
// supercooled water in Pa, 4 decimals, from Murphy and Koop worked out outside this project.

#include "solution/ice_equilibrium.h"

#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

double iapwsIcePressure_Pa(double t_k)
{
    const double theta = t_k / 273.16;
    const double sum = -21.2144006 * std::pow(theta, 0.00333333333) + 27.3203819 * std::pow(theta, 1.20666667)
                       - 6.10598130 * std::pow(theta, 1.70333333);
    return 611.657 * std::exp(sum / theta);
}

TEST(IceEquilibrium, IapwsFormulaIsTypedRight) { EXPECT_NEAR(iapwsIcePressure_Pa(230.0), 8.947352740189151, 1e-12); }

TEST(IceEquilibrium, AgreesWithIapwsIce)
{
    struct Row {
        double temperature_c, liquid_Pa;
    };
    const double atZero = iapwsIcePressure_Pa(273.15) / 611.2127;
    for (const Row& row : {Row{-1, 568.1974}, Row{-2, 527.8895}, Row{-5, 421.7606}, Row{-10, 286.4530}, Row{-15, 191.3101},
             Row{-20, 125.5042}, Row{-30, 50.9356}, Row{-40, 18.9121}})
        EXPECT_NEAR(std::exp(lnWaterActivityOverIce({row.temperature_c})),
            iapwsIcePressure_Pa(kelvin({row.temperature_c})) / row.liquid_Pa / atZero, 0.0004)
            << row.temperature_c;
}

TEST(IceEquilibrium, PrintedActivities)
{
    EXPECT_NEAR(std::exp(lnWaterActivityOverIce({-10})), 0.9074, 0.00005);
    EXPECT_NEAR(std::exp(lnWaterActivityOverIce({-20})), 0.8228, 0.00005);
    EXPECT_NEAR(std::exp(lnWaterActivityOverIce({-30})), 0.7464, 0.00005);
}

TEST(IceEquilibrium, InverseIsGoodToAHundredThousandthOfAKelvin)
{
    for (double t_c = 0.0; t_c >= -60.0; t_c -= 0.037) {
        const double ln = lnWaterActivityOverIce({t_c});
        EXPECT_NEAR(equilibriumTemperature({ln, 0.0}).value, t_c, 1e-5);
        EXPECT_NEAR(equilibriumTemperature({ln - 7.0 / kelvin({t_c}), 7.0}).value, t_c, 1e-5);
    }
}

}  // namespace
}  // namespace firn
