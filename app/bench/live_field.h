// A number of the recipe in a field: all views follow its keys, and it is one step of the history.
#pragma once

#include <functional>
#include <optional>

namespace firn::app {

class Document;
class NumberField;

/// `edit` puts a number into the recipe by a function of an edits header. It outlives the field, so it holds no more than places in the recipe.
void typeInto(Document& document, NumberField& field, const std::function<void(std::optional<double> number)>& edit);

}  // namespace firn::app
