// The two meanings of an amount such as "1.015 g".
#pragma once

#include "units/amount.h"

#include <QString>
#include <vector>

namespace firn::app {

struct AmountChoice {
    QString meaning;  // "1015 g"
    QString text;     // what was typed, with the number so that it can mean nothing else
    friend bool operator==(const AmountChoice&, const AmountChoice&) = default;
};

/// Thousands first, then decimals; none where the fault is another one.
std::vector<AmountChoice> choicesFor(const QString& text, const AmountFault& fault);

/// Of a text that is an amount and nothing else; without a unit it is in this one.
std::vector<AmountChoice> choicesFor(const QString& text, Unit usual);

}  // namespace firn::app
