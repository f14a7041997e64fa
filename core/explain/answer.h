// An answer as a student types it, against the one expected.
#pragma once

#include "units/sentence.h"

#include <optional>
#include <string>
#include <string_view>

namespace firn {

struct ExpectedAnswer {
    double value = 0.0;
    double tolerance = 0.0;  // what is as near as this counts as right
    std::string unit;        // "%", "°C", "g", "mL", "°Bx", "°Bé", "% vol"
    int decimals = 1;
    std::optional<double> byOtherMethod = {};  // what the other of two methods says, in the same unit
};

enum class Verdict { Right, RightButNoUnit, WrongUnit, TooLow, TooHigh, OtherMethod, SignLost, Fraction };

struct Judgement {
    Verdict verdict;
    Sentence sentence;  // what to tell the student; the answer only to a right one
};

/// Reads "26 %", "-2.7 °C", "−2,7", "0.12 kg": either decimal mark and either minus. A right one is told how it is exactly. Fails on what is no number with at most a unit,
/// and on nothing typed.
Result<Judgement> judge(std::string_view typed, const ExpectedAnswer& expected);

}  // namespace firn
