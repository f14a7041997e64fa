// A mix of so many grams of each, with water to 100 g.
#pragma once

#include "mix/mix.h"

#include <initializer_list>
#include <utility>

namespace firn {

inline Mix mixOf(std::initializer_list<std::pair<Constituent, double>> parts)
{
    Mix mix;
    for (const auto& [constituent, grams] : parts)
        mix.amounts[constituent] = {grams};
    mix.amounts[Constituent::Water] = {100.0 - mix.mass().value};
    return mix;
}

}  // namespace firn
