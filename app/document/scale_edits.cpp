#include "document/scale_edits.h"

#include "document/change_value.h"

#include <QCoreApplication>

namespace firn::app {

namespace {

struct WholeRecipe {
    using Value = Recipe;
    auto& in(auto& recipe) const { return recipe; }
    friend bool operator==(const WholeRecipe&, const WholeRecipe&) = default;
};

}  // namespace

void scaleRecipe(Document& document, Recipe scaledRecipe)
{
    change(document, QCoreApplication::translate("firn::app::Edits", "Scale recipe"), WholeRecipe{}, std::move(scaledRecipe));
}

}  // namespace firn::app
