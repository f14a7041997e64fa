#include "solution/ethanol_activity.h"

#include "solution/ice_equilibrium.h"

#include <algorithm>
#include <array>
#include <math.h>  // pchip.hpp of Boost 1.74 takes isnan from the global namespace and does not include it

#include <boost/math/interpolators/pchip.hpp>
#include <vector>

namespace firn {

namespace {

using Row = EthanolRow;

// CRC Handbook of Chemistry and Physics, 102nd ed. (2021), "Concentrative properties of aqueous solutions", ethanol: mass percent and
// freezing-point depression in K, printed to 0.01 K. No polynomial of four terms follows these rows to better than 1 K (they bend
// between 24 and 40 %), so the table itself is the model. Rows below 4 % are left out: their rounding would show in the slope.
constexpr std::array rows{Row{0, 0}, Row{4, 1.65}, Row{6, 2.54}, Row{8, 3.47}, Row{10, 4.47}, Row{12, 5.56}, Row{14, 6.73},
    Row{16, 8.01}, Row{18, 9.40}, Row{20, 10.92}, Row{22, 12.60}, Row{24, 14.47}, Row{26, 16.41}, Row{28, 18.43}, Row{30, 20.47},
    Row{32, 22.44}, Row{34, 24.27}, Row{36, 25.98}, Row{38, 27.62}, Row{40, 29.26}, Row{42, 30.98}, Row{44, 32.68}, Row{46, 34.36},
    Row{48, 36.04}, Row{50, 37.67}, Row{52, 39.20}, Row{54, 40.65}, Row{56, 42.06}, Row{58, 43.49}, Row{60, 44.93}, Row{62, 46.28},
    Row{64, 47.52}, Row{66, 48.64}, Row{68, 49.52}};

double moleFractionOf(const Row& row)
{
    const double ethanol_mol = row.ethanol_percent / 46.0684;
    const double water_mol = (100.0 - row.ethanol_percent) / 18.01528;
    return ethanol_mol / (ethanol_mol + water_mol);
}

struct Table {
    double largest_moleFraction;
    boost::math::interpolators::pchip<std::vector<double>> lnActivity;
};

Table table()
{
    std::vector<double> moleFraction;
    std::vector<double> lnActivity;
    for (const Row& row : rows) {
        moleFraction.push_back(moleFractionOf(row));
        lnActivity.push_back(lnWaterActivityOverIce({-row.depression_k}));
    }
    const double largest = moleFraction.back();
    return {largest, {std::move(moleFraction), std::move(lnActivity)}};
}

}  // namespace

std::pair<EthanolRow, EthanolRow> ethanolRowsAround(double ethanol_moleFraction)
{
    const auto above = std::ranges::upper_bound(rows.begin() + 1, rows.end() - 1, ethanol_moleFraction, {}, moleFractionOf);
    return {*(above - 1), *above};
}

double lnActivityOfEthanolSolution(double ethanol_moleFraction)
{
    static const Table all = table();
    return all.lnActivity(std::clamp(ethanol_moleFraction, 0.0, all.largest_moleFraction));
}

}  // namespace firn
