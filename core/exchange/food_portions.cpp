#include "exchange/food_portions.h"

#include "ingredients/catalogue.h"
#include "units/number.h"
#include "units/text.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

// Words that say that one whole fruit, egg or the like was weighed; anything else ("slice", "serving") could be a part or many.
constexpr auto pieceWords =
    std::to_array<std::string_view>({"small", "medium", "large", "extra large", "jumbo", "fruit", "whole", "piece"});

/// What a portion is called: its unit and what is said of it, without the number before.
std::string portionText(const Json& portion)
{
    std::string text;
    const auto append = [&text](const Json& object, const char* key) {
        const auto found = object.find(key);
        if (found == object.end() || !found->is_string())
            return;
        const std::string part(trimmed(found->get<std::string>()));
        if (!part.empty() && lowered(part) != "undetermined")  // "undetermined" stands for the unit in foods of SR28, from memory
            text += (text.empty() ? "" : ", ") + part;
    };
    if (const auto unit = portion.find("measureUnit"); unit != portion.end() && unit->is_object())
        append(*unit, "name");
    append(portion, "modifier");
    if (text.empty())
        append(portion, "portionDescription");
    return text;
}

/// "cup, sliced" is a cup with the note "sliced"; "medium (1-1/4" dia)" is a piece. Nothing where neither is clear.
std::optional<Measure> measureNamed(const std::string& text)
{
    const std::size_t end = std::min(text.find_first_of(",("), text.size());
    const std::string_view head = trimmed(std::string_view(text).substr(0, end));
    const std::string_view rest = trimmed(std::string_view(text).substr(std::min(text.find_first_not_of(", ", end), text.size())));
    if (const auto unit = unitNamed(head); unit && factsOf(*unit).dimension == Dimension::Volume)
        return Measure{*unit, {}, std::string(rest), {}};
    if (std::ranges::find(pieceWords, folded(head)) != pieceWords.end())
        return Measure{Unit::Piece, {}, text, {}};
    return std::nullopt;
}

std::optional<double> numberAt(const Json& portion, std::initializer_list<const char*> keys)
{
    for (const char* key : keys) {
        const auto found = portion.find(key);
        if (found != portion.end() && found->is_number())
            return found->get<double>();
    }
    return std::nullopt;
}

}  // namespace

std::optional<Sentence> takePortions(const Json& foodPortions, const std::string& source, ImportedIngredient& imported)
{
    if (!foodPortions.is_array())
        return phrase("\"foodPortions\" must be a list in square brackets.");
    for (const Json& portion : foodPortions) {
        if (!portion.is_object())
            return phrase("\"foodPortions\" must hold objects in braces.");
        const std::string text = portionText(portion);
        const auto mass_g = numberAt(portion, {"gramWeight"});
        const double amount = numberAt(portion, {"amount", "value"}).value_or(1.0);
        const double one_g = mass_g.value_or(0.0) / amount;
        if ((mass_g && *mass_g < 0.0) || amount < 0.0)
            return phrase("the portion “{0}” has a negative weight or amount. Correct it.", shortened(text));
        auto measure = measureNamed(text);
        if (!measure || !(one_g > 0.0) || one_g > largestAmount) {
            imported.unused.push_back(phrase("The portion “{0}” is not used, since its measure is not clear.", shortened(text)));
            continue;
        }
        measure->grams = {one_g};
        measure->source = source;
        imported.mapped.push_back(phrase(
            "Portion “{0}”: one {1} weighs {2} g.", shortened(text), std::string(factsOf(measure->unit).symbol), Figure{one_g, 1}));
        imported.ingredient.measures.push_back(std::move(*measure));
    }
    return std::nullopt;
}

}  // namespace firn
