#include "exchange/nutrition_table.h"

#include "mix/mix.h"
#include "solution/alcohol_by_volume.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

using enum Constituent;

constexpr std::array otherCarbohydrates = {
    Oligosaccharides, Dextrins, Sorbitol, Xylitol, Erythritol, Maltitol, Glycerol, Starch, Hydrocolloid, Acid, Other};

constexpr double closes_g = 1.0;            // how far a source's constituents may be from 100 g
constexpr double rounding_g = 0.1;          // of sums of figures printed to one or two decimals
constexpr double saltPerSodium = 2.5;       // Regulation (EU) 1169/2011, annex I, point 11
constexpr double mostSaltOfNature_g = 0.3;  // "low salt" per 100 g, Regulation (EC) 1924/2006, annex, from memory
constexpr double milligramsPerGram = 1000.0;

Figure grams(double value_g) { return {value_g, value_g < 10.0 ? 2 : 1}; }

/// Fills the amounts step by step; each step that guesses says so.
class Composer {
public:
    Composer(const NutritionTable& table, std::vector<Sentence>& guessed)
        : m_table(table)
        , m_guessed(guessed)
    {
        for (const ConstituentFacts& facts : allConstituents())
            amounts[facts.constituent] = {table[facts.constituent].value_or(0.0)};
    }

    Amounts amounts;

    void tellSugarsApart(SugarsOf sugarsOf)
    {
        const double single_g = sumOf(sugarKinds);
        const double total_g = m_table.sugars_g.value_or(single_g);
        if (total_g > single_g + rounding_g && single_g > 0.0) {
            for (const Constituent sugar : sugarKinds)
                amounts[sugar] = amounts[sugar] * (total_g / single_g);
            guess(phrase("The single sugars add up to {0} g and all sugars to {1} g: they are raised in proportion.",
                grams(single_g), grams(total_g)));
        } else if (total_g > single_g && single_g == 0.0 && sugarsOf == SugarsOf::Milk) {
            amounts[Lactose] = {total_g};
            guess(phrase("Sugars, {0} g, are not told apart: taken as lactose, as in milk.", grams(total_g)));
        } else if (total_g > single_g && single_g == 0.0) {
            amounts[Glucose] = amounts[Fructose] = {total_g / 2.0};
            guess(phrase("Sugars, {0} g, are not told apart: taken as half glucose, half fructose.", grams(total_g)));
        } else if (single_g > total_g + rounding_g) {
            guess(phrase("The single sugars add up to {0} g, more than the {1} g of all sugars: the single ones are kept.",
                grams(single_g), grams(total_g)));
        }
    }

    void tellSaltFromMinerals()
    {
        if (m_table.sodium_mg && !m_table[Salt]) {
            const double salt_g = *m_table.sodium_mg / milligramsPerGram * saltPerSodium;
            const bool isOfNature = m_table.ash_g && (salt_g <= mostSaltOfNature_g || salt_g > *m_table.ash_g);
            if (!isOfNature && salt_g > 0.0) {
                amounts[Salt] = {salt_g};
                guess(phrase("Sodium, {0} mg, is taken for {1} g of salt.", Figure{*m_table.sodium_mg, 0}, grams(salt_g)));
            }
        }
        if (m_table.ash_g)
            amounts[Minerals] = {std::max(amounts[Minerals].value, *m_table.ash_g - amounts[Salt].value)};
    }

    void accountForCarbohydrate()
    {
        if (!m_table.carbohydrate_g)
            return;
        const double fibre_g = carbohydrateKind() == CarbohydrateKind::WithFibre ? amounts[Fibre].value : 0.0;
        const double parts_g = sumOf(sugarKinds) + sumOf(otherCarbohydrates) + fibre_g;
        const double left_g = *m_table.carbohydrate_g - parts_g;
        if (left_g > 0.0) {
            amounts[Other] += {left_g};
            if (left_g > rounding_g)
                guess(phrase("Carbohydrate that is not identified, {0} g, counts as other solids.", grams(left_g)));
        } else if (left_g < -rounding_g) {
            guess(phrase("The parts of the carbohydrate add up to {0} g, more than its {1} g: the parts are kept.", grams(parts_g),
                grams(*m_table.carbohydrate_g)));
        }
    }

