#include "document/scale_edits.h"

#include "document/change_value.h"
#include "document/whole_recipe.h"

#include <QCoreApplication>

namespace firn::app {

void scaleRecipe(Document& document, Recipe scaledRecipe)
{
    change(document, QCoreApplication::translate("firn::app::Edits", "Scale recipe"), WholeRecipe{}, std::move(scaledRecipe));
}

}  // namespace firn::app
