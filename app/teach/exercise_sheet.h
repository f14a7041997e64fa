// Sheets of exercises on paper, a sheet of its own for each student, and their solutions on pages at the end.
#pragma once

#include "explain/exercises.h"
#include "print/block.h"

namespace firn::app {

enum class Solutions { None, Answers, WorkedOut };

/// More than a year's students; each sheet takes a page or two.
inline constexpr std::uint64_t mostSheets = 200;

/// The sheets in their order, then the solutions of each.
Handout handoutOf(const std::vector<ExerciseSheet>& sheets, const QString& recipe, Solutions solutions);

/// "Water 532 g, sucrose 150 g": what somebody needs who calculates by hand.
QString contentsOf(const Mix& mix);

/// A sheet's line "420.5 g water" as a person of this locale would write it: "420,5 g water".
QString rowText(const std::string& line);

/// "26.3 %", as exact as its tolerance asks for.
QString answerText(const ExpectedAnswer& answer);

}  // namespace firn::app
