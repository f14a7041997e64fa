// Anses, 2020: Ciqual French food composition table, English edition: energy by Regulation (EU) 1169/2011, in kcal per 100 g, printed to
// three digits. By food code. Records without an entry there are left out.
#include "../../shipped_catalogue.h"

#include <gtest/gtest.h>
#include <map>

namespace {

using namespace firn;

const std::map<std::string, double> energies_kcal = {{"1015", 211}, {"1021", 245}, {"4090", 348}, {"5007", 37.5}, {"13027", 76.9},
    {"15201", 432}, {"18003", 397}, {"18017", 255}, {"18041", 188}, {"18076", 232}, {"18100", 387}, {"18152", 323}, {"18905", 42.6},
    {"18907", 31.4}, {"19060", 44.4}, {"19410", 304}, {"19415", 297}, {"31004", 537}, {"31024", 251}, {"31039", 246},
    {"42200", 779}};

TEST(CiqualEnergy, CatalogueHoldsTheEnergyOf2020)
{
    for (const auto& [code, energy_kcal] : energies_kcal) {
        int found = 0;
        for (const auto& ingredient : shippedCatalogue().all()) {
            if (!ingredient.source.starts_with("CIQUAL 2020, " + code + ":"))
                continue;
            ++found;
            EXPECT_EQ(ingredient.energy_kcalPer100g, energy_kcal) << ingredient.id;
        }
        EXPECT_GT(found, 0) << code;
    }
}

}  // namespace
