#include "ingredients/ingredient_id.h"

#include "ingredients/catalogue.h"

#include <algorithm>

namespace firn {

namespace {

bool isPlain(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }

}  // namespace

bool isIngredientId(std::string_view text)
{
    return !text.empty() && std::ranges::all_of(text, [](char c) { return isPlain(c) || c == '-'; }) && text.front() != '-'
           && text.back() != '-' && text.find("--") == std::string_view::npos;
}

std::string ingredientIdFrom(std::string_view name)
{
    std::string id;
    for (const char c : folded(name)) {
        if (isPlain(c))
            id += c;
        else if (!id.empty() && id.back() != '-')
            id += '-';
    }
    if (id.ends_with('-'))
        id.pop_back();
    return id.empty() ? "ingredient" : id;
}

}  // namespace firn
