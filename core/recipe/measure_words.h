// Words around amounts in recipes. Common practice, no source.
#pragma once

#include <array>
#include <string_view>

namespace firn::words {

using Word = std::string_view;

inline constexpr auto rough =
    std::to_array<Word>({"about", "approx", "approximately", "ca", "circa", "roughly", "around", "just under", "just over",
        "nearly", "almost", "at least", "up to", "scant", "generous", "heaped", "heaping", "rounded", "level", "good"});

inline constexpr auto articles = std::to_array<Word>({"a", "an"});

/// What holds food and says nothing of how much.
inline constexpr auto containers = std::to_array<Word>({"tin", "tins", "can", "cans", "jar", "jars", "bottle", "bottles", "carton",
    "cartons", "tub", "tubs", "packet", "packets", "package", "packages", "pack", "packs", "pkg", "sachet", "sachets", "box",
    "boxes", "bag", "bags", "pot", "pots", "container", "containers", "bar", "bars", "block", "blocks", "envelope", "envelopes",
    "punnet", "punnets", "tube", "tubes"});

/// Measures by eye.
inline constexpr auto handfuls = std::to_array<Word>({"handful", "handfuls", "splash", "splashes", "drizzle", "glug", "glugs",
    "knob", "knobs", "sprig", "sprigs", "bunch", "bunches", "squeeze", "dollop", "dollops", "wineglass", "wineglasses", "glass",
    "glasses", "slice", "slices", "scoop", "scoops", "strip", "strips", "wedge", "wedges", "segment", "segments", "dusting",
    "sprinkle", "sprinkling", "grinding", "grindings", "twist", "twists", "spoon", "spoons", "spoonful", "spoonfuls", "ladle",
    "ladles", "part", "parts", "sheet", "sheets", "bit", "touch", "stalk", "stalks", "capful", "swirl"});

inline constexpr auto uncounted = std::to_array<Word>({"some", "a few", "a little", "a bit of", "several", "plenty of", "lots of",
    "enough", "a touch of", "a little bit of", "any amount of"});

/// Measures that may stand without a number.
inline constexpr auto aloneForOne = std::to_array<Word>({"pinch", "dash", "drop", "shot"});

inline constexpr auto sizes = std::to_array<Word>({"large", "big", "small", "medium", "medium-sized", "whole", "extra large"});

}  // namespace firn::words
