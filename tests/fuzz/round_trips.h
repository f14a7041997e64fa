// What must hold for every input whatsoever, however broken: no crash, and what is written reads back as the same value.
#pragma once

#include <string_view>

namespace firn {

bool textReadsBack(std::string_view input);
bool jsonReadsBack(std::string_view input);
bool csvReadsBack(std::string_view input);
bool quantityReadsBack(std::string_view input);
bool ingredientCsvCanBeKept(std::string_view input);
bool foodDataCanBeKept(std::string_view input);

}  // namespace firn
