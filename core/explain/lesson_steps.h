// Choosing steps from workings for a page of a lesson.
#pragma once

#include "derivation/working.h"

#include <functional>
#include <initializer_list>

namespace firn {

/// The formula with the terms of each sum over an index in the order of their size, the largest first, and every symbol as `onSymbol` leaves it.
Formula retold(const Formula& formula, const std::function<void(Symbol&)>& onSymbol = {});

/// The step with its sums in that order, and its symbols so changed.
WorkingStep retold(WorkingStep step, const std::function<void(Symbol&)>& onSymbol = {});

/// Those steps of a figure's working whose result is named so ("A_sugars"), and its last one; nothing where there is no such figure.
std::vector<WorkingStep> chosenSteps(
    const Workings& workings, const std::string& figure, std::initializer_list<std::string_view> results = {});

/// All of its steps.
std::vector<WorkingStep> allSteps(const Workings& workings, const std::string& figure);

/// The points of the curve, as figures, from which the ice at serving was taken; two where it lies between them.
std::vector<std::string> pointsOfIce(const Workings& workings);

/// The steps to the point of the curve from which the ice at serving was taken, and then to that.
std::vector<WorkingStep> stepsToIce(const Workings& workings);

/// The same, to the mass of that ice; nothing where the curve has no point at that temperature.
std::vector<WorkingStep> stepsToMassOfIce(const Workings& workings);

void append(std::vector<WorkingStep>& steps, std::vector<WorkingStep> more);

}  // namespace firn
