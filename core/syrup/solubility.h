// How much of one solute water holds, and what crystallises when it cools.
//
// Each solute is reckoned alone in its water. In company each sugar dissolves less than that, though all together more (from memory), and a
// clean syrup may stay supersaturated for days: the figures say what can crystallise, not that it will.
#pragma once

#include "derivation/working.h"
#include "ingredients/composition.h"
#include "units/sentence.h"

#include <optional>
#include <string_view>

namespace firn {

struct Solubility {
    MassFraction share;        // of the saturated solution, counted without water of crystallisation
    MassFraction uncertainty;  // how far published tables differ, or judgement
    double g_perGramWater = 0.0;
    double crystalWater_gPerGram = 0.0;  // that crystals grown here bind
    std::string_view source;
};

/// For sucrose (0 to 100 °C), glucose (20 to 90), fructose (20 to 50), lactose (0 to 89) and salt (0 to 100). Fails for others and beyond.
/// `working`, if given, takes the share of the saturated solution.
Result<Solubility> solubilityOf(Constituent solute, Celsius temperature, Working* working = nullptr);

/// What of a solute is in its water at one temperature.
struct Saturation {
    double ratio = 0.0;  // of what there is to what the water holds: above 1 some of it is solid, or may become so
    Grams dissolved;
    Grams solid;  // crystals with the water that they bind
};

struct Dissolving {
    Saturation warm;
    Saturation cooled;
    Grams waterForCooled;             // to add so that all stays dissolved when cooled; 0 if it does
    std::optional<Sentence> warning;  // from 95 % of saturation (judgement)
    Sentence limit;                   // what these figures leave out
};

/// Some of a solute stirred into water at one temperature, then cooled (or warmed) to another. Fails as solubilityOf does, and without water or solute.
/// `working`, if given, takes what stays solid when warm, if anything does; else what is solid when cooled and the water that would dissolve it.
Result<Dissolving> dissolve(
    Constituent solute, Grams amount, Grams water, Celsius warm, Celsius cooledTo, Working* working = nullptr);

}  // namespace firn
