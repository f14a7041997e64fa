// Eggs as they are sold and kept: size classes by mass, and how dense an egg is by its age.
#pragma once

#include "units/quantity.h"

#include <cstddef>
#include <span>
#include <string_view>

namespace firn {

/// A class of eggs by mass in the shell, the smallest first in its list.
struct EggSize {
    std::string_view label;
    Grams from;  // the lightest
};

/// Commission Regulation (EC) No 589/2008, article 4: S under 53 g, M 53, L 63, XL 73 g and over.
std::span<const EggSize> euEggSizes();

/// USDA Agricultural Marketing Service, AMS 56, United States Standards, Grades, and Weight Classes for Shell Eggs: least weight a dozen 15, 18,
/// 21, 24, 27 and 30 oz (from memory).
std::span<const EggSize> usEggSizes();

/// The class that an egg of this mass falls into; the smallest for anything lighter.
const EggSize& sizeOf(Grams egg, std::span<const EggSize> sizes);

/// What an egg of one class weighs if nobody weighs it: the middle of the class. One that is open at an end counts as wide as its neighbour. To a gram.
Grams usualMass(std::size_t index, std::span<const EggSize> sizes);

/// How dense an egg is: its air cell grows as it dries. 1.085 to 1.09 when laid, 0.0017 less a day in a warm room (Romanoff and Romanoff, The Avian
/// Egg, 1949, from memory), slower in a refrigerator; 1.03 the least of a list in print.
struct EggAge {
    std::string_view label;
    GramsPerMillilitre density;
    GramsPerMillilitre least;
    GramsPerMillilitre most;
};

/// From laid today to old; the last is for an egg of which nothing is known.
std::span<const EggAge> eggAges();

}  // namespace firn
