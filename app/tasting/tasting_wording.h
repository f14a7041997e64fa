// Tastings in words that keep what a blind sheet hides.
#pragma once

#include "tasting/scores.h"

#include <QString>

namespace firn::app {

/// What was tasted: a version's name, "Cup 417" while the sheet hides it, "Cup 417: first try" once it is revealed.
QString tastedText(const Tasting& tasting, const Recipe& recipe);

/// "Cup 417"
QString cupText(const std::string& code);

/// A line of a list: the day, what was tasted, who tasted.
QString tastingText(const Tasting& tasting, const Recipe& recipe);

/// "no crystals … crushed ice", or the numbers of both ends where there are no words.
QString endsText(const TastingScale& scale);

/// "mean 6.5 of 2 tastings"
QString meanText(const VersionScores& scores);

/// A number as short as it can be: "7", "6.5", at most two decimals.
QString scoreText(double value);

}  // namespace firn::app
