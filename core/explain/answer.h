// An answer as a student types it, against the one expected.
#pragma once

#include "units/sentence.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace firn {

/// What a usual mistake comes to, and what to say to who makes it.
struct Slip {
    double value = 0.0;
    Sentence said;
};

struct ExpectedAnswer {
    double value = 0.0;
    double tolerance = 0.0;  // what is as near as this counts as right
    std::string unit;        // "%", "°C", "g", "mL", "°Bx", "°Bé", "% vol"
    int decimals = 1;
    std::optional<double> byOtherMethod = {};  // what the other of two methods says, in the same unit
    std::vector<Slip> slips = {};              // in the same unit
};

enum class Verdict { Right, RightButNoUnit, RightInAnotherUnit, WrongUnit, TooLow, TooHigh, OtherMethod, SignLost, Fraction, Slip };

struct Judgement {
    Verdict verdict;
    Sentence sentence;  // what to tell the student; the answer only to a right one
};

/// Whether it counts as right, with or without its unit or in another one.
bool isRight(Verdict verdict);

/// "± 0.2 °C"; of percentages "± 0.5 percentage points", which are not 0.5 % of it.
Sentence toleranceOf(const ExpectedAnswer& answer);

/// Reads "26 %", "-2.7 °C", "−2,7", and what can be converted: "0.12 kg", "0.8 oz", "26.8 °F", "270.2 K": either decimal mark and either
/// minus. A right one is told how it is exactly, a usual mistake what it is. Fails on what is not a number with at most a unit, and on
/// nothing typed.
Result<Judgement> judge(std::string_view typed, const ExpectedAnswer& expected);

}  // namespace firn
