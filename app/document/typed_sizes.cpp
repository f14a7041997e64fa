#include "document/typed_sizes.h"

#include "ingredients/weighing.h"
#include "units/text.h"

#include <optional>

namespace firn::app {

namespace {

std::optional<Millilitres> volumeOf(const Amount& amount)
{
    const UnitFacts& unit = factsOf(amount.unit);
    return unit.dimension == Dimension::Volume ? std::optional(Millilitres{amount.value * unit.size}) : std::nullopt;
}

/// Millimetres in a unit of length.
std::optional<double> millimetresIn(std::string_view unit)
{
    if (unit == "mm")
        return 1.0;
    if (unit.empty() || unit == "cm")
        return 10.0;
    if (unit == "in" || unit == "\"")
        return 25.4;
    return std::nullopt;
}

}  // namespace

Result<double> countFromText(std::string_view text)
{
    const auto number = leadingNumber(text);
    if (!number)
        return failure(number.error());
    const std::string_view rest = trimmed(text.substr(number->length));
    if (!rest.empty())
        return failure(phrase("“{0}” cannot stand here. Write only a number.", shortened(rest)));
    return number->value;
}

Result<double> factorFromText(std::string_view text)
{
    text = trimmed(text);
    for (const std::string_view sign : {"×", "x", "X"}) {
        if (text.starts_with(sign))
            return countFromText(text.substr(sign.size()));
    }
    return countFromText(text);
}

Result<Grams> massFromText(std::string_view text)
{
    const auto amount = parseAmount(text, Unit::Gram);
    if (!amount)
        return failure(amount.error());
    if (const auto weighing = weighWithoutIngredient(*amount))
        return weighing->mass;
    return failure(
        phrase("“{0}” is not a mass. Write grams, kilograms, ounces or pounds, such as 740 g.", shortened(trimmed(text))));
}

Result<Millilitres> volumeFromText(std::string_view text)
{
    const auto amount = parseAmount(text, Unit::Millilitre);
    if (!amount)
        return failure(amount.error());
    if (const auto volume = volumeOf(*amount))
        return *volume;
    return failure(
        phrase("“{0}” is not a volume. Write millilitres, litres, pints or quarts, such as 1.5 l.", shortened(trimmed(text))));
}

Result<std::variant<Grams, Millilitres>> portionFromText(std::string_view text)
{
    const auto amount = parseAmount(text, Unit::Gram);
    if (!amount)
        return failure(amount.error());
    if (const auto weighing = weighWithoutIngredient(*amount))
        return weighing->mass;
    if (const auto volume = volumeOf(*amount))
        return *volume;
    return failure(phrase("“{0}” is not a portion. Write a mass or a volume, such as 60 g or 80 ml.", shortened(trimmed(text))));
}

Result<Millimetres> lengthFromText(std::string_view text)
{
    const auto number = leadingNumber(text);
    if (!number)
        return failure(number.error());
    const std::string_view unit = trimmed(text.substr(number->length));
    if (const auto size_mm = millimetresIn(unit))
        return Millimetres{number->value * *size_mm};
    return failure(phrase("“{0}” is not a unit of length here. Write mm, cm or in.", shortened(unit)));
}

}  // namespace firn::app
