// One number, one form: what steps that stand on one page write of the same symbol.
#pragma once

#include "derivation/working.h"

namespace firn {

/// The steps with every symbol written with the same decimals wherever it stands: those that a symbol asks for, else the most that any place needs.
std::vector<WorkingStep> inOneForm(std::vector<WorkingStep> steps);

/// The same, with more decimals for the values of a step where what is written of them would not come to what is written of its result. Nothing can
/// be done about values that are written with a power of ten.
std::vector<WorkingStep> inDigitsThatCompute(std::vector<WorkingStep> steps);

/// The steps worked out from the numbers as they are written, as a pupil with a calculator does: those that a step starts from, and the results of
/// the steps before. Only the last result keeps what lies beyond its written digits.
std::vector<WorkingStep> fromNumbersAsWritten(std::vector<WorkingStep> steps);

/// What the right side comes to with its values as they are written; none for a step that is solved, and where a named function stands in it.
std::optional<double> resultAsWritten(const WorkingStep& step);

}  // namespace firn
