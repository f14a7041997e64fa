// The catalogue that Firn ships.
#pragma once

#include "ingredients/catalogue.h"

namespace firn {

/// Read once; the program ends if it cannot be.
const Catalogue& usualCatalogue();

}  // namespace firn
