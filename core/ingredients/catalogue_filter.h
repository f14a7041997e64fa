// Which ingredients a person wants to look through.
#pragma once

#include "ingredients/catalogue.h"

#include <string>
#include <vector>

namespace firn {

struct CatalogueFilter {
    std::string text = {};                // as typed; searched as Catalogue::search does
    std::string group = {};               // any group if empty
    std::vector<Allergen> contains = {};  // every one of these
    std::vector<Allergen> freeOf = {};    // none of these, as far as the catalogue says
    friend bool operator==(const CatalogueFilter&, const CatalogueFilter&) = default;
};

/// The ingredients that pass: the best match first where there is a text, otherwise in the catalogue's order. They last as long as the
/// catalogue does.
std::vector<const Ingredient*> filtered(const Catalogue& catalogue, const CatalogueFilter& filter);

/// Every group once, in the catalogue's order.
std::vector<std::string> groupsOf(const Catalogue& catalogue);

}  // namespace firn
