#include "units/unit.h"

#include "units/text.h"

#include <cassert>
#include <string>
#include <unordered_map>

namespace firn {

namespace {

constexpr std::string_view si = "International System of Units (BIPM brochure, 9th ed., 2019)";
constexpr std::string_view pound = "exact by definition: the international pound of 1959 is 0.45359237 kg";
constexpr std::string_view usGallon =
    "US gallon of 231 cubic inches, exact; rounded in NIST SP 430, household weights and measures";
constexpr std::string_view metricCup = "standard metric cup (conversion chart of NSW Health, Australia)";
constexpr std::string_view metricSpoon = "common practice outside Australia, where the tablespoon has 20 mL; no source";
constexpr std::string_view imperial = "imperial gallon of 4.54609 L, Weights and Measures Act 1985 (UK), schedule 1, as quoted";
constexpr std::string_view imperialCup = "half an imperial pint, from memory; usage varies";
constexpr std::string_view shot = "the jigger of 1.5 US fl oz (44 mL) that USDA SR28 weighs (NDB 14037); elsewhere 25 to 50 mL";
constexpr std::string_view dash = "an eighth of a US teaspoon, common practice, no source";
constexpr std::string_view pinch = "a sixteenth of a US teaspoon, common practice, no source";
constexpr std::string_view drop = "20 drops to the millilitre, common practice, no source; a drop depends on the dropper";
constexpr std::string_view counted = "counted";

constexpr std::array<UnitFacts, static_cast<std::size_t>(Unit::PercentOfMix) + 1> facts = {{
    {Unit::Gram, Dimension::Mass, 1.0, "g", "g", si},
    {Unit::Kilogram, Dimension::Mass, 1000.0, "kg", "kg", si},
    {Unit::Milligram, Dimension::Mass, 0.001, "mg", "mg", si},
    {Unit::Ounce, Dimension::Mass, 28.349523125, "oz", "oz", pound},
    {Unit::Pound, Dimension::Mass, 453.59237, "lb", "lb", pound},
    {Unit::Millilitre, Dimension::Volume, 1.0, "mL", "mL", si},
    {Unit::Litre, Dimension::Volume, 1000.0, "L", "L", si},
    {Unit::Teaspoon, Dimension::Volume, 4.92892159375, "tsp", "tsp", usGallon},
    {Unit::Tablespoon, Dimension::Volume, 14.78676478125, "tbsp", "tbsp", usGallon},
    {Unit::Cup, Dimension::Volume, 236.5882365, "cup", "cups", usGallon},
    {Unit::MetricTeaspoon, Dimension::Volume, 5.0, "metric tsp", "metric tsp", metricSpoon},
    {Unit::MetricTablespoon, Dimension::Volume, 15.0, "metric tbsp", "metric tbsp", metricSpoon},
    {Unit::MetricCup, Dimension::Volume, 250.0, "metric cup", "metric cups", metricCup},
    {Unit::ImperialCup, Dimension::Volume, 284.130625, "imperial cup", "imperial cups", imperialCup},
    {Unit::FluidOunce, Dimension::Volume, 29.5735295625, "fl oz", "fl oz", usGallon},
    {Unit::Pint, Dimension::Volume, 473.176473, "pt", "pt", usGallon},
    {Unit::Quart, Dimension::Volume, 946.352946, "qt", "qt", usGallon},
    {Unit::ImperialFluidOunce, Dimension::Volume, 28.4130625, "imperial fl oz", "imperial fl oz", imperial},
    {Unit::ImperialPint, Dimension::Volume, 568.26125, "imperial pt", "imperial pt", imperial},
    {Unit::Shot, Dimension::Volume, 44.36029434375, "shot", "shots", shot},
    {Unit::Dash, Dimension::Volume, 0.61611519921875, "dash", "dashes", dash},
    {Unit::Pinch, Dimension::Volume, 0.308057599609375, "pinch", "pinches", pinch},
    {Unit::Drop, Dimension::Volume, 0.05, "drop", "drops", drop},
    {Unit::Piece, Dimension::Count, 1.0, "piece", "pieces", counted},
    {Unit::PercentOfMix, Dimension::Share, 1.0, "%", "%", counted},
}};

/// How else people write the units, in lower case, without dots, with single blanks.
struct Spelling {
    std::string_view word;
    Unit unit;
};
constexpr Spelling otherSpellings[] = {
    {"gr", Unit::Gram},
    {"grs", Unit::Gram},
    {"gm", Unit::Gram},
    {"gms", Unit::Gram},
    {"gram", Unit::Gram},
    {"grams", Unit::Gram},
    {"gramme", Unit::Gram},
    {"grammes", Unit::Gram},
    {"kgs", Unit::Kilogram},
    {"kilo", Unit::Kilogram},
    {"kilos", Unit::Kilogram},
    {"kilogram", Unit::Kilogram},
    {"kilograms", Unit::Kilogram},
    {"kilogramme", Unit::Kilogram},
    {"kilogrammes", Unit::Kilogram},
    {"mgs", Unit::Milligram},
    {"milligram", Unit::Milligram},
    {"milligrams", Unit::Milligram},
    {"milligramme", Unit::Milligram},
    {"milligrammes", Unit::Milligram},
    {"ozs", Unit::Ounce},
    {"ounce", Unit::Ounce},
    {"ounces", Unit::Ounce},
    {"lbs", Unit::Pound},
    {"pound", Unit::Pound},
    {"pounds", Unit::Pound},
    {"mls", Unit::Millilitre},
    {"millilitre", Unit::Millilitre},
    {"millilitres", Unit::Millilitre},
    {"milliliter", Unit::Millilitre},
    {"milliliters", Unit::Millilitre},
    {"cc", Unit::Millilitre},
    {"litre", Unit::Litre},
    {"litres", Unit::Litre},
    {"liter", Unit::Litre},
    {"liters", Unit::Litre},
    {"ltr", Unit::Litre},
    {"tsps", Unit::Teaspoon},
    {"teaspoon", Unit::Teaspoon},
    {"teaspoons", Unit::Teaspoon},
    {"tbs", Unit::Tablespoon},
    {"tbl", Unit::Tablespoon},
    {"tblsp", Unit::Tablespoon},
    {"tbsps", Unit::Tablespoon},
    {"tablespoon", Unit::Tablespoon},
    {"tablespoons", Unit::Tablespoon},
    {"c", Unit::Cup},
    {"us cup", Unit::Cup},
    {"us cups", Unit::Cup},
    {"metric teaspoon", Unit::MetricTeaspoon},
    {"metric teaspoons", Unit::MetricTeaspoon},
    {"metric tablespoon", Unit::MetricTablespoon},
    {"metric tablespoons", Unit::MetricTablespoon},
    {"floz", Unit::FluidOunce},
    {"fluid oz", Unit::FluidOunce},
    {"fluid ounce", Unit::FluidOunce},
    {"fluid ounces", Unit::FluidOunce},
    {"us fl oz", Unit::FluidOunce},
    {"pts", Unit::Pint},
    {"pint", Unit::Pint},
    {"pints", Unit::Pint},
    {"qts", Unit::Quart},
    {"quart", Unit::Quart},
    {"quarts", Unit::Quart},
    {"imperial fluid ounce", Unit::ImperialFluidOunce},
    {"imperial fluid ounces", Unit::ImperialFluidOunce},
    {"imperial pint", Unit::ImperialPint},
    {"imperial pints", Unit::ImperialPint},
    {"jigger", Unit::Shot},
    {"jiggers", Unit::Shot},
    {"pc", Unit::Piece},
    {"pcs", Unit::Piece},
    {"pce", Unit::Piece},
    {"percent", Unit::PercentOfMix},
    {"per cent", Unit::PercentOfMix},
    {"% of mix", Unit::PercentOfMix},
    {"% of the mix", Unit::PercentOfMix},
    {"percent of mix", Unit::PercentOfMix},
    {"percent of the mix", Unit::PercentOfMix},
};

/// The most words that one spelling has: "percent of the mix".
constexpr int longestSpelling_words = 4;

const std::unordered_map<std::string, Unit>& unitsBySpelling()
{
    static const auto units = [] {
        std::unordered_map<std::string, Unit> map;
        for (const UnitFacts& unit : facts) {
            map.emplace(lowered(unit.symbol), unit.unit);
            map.emplace(lowered(unit.plural), unit.unit);
        }
        for (const Spelling& spelling : otherSpellings)
            map.emplace(spelling.word, spelling.unit);
        return map;
    }();
    return units;
}

std::optional<Unit> unitSpelled(std::string_view spelling)
{
    // The two spoons are the only units that differ by case.
    if (spelling == "T")
        return Unit::Tablespoon;
    if (spelling == "t")
        return Unit::Teaspoon;
    const auto found = unitsBySpelling().find(lowered(spelling));
    return found == unitsBySpelling().end() ? std::nullopt : std::optional(found->second);
}

/// A word of a unit's name: letters and a dot after them, or a percent sign.
struct Word {
    std::string_view letters;
    std::size_t length;
};

Word wordAt(std::string_view text)
{
    if (text.starts_with('%'))
        return {text.substr(0, 1), 1};
    const std::size_t length = lengthOf(isAsciiLetter, text);
    const bool hasDot = length > 0 && length < text.size() && text[length] == '.';
    return {text.substr(0, length), length + (hasDot ? 1 : 0)};
}

/// Whether a name may end here: not in the middle of a word, in whatever script.
bool isWordEnd(std::string_view rest)
{
    if (rest.empty() || blankAt(rest) > 0)
        return true;
    const char next = rest.front();
    return !isAsciiLetter(next) && !isDigit(next) && static_cast<unsigned char>(next) < 0x80;
}

}  // namespace

std::span<const UnitFacts> allUnits() { return facts; }

const UnitFacts& factsOf(Unit unit)
{
    const UnitFacts& found = facts.at(static_cast<std::size_t>(unit));
    assert(found.unit == unit);
    return found;
}

std::optional<Unit> unitNamed(std::string_view word)
{
    const std::string_view name = trimmed(word);
    const auto prefix = leadingUnit(name);
    return prefix && prefix->length == name.size() ? std::optional(prefix->unit) : std::nullopt;
}

std::optional<UnitPrefix> leadingUnit(std::string_view text)
{
    std::optional<UnitPrefix> longest;
    std::string spelling;
    std::size_t length = 0;
    for (int words = 0; words < longestSpelling_words; ++words) {
        const std::size_t gap = words == 0 ? 0 : blanksAt(text.substr(length));
        // "fl.oz." has no blank after its dot.
        const bool isGlued = gap == 0 && words > 0 && text[length - 1] != '.';
        const Word word = wordAt(text.substr(length + gap));
        if (isGlued || word.length == 0)
            break;
        spelling += words == 0 ? "" : " ";
        spelling += word.letters;
        length += gap + word.length;
        if (word.letters != "%" && !isWordEnd(text.substr(length)) && text[length - 1] != '.')
            break;
        if (const auto unit = unitSpelled(spelling))
            longest = UnitPrefix{*unit, length};
    }
    return longest;
}

}  // namespace firn
