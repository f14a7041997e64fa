// The table of what can be added, under a first line that says how the mix is now.
#pragma once

#include "correction/correction.h"

class QTableWidget;

namespace firn::app {

QTableWidget* choiceTable();

/// Keeps the chosen line, or chooses the first. Without a plan it is empty.
void fillChoices(QTableWidget& table, const CorrectionPlan* plan);

/// The number of the chosen choice in the plan.
std::optional<std::size_t> chosenIn(const QTableWidget& table);

}  // namespace firn::app
