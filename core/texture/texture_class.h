// The name of the kind of dessert: from the process first, then from what is in it.
#pragma once

#include "texture/texture.h"

namespace firn {

/// Ice in the fat-free part in the freezer below which a mix does not freeze, and below which it is not even slush: judgement, ±0.05.
inline constexpr MassFraction leastIceToFreeze{0.30};
inline constexpr MassFraction leastIceOfSlush{0.15};

/// The class of a mix that freezes. `reasons`, if given, take every figure that was compared on the way to it, the edge, and the edge's source.
TextureClass classOf(const Mix& mix, Process process, std::vector<Sentence>* reasons = nullptr);

/// Acidity as lactic acid, as the codes for sherbet have it: of all acids, which the mix counts as citric.
MassFraction acidityAsLactic(const Mix& mix);

/// Why a texture has its class: figures, edges and sources, or how little of it turns to ice. Empty where there is nothing to freeze.
std::vector<Sentence> reasonsForClass(const Texture& texture);

}  // namespace firn
