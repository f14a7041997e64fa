// A mix of sugar, water and alcohol, by grams.
#pragma once

#include "mix/mix.h"

namespace firn {

inline Mix syrup(double sucrose, double water, double ethanol = 0.0)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {sucrose};
    mix.amounts[Constituent::Water] = {water};
    mix.amounts[Constituent::Ethanol] = {ethanol};
    return mix;
}

}  // namespace firn
