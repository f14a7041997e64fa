// What can be done about a mix that does not set, or is not served as its kind is. Every piece is tried on the mix before it is given.
#pragma once

#include "texture/firmness.h"
#include "texture/texture_class.h"

namespace firn {

/// Ice in the fat-free part in the freezer from which a mix sets firmly enough to scrape or to hold a shape: follows from the scoopable window.
inline constexpr MassFraction setsFirmly{0.40};

/// The same for a process. A folded dessert is held by its foam: it needs no more ice than what freezes at all (judgement).
constexpr MassFraction setsFrom(Process process) { return process == Process::Folded ? leastIceToFreeze : setsFirmly; }

/// A serving window narrower than this is not given: 1 K can be met in a kitchen (judgement), and rounding to tenths takes 0.2 K off.
inline constexpr KelvinDifference leastWindow{1.2};

/// The main cause of what stays liquid: the solute that counts as most sucrose, and one more that counts for nearly as much.
Sentence causeOfSoftness(const Mix& mix);

/// How to make it set in the freezer. May be empty.
std::vector<Advice> adviceToSet(const Mix& mix, const FreezingCurve& curve, const TextureInput& input);

/// How to serve it as its kind is served; `found` says what it is now, and its window. May be empty.
std::vector<Advice> adviceToServe(const Mix& mix, const Texture& found, const TextureInput& input);

/// How to make the freezer as cold as what is served from it.
Advice adviceToChill(Celsius serveAt);

/// What softens the ice of a mix beside its sugars.
Softening softeningOf(const Mix& mix, const TextureInput& input);

}  // namespace firn
