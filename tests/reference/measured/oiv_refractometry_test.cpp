// OIV-MA-AS2-02 (Oeno 21/2004), Refractometry of musts, as reprinted in the French decree of 14 September 2011 (JORF 24 September 2011), Annex IV.
// Table I: correction, °Bx, to add to a reading at another temperature than 20 °C, 2 decimals (rows of 5 to 17 °C). Table II: refractive index of
// sucrose solutions at 20 °C (ICUMSA 1974), 5 decimals, and two rows of natural musts: index, density at 20 °C, sugar in g/L and g/kg.

#include "../solutions.h"
#include "readings/measurement.h"
#include "readings/readings.h"
#include "solution/refraction.h"

#include <gtest/gtest.h>

namespace firn {
namespace {

struct IndexRow {
    double sucrose_percent, index;
};

constexpr IndexRow indices[] = {{10.0, 1.34782}, {11.0, 1.34937}, {12.0, 1.35093}, {13.0, 1.35250}, {14.0, 1.35408},
    {15.0, 1.35568}, {16.0, 1.35729}, {17.0, 1.35891}, {18.0, 1.36054}, {19.0, 1.36219}, {20.0, 1.36384}, {21.0, 1.36551},
    {22.0, 1.36720}, {23.0, 1.36889}, {24.0, 1.37060}, {25.0, 1.37233}, {26.0, 1.37407}, {27.0, 1.37582}, {28.0, 1.37758},
    {29.0, 1.37936}, {30.0, 1.38115}};

struct CorrectionRow {
    double temperature_c, reading_brix, correction_brix;
};

constexpr CorrectionRow corrections[] = {{5, 10, -0.82}, {5, 15, -0.87}, {5, 20, -0.92}, {5, 25, -0.95}, {5, 30, -0.99},
    {6, 10, -0.80}, {6, 15, -0.82}, {6, 20, -0.87}, {6, 25, -0.90}, {6, 30, -0.94}, {7, 10, -0.74}, {7, 15, -0.78}, {7, 20, -0.82},
    {7, 25, -0.84}, {7, 30, -0.88}, {8, 10, -0.69}, {8, 15, -0.73}, {8, 20, -0.76}, {8, 25, -0.79}, {8, 30, -0.82}, {9, 10, -0.64},
    {9, 15, -0.67}, {9, 20, -0.71}, {9, 25, -0.73}, {9, 30, -0.75}, {10, 10, -0.59}, {10, 15, -0.62}, {10, 20, -0.65},
    {10, 25, -0.67}, {10, 30, -0.69}, {10, 35, -0.71}, {10, 40, -0.72}, {10, 45, -0.73}, {10, 50, -0.74}, {10, 55, -0.75},
    {10, 60, -0.75}, {10, 65, -0.75}, {10, 70, -0.75}, {10, 75, -0.75}, {11, 10, -0.54}, {11, 15, -0.57}, {11, 20, -0.59},
    {11, 25, -0.61}, {11, 30, -0.63}, {11, 35, -0.64}, {11, 40, -0.65}, {11, 45, -0.66}, {11, 50, -0.67}, {11, 55, -0.68},
    {11, 60, -0.68}, {11, 65, -0.68}, {11, 70, -0.68}, {11, 75, -0.67}, {12, 10, -0.49}, {12, 15, -0.51}, {12, 20, -0.53},
    {12, 25, -0.55}, {12, 30, -0.56}, {12, 35, -0.57}, {12, 40, -0.58}, {12, 45, -0.59}, {12, 50, -0.60}, {12, 55, -0.60},
    {12, 60, -0.61}, {12, 65, -0.61}, {12, 70, -0.60}, {12, 75, -0.60}, {13, 10, -0.43}, {13, 15, -0.45}, {13, 20, -0.47},
    {13, 25, -0.48}, {13, 30, -0.50}, {13, 35, -0.51}, {13, 40, -0.52}, {13, 45, -0.52}, {13, 50, -0.53}, {13, 55, -0.53},
    {13, 60, -0.53}, {13, 65, -0.53}, {13, 70, -0.53}, {13, 75, -0.53}, {14, 10, -0.38}, {14, 15, -0.39}, {14, 20, -0.40},
    {14, 25, -0.42}, {14, 30, -0.43}, {14, 35, -0.44}, {14, 40, -0.44}, {14, 45, -0.45}, {14, 50, -0.45}, {14, 55, -0.46},
    {14, 60, -0.46}, {14, 65, -0.46}, {14, 70, -0.46}, {14, 75, -0.45}, {15, 10, -0.32}, {15, 15, -0.33}, {15, 20, -0.34},
    {15, 25, -0.35}, {15, 30, -0.36}, {15, 35, -0.37}, {15, 40, -0.37}, {15, 45, -0.38}, {15, 50, -0.38}, {15, 55, -0.38},
    {15, 60, -0.38}, {15, 65, -0.38}, {15, 70, -0.38}, {15, 75, -0.38}, {16, 10, -0.26}, {16, 15, -0.27}, {16, 20, -0.28},
    {16, 25, -0.28}, {16, 30, -0.29}, {16, 35, -0.30}, {16, 40, -0.30}, {16, 45, -0.30}, {16, 50, -0.31}, {16, 55, -0.31},
    {16, 60, -0.31}, {16, 65, -0.31}, {16, 70, -0.31}, {16, 75, -0.30}, {17, 10, -0.20}, {17, 15, -0.20}, {17, 20, -0.21},
    {17, 25, -0.21}, {17, 30, -0.22}, {17, 35, -0.22}, {17, 40, -0.23}, {17, 45, -0.23}, {17, 50, -0.23}, {17, 55, -0.23},
    {17, 60, -0.23}, {17, 65, -0.23}, {17, 70, -0.23}};

TEST(OivRefractometry, IndexOfSucroseSolutions)
{
    for (const IndexRow& row : indices)
        EXPECT_NEAR(refractiveIndexOfBrix(row.sucrose_percent), row.index, 0.00002) << row.sucrose_percent;
}

// A solution of true strength b at temperature t reads r there without compensation, and b = r + correction.
TEST(OivRefractometry, ReadingAwayFrom20Degrees)
{
    // Prism and warming are fitted to this table; the largest error is in its row of 6 °C, which is rough at 10 °Bx.
    constexpr double bound_brix = 0.04;
    for (const CorrectionRow& row : corrections) {
        SCOPED_TRACE(testing::Message() << row.reading_brix << " °Bx at " << row.temperature_c << " °C");
        const Mix mix = solutionOf(Constituent::Sucrose, row.reading_brix + row.correction_brix);
        EXPECT_NEAR(*readings(mix, {row.temperature_c})->refractometer_brix, row.reading_brix, bound_brix);
    }
}

// The same the other way round: the reading solved for the sugar.
TEST(OivRefractometry, ReadingAwayFrom20DegreesIsCorrected)
{
    for (const CorrectionRow& row : corrections) {
        SCOPED_TRACE(testing::Message() << row.reading_brix << " °Bx at " << row.temperature_c << " °C");
        const Measurement measurement = RefractometerReading{row.reading_brix, {row.temperature_c}, {}};
        const auto found = solve({&measurement, 1});
        ASSERT_TRUE(found.has_value());
        EXPECT_NEAR(percent(found->front().sugar), row.reading_brix + row.correction_brix, 0.05);
    }
}

// A must holds more than sugar: with 98.9 g/kg of glucose and fructose in equal parts and an extract of acids, minerals and other matter as
// a ripe must has (10 g/L acid as citric, 4 g/L minerals, 8 g/L of others: from memory), it reads the 12 °Bx that the table prints, and the
// excess over its sugars is explained.
TEST(OivRefractometry, MustReadsMoreThanItsSugars)
{
    Mix must;
    must.amounts[Constituent::Glucose] = {49.45};
    must.amounts[Constituent::Fructose] = {49.45};
    must.amounts[Constituent::Acid] = {9.6};
    must.amounts[Constituent::Minerals] = {3.8};
    must.amounts[Constituent::Dextrins] = {7.6};
    must.amounts[Constituent::Water] = {1000.0 - 98.9 - 9.6 - 3.8 - 7.6};
    const auto found = readings(must, {20.0});
    EXPECT_NEAR(*found->refractometer_brix, 12.0, 0.5);
    EXPECT_NEAR(found->density.value, 1.0472, 0.003);
    ASSERT_EQ(found->disturbances.size(), 1u);
    EXPECT_NE(english(found->disturbances.front()).find("Acids, minerals and other dissolved solids add"), std::string::npos);
}

}  // namespace
}  // namespace firn
