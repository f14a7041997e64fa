#include "syrups/fields.h"

#include "document/typed_numbers.h"
#include "document/typed_sizes.h"
#include "gauges/temperature_unit.h"
#include "gauges/wording.h"
#include "syrup/scales.h"
#include "units/number.h"
#include "units/text.h"

#include <QCoreApplication>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::SyrupFields)
};

/// Hotter than any syrup in a kitchen: what the models reach, they say themselves.
constexpr Celsius hottestTyped{200.0};

/// The number of a quantity, where that is what was typed.
template <class Quantity>
std::optional<double> numberOf(const Typed& typed)
{
    const auto* quantity = std::get_if<Quantity>(&typed);
    return quantity ? std::optional(quantity->value) : std::nullopt;
}

template <class Quantity>
Meaning meaningOf(const QString& unit, Quantity example, Result<Quantity> (*read)(std::string_view))
{
    Meaning meaning;
    meaning.unit = unit;
    meaning.mostDecimals = 2;
    meaning.example = example.value;
    meaning.read = [read](std::string_view text) { return read(text).map([](Quantity quantity) { return quantity.value; }); };
    meaning.take = [](double number) -> Result<Typed> { return Quantity{number}; };
    meaning.numberFor = numberOf<Quantity>;
    return meaning;
}

Result<double> numberOnScale(const SyrupScaleFacts& facts, std::string_view text)
{
    const auto number = leadingNumber(text);
    const bool isPercent = facts.scale == SyrupScale::Brix && number && trimmed(text.substr(number->length)) == "%";
    const bool hasUnit = number && !facts.unit.empty() && trimmed(text.substr(number->length)) == facts.unit;
    return isPercent || hasUnit ? Result<double>(number->value) : countFromText(text);
}

Meaning meaningOn(const SyrupScaleFacts& facts, MassFraction example)
{
    Meaning meaning;
    meaning.name = translatedName(facts.name);
    meaning.mostDecimals = facts.decimals + 1;
    meaning.example = valueOn(facts.scale, example).value_or(0.0);
    meaning.read = [&facts](std::string_view text) { return numberOnScale(facts, text); };
    meaning.take = [&facts](double number) -> Result<Typed> { return strengthFrom(facts.scale, number); };
    meaning.numberFor = [&facts](const Typed& typed) -> std::optional<double> {
        if (const auto* strength = std::get_if<MassFraction>(&typed))
            if (const auto value = valueOn(facts.scale, *strength))
                return *value;
        return std::nullopt;
    };
    return meaning;
}

Meaning meaningOfSolute(Constituent solute, const QString& name, Grams example)
{
    Meaning meaning = meaningOf<Grams>(Words::tr("g"), example, massFromText);
    meaning.name = name;
    meaning.take = [solute](double number) -> Result<Typed> { return SoluteAmount{solute, {number}}; };
    meaning.numberFor = [](const Typed& typed) -> std::optional<double> {
        const auto* amount = std::get_if<SoluteAmount>(&typed);
        return amount ? std::optional(amount->mass.value) : std::nullopt;
    };
    return meaning;
}

}  // namespace

Field strengthField(const QString& name, const QString& label, MassFraction example)
{
    Field field{name, label, {}};
    for (const SyrupScaleFacts& facts : allSyrupScales())
        field.meanings.push_back(meaningOn(facts, example));
    return field;
}

Field massField(const QString& name, const QString& label, Grams example)
{
    return {name, label, {meaningOf<Grams>(Words::tr("g"), example, massFromText)}};
}

Field volumeField(const QString& name, const QString& label, Millilitres example)
{
    return {name, label, {meaningOf<Millilitres>(Words::tr("mL"), example, volumeFromText)}};
}

Field temperatureField(const QString& name, const QString& label, Celsius example)
{
    const auto read = [](std::string_view text) { return temperatureFromText(text, shownTemperatureUnit(), hottestTyped); };
    Meaning meaning = meaningOf<Celsius>({}, example, read);
    meaning.write = [](double temperature_c) { return chosenDegrees({temperature_c}); };
    return {name, label, {std::move(meaning)}};
}

Field soluteField(const QString& name, const QString& label, Grams example)
{
    return {name, label,
        {meaningOfSolute(Constituent::Sucrose, Words::tr("sugar (sucrose)"), example),
            meaningOfSolute(Constituent::Glucose, Words::tr("glucose"), example),
            meaningOfSolute(Constituent::Fructose, Words::tr("fructose"), example),
            meaningOfSolute(Constituent::Lactose, Words::tr("lactose"), example),
            meaningOfSolute(Constituent::Salt, Words::tr("salt"), example)}};
}

Field endOfBoilingField(const QString& name, const QString& label, MassFraction strength, Grams left)
{
    Field field = strengthField(name, label, strength);
    Meaning mass = meaningOf<Grams>(Words::tr("g"), left, massFromText);
    mass.name = Words::tr("Mass that is left");
    field.meanings.push_back(std::move(mass));
    return field;
}

}  // namespace firn::app
