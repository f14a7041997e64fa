// What is done to a component between weighing and serving, and what each step takes away.
#pragma once

#include "units/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace firn {

enum class StepKind { Dissolve, Heat, Steep, Strain, Reduce, Chill, Fold, Churn, Freeze };

std::string_view keyOf(StepKind kind);
std::optional<StepKind> stepNamed(std::string_view key);

/// What a strainer, cloth or press keeps back, weighed wet.
struct HeldBack {
    Grams mass;
    friend bool operator==(const HeldBack&, const HeldBack&) = default;
};

/// What coffee grounds do, for a beginning: they hold about twice their weight and give up about a fifth (common practice, no source).
inline constexpr double usualSoaking_gPerG = 2.0;
inline constexpr double usualExtraction_percent = 20.0;

/// Leaves, peel or grounds that are steeped and then taken out.
struct Steeped {
    std::string ingredient;          // a row of the component, as it is written there
    double soaksUp_gPerG = 0.0;      // liquid that goes out with each gram of it
    double extracted_percent = 0.0;  // of what in it can dissolve, the part that stays in the mix
    friend bool operator==(const Steeped&, const Steeped&) = default;
};

/// Weighed after heating: what is missing has boiled off.
struct BoiledToMass {
    Grams mass;
    friend bool operator==(const BoiledToMass&, const BoiledToMass&) = default;
};

/// Boiled down until a refractometer reads this at 20 °C.
struct BoiledToBrix {
    double brix = 0.0;
    friend bool operator==(const BoiledToBrix&, const BoiledToBrix&) = default;
};

using Loss = std::variant<std::monostate, HeldBack, Steeped, BoiledToMass, BoiledToBrix>;

struct Step {
    StepKind kind = StepKind::Dissolve;
    std::optional<double> temperature_c;
    std::optional<double> minutes;
    Loss loss;
    std::string note;
    std::string unknown;  // JSON fields that this version of Firn does not know
    friend bool operator==(const Step&, const Step&) = default;
};

}  // namespace firn
