// What was added to one batch so that it reached its target. The recipe itself stays as it is written.
#pragma once

#include "units/quantity.h"

#include <string>
#include <vector>

namespace firn {

struct AddedIngredient {
    std::string ingredient;  // as a row has it
    Grams mass;
    friend bool operator==(const AddedIngredient&, const AddedIngredient&) = default;
};

/// One addition to the batch that was weighed that day. The readings that led to it have the same date.
struct BatchCorrection {
    std::string date;  // ISO 8601, as in ReadingRecord
    std::string component;
    std::string version = {};           // id of the version that was weighed; empty for the recipe as it stands
    double sugarsBefore_percent = 0.0;  // as measured, or as the recipe says where nothing was measured
    double sugarsAfter_percent = 0.0;   // calculated
    std::vector<AddedIngredient> added;
    std::string unknown = {};  // JSON fields that this version of Firn does not know
    friend bool operator==(const BatchCorrection&, const BatchCorrection&) = default;
};

}  // namespace firn
