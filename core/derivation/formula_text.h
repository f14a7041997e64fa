// A formula as one line of plain text: "w_sugars = 100 · m_sugars / m_mix".
#pragma once

#include "derivation/formula.h"

namespace firn {

/// A value as a derivation writes it: four significant digits, or the decimals that its symbol asks for, and the unit. "22.18 g".
std::string valueText(const Number& number);
/// How many decimals it is written with; none where it is written with a power of ten or is infinite.
std::optional<int> decimalsShown(const Number& number);
/// What a reader takes it for: the value as far as it is written.
double valueShown(const Number& number);

/// One line. A sum of more than `mostTerms` terms is folded to its first and last ones; 0 folds nothing.
std::string textOf(const Formula& formula, std::size_t mostTerms = 0);

/// "m_sugars"
std::string textOf(const Symbol& symbol);

/// Whether this part has to stand in brackets where the operator binds it, for writing in one line. `place` counts the parts from 0. In a fraction
/// drawn with a bar, and under a root, no brackets are needed.
bool needsBrackets(const Formula& part, Operator op, std::size_t place);

}  // namespace firn
