// The bands of sugar that the trade gives to kinds of dessert, and where a mix stands in them.
#pragma once

#include "texture/texture.h"

#include <span>

namespace firn {

/// Which sugars the figures of a band's source are.
enum class SugarCount {
    AllSugars,        // of an ice of water: what is stirred in and what the fruit brings
    WithoutMilkSugar  // the source lists milk solids, and their lactose in them, apart from sugar: what is called added sugar
};

/// A band of sugar by mass that the trade gives to a kind of dessert.
struct TradeBand {
    TextureClass textureClass;
    SugarCount counts;
    MassFraction low;
    MassFraction high;
    std::string_view source;  // "unverified" where it is common practice
};
/// One for each kind that has one.
const std::vector<TradeBand>& tradeBands();
const TradeBand* tradeBandOf(TextureClass textureClass);

/// What one book or school gives beside common practice; `low` is zero where it names only an upper limit.
struct BandOfSource {
    TextureClass textureClass;
    MassFraction low;
    MassFraction high;
    std::string_view source;
};
std::span<const BandOfSource> bandsOfSources();

/// What of a mix counts against a band.
struct CountedSugars {
    MassFraction sugars;         // as the band counts them
    MassFraction milkSugar;      // left out of them
    MassFraction asSoftAsSugar;  // of the alcohol: the sugar that would leave as little ice
    MassFraction total() const { return sugars + asSoftAsSugar; }
};
CountedSugars countedSugars(const Mix& mix, SugarCount counts);

bool isIn(const TradeBand& band, const Mix& mix);

/// What a mix has beside what its kind usually has; where it has left its band, what other band or which source it agrees with. Empty for kinds
/// without a band.
std::vector<Sentence> standingInBand(const Mix& mix, TextureClass textureClass);

}  // namespace firn
