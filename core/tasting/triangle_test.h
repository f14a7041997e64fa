// The triangle test: of three cups two hold the same; whoever finds the odd one more often than by guessing shows that there is a difference.
#pragma once

#include "derivation/working.h"

#include <cstddef>
#include <optional>

namespace firn {

/// How sure one wants to be: guessing alone would do as well in 5 of 100 such tests.
inline constexpr double usualRisk = 0.05;

/// More people than a kitchen ever asks.
inline constexpr std::size_t mostTasters = 1000;

/// Probability that so many tasters or more find the odd cup by guessing: exact binomial with p = 1/3 (ISO 4120, from memory). `right` may be
/// 0 to `tasters`, those at most mostTasters.
double chanceByGuessing(std::size_t tasters, std::size_t right);

/// The keys under which workings have that chance in percent, and the least number of right answers.
inline constexpr const char* figureOfChance = "tasting.triangle_chance";
inline constexpr const char* figureOfLeastRight = "tasting.triangle_least_right";

/// The least number of right answers that shows a difference at this risk; none where even all of them would not.
std::optional<std::size_t> leastRight(std::size_t tasters, double risk = usualRisk);

/// What the test says, or why it says nothing: more right answers than tasters, too few tasters. `workings`, if given, take how the numbers
/// in the sentence come about.
Result<Sentence> triangleTest(std::size_t tasters, std::size_t right, Workings* workings = nullptr);

}  // namespace firn
