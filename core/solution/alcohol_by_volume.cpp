#include "solution/alcohol_by_volume.h"

#include "mix/mix.h"
#include "solution/ethanol.h"
#include "solution/volume.h"
#include "units/text.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <string>

namespace firn {

bool isAlcoholByVolume(std::string_view unit)
{
    std::string letters;
    std::ranges::copy_if(lowered(unit), std::back_inserter(letters), isAsciiLetter);
    constexpr std::array<std::string_view, 7> words{"vol", "abv", "vv", "volume", "byvolume", "alcvol", "alcbyvol"};
    return std::ranges::find(words, letters) != words.end();
}

double alcoholByVolume_percent(const Amounts& amounts)
{
    const Mix mix{amounts, {}, {}, {}};
    if (mix[Constituent::Ethanol].value <= 0.0)
        return 0.0;
    const double ethanol_mL = mix[Constituent::Ethanol].value / ethanolDensity_20c.value;
    return 100.0 * ethanol_mL / volumeOf(mix, {20.0}).value;
}

Result<Grams> ethanolIn100g(double strength_percent, Amounts others, Constituent rest)
{
    if (!(strength_percent >= 0.0 && strength_percent <= 100.0))
        return failure(phrase("{0} % vol cannot be. Write a strength from 0 to 100 % vol.", Figure{strength_percent, 1}));
    others[Constituent::Ethanol] = {};
    if (rest == Constituent::Water)
        others[Constituent::Water] = {};
    const Grams room{100.0 - others.total().value};
    const auto tooStrong_percent = [&](double ethanol_g) {
        Amounts drink = others;
        drink[Constituent::Ethanol] = {ethanol_g};
        drink[rest] += Grams{room.value - ethanol_g};
        return alcoholByVolume_percent(drink) - strength_percent;
    };
    if (strength_percent == 0.0)
        return Grams{};
    // Some tables print the 100 % of pure alcohol as 99.99: half of that last digit.
    constexpr double rounding_percent = 0.005;
    const double atMost_percent = room.value > 0.0 ? tooStrong_percent(room.value) : -strength_percent;
    if (atMost_percent < -rounding_percent)
        return failure(phrase("{0} % vol has no room beside {1} g of other constituents. Correct one of them.",
            Figure{strength_percent, 1}, Figure{others.total().value, 1}));
    if (atMost_percent <= rounding_percent)
        return room;
    std::uintmax_t steps = 60;
    const auto [low, high] = boost::math::tools::toms748_solve(tooStrong_percent, 0.0, room.value, -strength_percent,
        atMost_percent, boost::math::tools::eps_tolerance<double>(40), steps);
    return Grams{(low + high) / 2.0};
}

}  // namespace firn