    /// Once the other constituents are known: what is left beside them is water, or, where that is given, other solids.
    std::optional<Sentence> weighAlcohol()
    {
        if (!m_table.alcoholByVolume_percent)
            return std::nullopt;
        const auto ethanol = ethanolIn100g(*m_table.alcoholByVolume_percent, amounts, m_table[Water] ? Other : Water);
        if (!ethanol)
            return ethanol.error();
        amounts[Ethanol] = *ethanol;
        guess(phrase("Alcohol, {0} % vol, is {1} g by the density of the whole.", Figure{*m_table.alcoholByVolume_percent, 1},
            grams(ethanol->value)));
        return std::nullopt;
    }

    void close()
    {
        const double left_g = 100.0 - amounts.total().value;
        if (!m_table[Water]) {
            amounts[Water] = {std::max(0.0, left_g)};
            guess(phrase("Water is not given: taken as what is left of 100 g, {0} g.", grams(amounts[Water].value)));
        } else if (left_g > closes_g) {
            amounts[Other] += {left_g};
            guess(phrase("The parts add up to {0} g: what is missing of 100 g, {1} g, counts as other solids.",
                grams(100.0 - left_g), grams(left_g)));
        }
    }

private:
    const NutritionTable& m_table;
    std::vector<Sentence>& m_guessed;

    void guess(Sentence sentence) { m_guessed.push_back(std::move(sentence)); }

    /// As the table says, or else as the parts come nearer to 100 g.
    CarbohydrateKind carbohydrateKind()
    {
        using enum CarbohydrateKind;
        const double fibre_g = amounts[Fibre].value;
        if (m_table.carbohydrateKind || fibre_g <= rounding_g)
            return m_table.carbohydrateKind.value_or(WithoutFibre);
        double besides_g = *m_table.carbohydrate_g;
        for (const Constituent part : {Water, Fat, Protein, Minerals, Salt, Ethanol})
            besides_g += amounts[part].value;
        if (m_table[Water] && std::abs(besides_g - 100.0) < std::abs(besides_g + fibre_g - 100.0)) {
            guess(phrase("The carbohydrate is taken to hold the fibre, because the parts then come nearer to 100 g."));
            return WithFibre;
        }
        guess(phrase("The carbohydrate is taken not to hold the fibre, as on labels of the European Union."));
        return WithoutFibre;
    }

    template <std::size_t count>
    double sumOf(const std::array<Constituent, count>& kinds) const
    {
        double sum_g = 0.0;
        for (const Constituent kind : kinds)
            sum_g += amounts[kind].value;
        return sum_g;
    }
};

bool saysNothing(const NutritionTable& table)
{
    return !table.sugars_g && !table.carbohydrate_g && !table.ash_g && !table.alcoholByVolume_percent
           && std::ranges::none_of(table.constituents_g, [](const auto& amount_g) { return amount_g.has_value(); });
}

}  // namespace

Sentence tooMuchEnergy()
{
    return phrase(
        "the energy is more than 100 g of fat have, {0} kcal. Check the number and its unit.", Figure{mostEnergy_kcal, 0});
}

Result<Amounts> amountsFrom(const NutritionTable& table, SugarsOf sugarsOf, std::vector<Sentence>& guessed)
{
    if (saysNothing(table))
        return failure(phrase("nothing is said of what it is made of. Give at least water, fat, protein and sugars."));
    Composer composer(table, guessed);
    composer.tellSugarsApart(sugarsOf);
    composer.tellSaltFromMinerals();
    composer.accountForCarbohydrate();
    if (auto fault = composer.weighAlcohol())
        return failure(std::move(*fault));
    composer.close();
    if (const double total_g = composer.amounts.total().value; total_g > 100.0 + closes_g)
        return failure(
            phrase("the parts of 100 g add up to {0} g. Correct them so that they add up to 100 g.", Figure{total_g, 1}));
    return composer.amounts;
}

}  // namespace firn
