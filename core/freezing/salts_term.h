// The textbook's term for the salts of milk.
// Source: H. D. Goff and R. W. Hartel, Ice Cream, 7th ed. (Springer 2013), chapter 6.
#pragma once

namespace firn {

/// Kelvins that it takes off for milk solids-not-fat and whey solids equal to the water.
inline constexpr double saltsTerm_k = 2.37;

}  // namespace firn
