// What differs between recipes besides their rows.
#pragma once

#include "analysis/analysis.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

struct HeaderDifference {
    std::string_view label;                     // "Steps"
    std::string part;                           // the component, ingredient or linked recipe; empty for the whole recipe
    std::vector<std::vector<Sentence>> values;  // of each recipe, part by part
};

/// A step in a few words, and what it takes away: "heat at 85 °C for 10 min", "40 g held back".
std::vector<Sentence> inBrief(const Step& step);

/// The steps as they are in a batch so many times as large.
std::vector<Step> stepsInSize(const Recipe& recipe, std::size_t component, double factor);

/// Only what differs from the first recipe somewhere. `batchFactors` is how many times the first one's amounts each is made in.
std::vector<HeaderDifference> headerDifferences(
    std::span<const Recipe* const> recipes, std::span<const Conditions> conditions, std::span<const double> batchFactors);

}  // namespace firn
