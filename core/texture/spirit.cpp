#include "texture/spirit.h"

#include "texture/ice_wanted.h"

#include <algorithm>

namespace firn {

std::optional<SpiritExcess> spiritExcess(const Mix& mix, Celsius freezer, MassFraction iceOfFatFree)
{
    const IceWanted wanted{freezer, iceOfFatFree, true};
    const Grams ethanol = mix[Constituent::Ethanol];
    if (ethanol.value <= 0.0 || hasIce(mix, wanted))
        return std::nullopt;
    SpiritExcess result;
    if (const auto spirit = amountForIce(mix, {{Stuff::Spirit, {-1.0}}}, mostOf(Stuff::Spirit, mix), wanted))
        result.spiritToRemove = Millilitres{spirit->value / densityOfSpirit.value};
    result.waterToAdd = amountForIce(mix, {{Stuff::Water, {1.0}}}, mix.mass(), wanted);
    return result;
}

}  // namespace firn
