#include "analysis/cautions.h"

#include <algorithm>
#include <array>
#include <string>

namespace firn {

namespace {

using Ingredients = std::vector<const Ingredient*>;

bool anyHas(const Ingredients& ingredients, Hazard hazard)
{
    return std::any_of(ingredients.begin(), ingredients.end(),
        [hazard](const Ingredient* i) { return std::find(i->hazards.begin(), i->hazards.end(), hazard) != i->hazards.end(); });
}

/// Names in capitals, so that they stand out without bold type too (Regulation (EU) 1169/2011, Article 21 asks for emphasis).
std::string allergenNames(const Ingredients& ingredients)
{
    std::array<bool, static_cast<std::size_t>(Allergen::Lupin) + 1> isPresent{};
    for (const Ingredient* ingredient : ingredients) {
        for (const Allergen allergen : ingredient->allergens)
            isPresent[static_cast<std::size_t>(allergen)] = true;
    }
    std::string names;
    for (std::size_t i = 0; i < isPresent.size(); ++i) {
        if (!isPresent[i])
            continue;
        names += names.empty() ? "" : ", ";
        for (const char c : keyOf(static_cast<Allergen>(i)))
            names += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return names;
}

void addHazards(std::vector<Caution>& cautions, const Ingredients& ingredients)
{
    // Thresholds and wording after public guidance; each is a default that a local code can override.
    struct Words {
        Hazard hazard;
        Severity severity;
        std::string_view text;
    };
    static constexpr std::array words{
        Words{Hazard::ToxicLeaves, Severity::Danger, "Rhubarb: stalks only, the leaves are poisonous."},
        Words{Hazard::Tonka, Severity::Danger,
            "Tonka bean is not a permitted food everywhere (not in the US). Your local food code decides."},
        Words{Hazard::Elderberry, Severity::Danger, "Elderberries must be cooked; no leaves or stems."},
        Words{Hazard::FruitKernels, Severity::Warning, "Stone fruit: no kernels and no leaves in the mix."},
        Words{Hazard::InfantHoney, Severity::Warning, "Honey is not for infants under 12 months."},
        Words{Hazard::WholeNuts, Severity::Note, "Whole nuts and hard pieces: choking risk for small children."},
    };
    for (const Words& entry : words) {
        if (anyHas(ingredients, entry.hazard))
            cautions.push_back({entry.severity, phrase(entry.text)});
    }
}

bool hasEgg(const std::vector<RowAnalysis>& rows, const Ingredients& ingredients)
{
    return std::ranges::any_of(rows, [&](const RowAnalysis& row) {
        const auto ingredient = std::ranges::find(ingredients, row.ingredientId, &Ingredient::id);
        return ingredient != ingredients.end() && anyHas({*ingredient}, Hazard::RawEgg);
    });
}

/// How an egg is made hot enough. The figures are pairs that a law or an adviser names, and nothing holds between them.
enum class EggHeated { No, ToHomeAdvice, AsTheLawAsks };

constexpr double homeAdvice_c = 71.0;  // US extension texts: 160 °F (71.1 °C), by thermometer, said as 71 °C

EggHeated heatedBy(const Step& step)
{
    struct Hold {
        double temperature_c, minutes;
    };
    static constexpr std::array lawful{Hold{68.3, 30.0}, Hold{79.4, 25.0 / 60.0}};  // 21 CFR 135.3, frozen-dessert mix
    if (!step.temperature_c)
        return EggHeated::No;
    if (std::ranges::any_of(lawful, [&](const Hold& hold) {
            return *step.temperature_c >= hold.temperature_c && step.minutes && *step.minutes >= hold.minutes;
        }))
        return EggHeated::AsTheLawAsks;
    return *step.temperature_c >= homeAdvice_c ? EggHeated::ToHomeAdvice : EggHeated::No;
}

/// One caution for all components with egg, by the one that was heated least.
void addEgg(std::vector<Caution>& cautions, const Recipe& recipe, const Analysis& analysis, const Ingredients& ingredients)
{
    if (!anyHas(ingredients, Hazard::RawEgg))
        return;
    // Egg of a linked recipe is in no row here, and nothing is known of its steps.
    auto least = EggHeated::AsTheLawAsks;
    Step hottest;
    bool isInRow = false;
    for (std::size_t i = 0; i < analysis.components.size() && i < recipe.components.size(); ++i) {
        if (!hasEgg(analysis.components[i], ingredients))
            continue;
        isInRow = true;
        auto best = EggHeated::No;
        Step step;
        for (const Step& each : recipe.components[i].steps) {
            if (heatedBy(each) > best) {
                best = heatedBy(each);
                step = each;
            }
        }
        if (best <= least) {
            least = best;
            hottest = step;
        }
    }
    if (!isInRow || !recipe.linked.empty() || least == EggHeated::No) {
        cautions.push_back({Severity::Danger,
            phrase(
                "Raw or lightly cooked egg can carry salmonella. Use pasteurised egg, or heat the base to 71 °C (160 °F) and check "
                "with a thermometer; US law holds such a mix at 68.3 °C for 30 min or at 79.4 °C for 25 s (21 CFR 135.3). Not for "
                "young children, older people, pregnant or ill guests. Your local food code decides.")});
        return;
    }
    const Figure temperature{*hottest.temperature_c, 1};
    cautions.push_back({Severity::Warning,
        least == EggHeated::AsTheLawAsks ? phrase(
            "Egg: the step at {0} °C for {1} min is as long and hot as US law asks of such a mix (68.3 °C for 30 min, or 79.4 °C "
            "for 25 s: 21 CFR 135.3), where all of it gets so hot. Check with a thermometer; your local food code decides.",
            temperature, Figure{hottest.minutes.value_or(0.0), 1})
                                         : phrase("Egg: the step at {0} °C reaches the 71 °C (160 °F) advised at home. US law also "
                                                  "asks for time: 68.3 °C for 30 min, or "
                                                  "79.4 °C for 25 s (21 CFR 135.3). Check with a thermometer; your local food code "
                                                  "decides.",
                                             temperature)});
}

void addAlcohol(std::vector<Caution>& cautions, const Analysis& analysis)
{
    constexpr double mentioned_percentByVolume = 0.5;  // from here some laws ask for a notice
    constexpr double limited_percentByVolume = 5.0;
    const double abv = analysis.alcohol_percentByVolume;
    if (abv > mentioned_percentByVolume)
        cautions.push_back({Severity::Danger, phrase("Contains alcohol: {0} % vol of the mix, {1} g in 100 g; freezing does not "
                                                     "remove it. Not for children, in pregnancy or "
                                                     "before driving; licence and age rules apply.",
                                                  Figure{abv, 1}, Figure{percent(analysis.shares.alcohol), 1})});
    if (abv > limited_percentByVolume)
        cautions.push_back(
            {Severity::Warning, phrase("Some places do not allow frozen desserts above 5 % vol. Your local code decides.")});
}

void addRowsAndSteps(std::vector<Caution>& cautions, const Analysis& analysis)
{
    for (const auto& rows : analysis.components) {
        for (const RowAnalysis& row : rows) {
            if (row.problem)
                cautions.push_back({Severity::Warning, *row.problem});
        }
    }
    for (const auto& steps : analysis.steps) {
        for (const StepOutcome& step : steps) {
            if (step.problem)
                cautions.push_back({Severity::Warning, *step.problem});
        }
    }
}

void addComposition(std::vector<Caution>& cautions, const Analysis& analysis)
{
    const Mix& mix = analysis.mix;
    if (mix[Constituent::Glycerol].value > 0.0)
        cautions.push_back({Severity::Danger, phrase("Glycerol in slush and granita: not for children under 7, and little for "
                                                     "those under 10 (UK advice 2025). Use the least "
                                                     "that works.")});
    const Grams polyols =
        mix[Constituent::Sorbitol] + mix[Constituent::Xylitol] + mix[Constituent::Erythritol] + mix[Constituent::Maltitol];
    if (percent(shareOf(polyols, mix)) > 10.0)
        cautions.push_back({Severity::Warning, phrase("More than 10 % sugar alcohols: excessive consumption may produce laxative "
                                                      "effects (Regulation (EU) 1169/2011, Annex III).")});
    const bool isFrozen = analysis.texture.process != Process::Unfrozen;
    if (isFrozen && analysis.freezing.freezingPoint && analysis.freezing.freezingPoint->isExtrapolated)
        cautions.push_back(
            {Severity::Note, phrase("This mix is stronger than the tables that Firn uses. Its freezing point is extrapolated.")});
}

}  // namespace

std::vector<Caution> cautionsFor(const Recipe& recipe, const Analysis& analysis, const Ingredients& ingredients)
{
    std::vector<Caution> cautions;
    const bool hasRows =
        std::any_of(recipe.components.begin(), recipe.components.end(), [](const Component& c) { return !c.rows.empty(); });
    if (!hasRows)
        return {{Severity::Note, phrase("The recipe is empty. Type an ingredient, or paste a recipe.")}};
    addEgg(cautions, recipe, analysis, ingredients);
    addHazards(cautions, ingredients);
    addAlcohol(cautions, analysis);
    addRowsAndSteps(cautions, analysis);
    addComposition(cautions, analysis);
    if (const std::string names = allergenNames(ingredients); !names.empty())
        cautions.push_back({Severity::Warning,
            phrase("Contains {0}. Check every label and the risk of cross-contact (shared scoops, grinders).", names)});
    std::stable_sort(cautions.begin(), cautions.end(), [](const Caution& a, const Caution& b) { return a.severity < b.severity; });
    return cautions;
}

}  // namespace firn
