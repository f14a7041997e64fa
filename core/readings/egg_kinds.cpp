#include "readings/egg_kinds.h"

#include <array>
#include <cmath>

namespace firn {

namespace {

constexpr Grams eachOf(double ouncesPerDozen) { return {ouncesPerDozen * 28.349523125 / 12.0}; }

}  // namespace

std::span<const EggSize> euEggSizes()
{
    static constexpr std::array sizes{EggSize{"S", {0.0}}, EggSize{"M", {53.0}}, EggSize{"L", {63.0}}, EggSize{"XL", {73.0}}};
    return sizes;
}

std::span<const EggSize> usEggSizes()
{
    static constexpr std::array sizes{EggSize{"Peewee", eachOf(15)}, EggSize{"Small", eachOf(18)}, EggSize{"Medium", eachOf(21)},
        EggSize{"Large", eachOf(24)}, EggSize{"Extra large", eachOf(27)}, EggSize{"Jumbo", eachOf(30)}};
    return sizes;
}

const EggSize& sizeOf(Grams egg, std::span<const EggSize> sizes)
{
    const EggSize* found = &sizes.front();
    for (const EggSize& size : sizes) {
        if (egg >= size.from)
            found = &size;
    }
    return *found;
}

Grams usualMass(std::size_t index, std::span<const EggSize> sizes)
{
    const bool isOpenBelow = sizes[index].from.value <= 0.0;
    const bool isOpenAbove = index + 1 == sizes.size();
    const Grams bound = isOpenBelow ? sizes[index + 1].from : sizes[index].from;
    const std::size_t wide = isOpenBelow ? index + 1 : isOpenAbove ? index - 1 : index;
    const Grams half = (sizes[wide + 1].from - sizes[wide].from) / 2.0;
    return {std::round((isOpenBelow ? bound - half : bound + half).value)};
}

std::span<const EggAge> eggAges()
{
    static constexpr std::array ages{EggAge{"laid today", {1.087}, {1.083}, {1.090}},
        EggAge{"about a week old", {1.080}, {1.070}, {1.086}}, EggAge{"two or three weeks old", {1.065}, {1.050}, {1.080}},
        EggAge{"old", {1.045}, {1.030}, {1.060}}, EggAge{"of unknown age", {1.070}, {1.030}, {1.090}}};
    return ages;
}

}  // namespace firn
