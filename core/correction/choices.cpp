#include "correction/choices.h"

#include "analysis/sweetness.h"
#include "correction/causes.h"
#include "correction/measured_mix.h"
#include "readings/readings.h"

#include <algorithm>
#include <cmath>

namespace firn {

namespace {

constexpr double mostOfMix = 1.0;  // times the mix's mass: more is a new mix, not a correction (judgement)

// What one begins to notice, each counted as 1: 5 % more mass and less flavour, 1 % of sucrose in sweetness, a tenth of a percent of acid, half a
// percent of alcohol, 0.2 K of freezing point (half a degree of serving temperature). Judgement.
constexpr double massStep = 0.05;
constexpr double sweetnessStep_percent = 1.0;
constexpr MassFraction acidStep{0.001};
constexpr MassFraction alcoholStep{0.005};
constexpr KelvinDifference freezingStep{0.2};

/// A row of what is added, for one gram of the whole addition.
struct Part {
    Row row;
    Composition composition;
    double share;
};

struct Candidate {
    std::string name;
    std::vector<Part> parts;
    bool isOfRecipe;  // its absence would be noticed

    Mix gram() const
    {
        Mix mix;
        for (const Part& part : parts)
            mix.add(part.composition, {part.share});
        return mix;
    }

    /// To add this much of it.
    std::vector<Row> rows(Grams added) const
    {
        std::vector<Row> rows;
        for (const Part& part : parts) {
            rows.push_back(part.row);
            rows.back().amount.value = added.value * part.share;
        }
        return rows;
    }
};

Part partOf(const Ingredient& ingredient, double share)
{
    return {{ingredient.name, {0.0, Unit::Gram}, {}, {}}, ingredient.composition, share};
}

/// Liquids, fruit and sugars. What thickens, whips or enriches would change more than the strength; so would eggs.
bool dilutesOrSweetens(const Ingredient& ingredient, const Composition& composition)
{
    constexpr double mostly = 0.8;  // keeps milk and juice, leaves out cream: judgement
    Mix mix;
    mix.add(composition, {100.0});
    const Grams carried = mix[Constituent::Water] + sugars(mix) + mix[Constituent::Ethanol];
    return shareOf(carried, mix).value >= mostly
           && std::ranges::find(ingredient.allergens, Allergen::Egg) == ingredient.allergens.end();
}

class Candidates {
public:
    explicit Candidates(const Catalogue& catalogue)
        : m_catalogue(catalogue)
    {
    }

    void addRow(const Row& row, const PreparedRow& prepared)
    {
        const auto composition = compositionOf(row, prepared);
        if (!composition || prepared.analysis.mass.value <= 0.0 || !dilutesOrSweetens(*prepared.ingredient, *composition)
            || isThere(prepared.ingredient->name))
            return;
        Part part{{row.ingredient, {0.0, Unit::Gram}, {}, {}, row.measuredBrix}, *composition, 1.0};
        m_all.push_back({prepared.ingredient->name, {std::move(part)}, true});
    }

    void addCommon(std::string_view id)
    {
        if (const Ingredient* ingredient = m_catalogue.find(id); ingredient && !isThere(ingredient->name))
            m_all.push_back({ingredient->name, {partOf(*ingredient, 1.0)}, false});
    }

    void addSyrup()
    {
        constexpr double strength =
            0.65;  // keeps at room temperature, just below saturation at 20 °C: Bubnik and Kadlec 1995, 66.7 %
        const Ingredient* sugar = m_catalogue.find("sucrose");
        const Ingredient* water = m_catalogue.find("water");
        if (sugar && water)
            m_all.push_back({"Sugar syrup, 65 °Bx", {partOf(*sugar, strength), partOf(*water, 1.0 - strength)}, false});
    }

    const std::vector<Candidate>& all() const { return m_all; }

private:
    bool isThere(std::string_view name) const { return std::ranges::find(m_all, name, &Candidate::name) != m_all.end(); }

    const Catalogue& m_catalogue;
    std::vector<Candidate> m_all;
};

Figure tenths(double value) { return {value, 1}; }
Figure grams(Grams mass) { return {mass.value, mass.value < 10.0 ? 1 : 0}; }

std::vector<Sentence> effectsOf(const MixFigures& before, const MixFigures& after)
{
    std::vector<Sentence> effects;
    effects.push_back(phrase("New total {0} g (now {1} g).", grams(after.mass), grams(before.mass)));
    effects.push_back(phrase(
        "As sweet as {0} % sucrose (was {1} %).", tenths(after.sweetness_percentSucrose), tenths(before.sweetness_percentSucrose)));
    if (std::abs((after.acid - before.acid).value) >= acidStep.value)
        effects.push_back(phrase("{0} % acid (was {1} %).", tenths(percent(after.acid)), tenths(percent(before.acid))));
    if (std::abs((after.alcohol - before.alcohol).value) >= alcoholStep.value)
        effects.push_back(
            phrase("{0} % alcohol by mass (was {1} %).", tenths(percent(after.alcohol)), tenths(percent(before.alcohol))));
    if (before.freezingPoint && after.freezingPoint)
        effects.push_back(phrase("Begins to freeze at {0} (was {1}).", temperatureFigure(*after.freezingPoint, 2),
            temperatureFigure(*before.freezingPoint, 2)));
    if (before.textureClass == TextureClass::Unfrozen)
        return effects;
    const std::string now(nameOf(before.textureClass));
    const std::string then(nameOf(after.textureClass));
    const std::string firmnessNow(nameOf(before.firmness));
    const std::string firmnessThen(nameOf(after.firmness));
    if (now == then)
        effects.push_back(phrase("Still {0}. Served, it is {1} (was {2}).", then, firmnessThen, firmnessNow));
    else
        effects.push_back(phrase("Becomes {0} instead of {1}. Served, it is {2} (was {3}).", then, now, firmnessThen, firmnessNow));
    return effects;
}

/// How much an addition disturbs: the more mass, and the farther sweetness, sourness, alcohol and freezing point end from the intended, the more.
double disturbanceOf(const MixFigures& before, const MixFigures& after, const MixFigures& intended)
{
    double sum = (after.mass / before.mass - 1.0) / massStep
                 + std::abs(after.sweetness_percentSucrose - intended.sweetness_percentSucrose) / sweetnessStep_percent
                 + std::abs((after.acid - intended.acid).value) / acidStep.value
                 + std::abs((after.alcohol - intended.alcohol).value) / alcoholStep.value;
    if (after.freezingPoint && intended.freezingPoint)
        sum += std::abs((*after.freezingPoint - *intended.freezingPoint).value) / freezingStep.value;
    return sum;
}

/// How far an error of the reading moves the amount that reaches the target: its effect on the corrected mix over that of one gram more.
Grams uncertaintyOf(Grams amount, const Mix& now, const Mix& gram, const Wanted& wanted)
{
    const MassFraction found = shareOf(sugars(now), now);
    if (wanted.nowSugars_sd.value <= 0.0)
        return {};
    auto other = measuredMix(now, found + wanted.nowSugars_sd);
    if (!other)
        other = measuredMix(now, found - wanted.nowSugars_sd);
    if (!other)
        return {};
    const double exact = excessOver(wanted.target, withAdded(now, gram, amount));
    const double ofReading = excessOver(wanted.target, withAdded(*other, gram, amount)) - exact;
    const Grams little = amount * 1e-3;
    const double perGram = (excessOver(wanted.target, withAdded(now, gram, amount + little)) - exact) / little.value;
    return {std::abs(ofReading / perGram)};
}

bool isDry(const Mix& gram)
{
    constexpr double mostWater = 0.15;  // takes in hydrates, leaves out syrups
    return shareOf(gram[Constituent::Water] + gram[Constituent::Ethanol], gram).value < mostWater;
}

bool isReached(const StrengthTarget& target, const Mix& mix)
{
    constexpr double rounding = 1e-9;
    return std::abs(excessOver(target, mix)) <= rounding;
}

/// Why something of the recipe is no choice; nothing where nobody would expect it to be one.
std::optional<Sentence> whyNot(const Candidate& candidate, const Mix& now, const Wanted& wanted)
{
    const Mix gram = candidate.gram();
    const double ownSugars_percent = percent(shareOf(sugars(gram), gram));
    constexpr double plainSugar_percent = 50.0;
    const bool tooWeak = excessOver(wanted.target, now) < 0.0;
    if (!candidate.isOfRecipe || ownSugars_percent <= 0.0 || (!tooWeak && ownSugars_percent > plainSugar_percent))
        return std::nullopt;
    return tooWeak ? phrase("“{0}” is too weak for this: it contains only {1} % sugar.", candidate.name, tenths(ownSugars_percent))
                   : phrase("“{0}” is too sweet for this: it contains {1} % sugar.", candidate.name, tenths(ownSugars_percent));
}

}  // namespace

MixFigures figuresOf(const Mix& mix, const TextureInput& input)
{
    MixFigures figures;
    figures.mass = mix.mass();
    figures.sugars = shareOf(sugars(mix), mix);
    figures.acid = shareOf(mix[Constituent::Acid], mix);
    figures.alcohol = shareOf(mix[Constituent::Ethanol], mix);
    if (const auto reading = readings(mix, {20.0}))
        figures.refractometer_brix = reading->refractometer_brix;
    figures.sweetness_percentSucrose = sweetnessAsSucrose_percent(mix);
    const FreezingCurve curve = freezingCurve(mix);
    if (curve.freezingPoint && input.process != Process::Unfrozen)
        figures.freezingPoint = curve.freezingPoint->temperature;
    const Texture found = texture(mix, curve, input);
    figures.textureClass = found.textureClass;
    figures.firmness = found.firmness;
    return figures;
}

Choices choicesFor(
    const Component& component, const PreparedComponent& prepared, const Catalogue& catalogue, const Mix& now, const Wanted& wanted)
{
    if (isReached(wanted.target, now))
        return {{}, {phrase("The mix is already on target.")}};
    Candidates candidates(catalogue);
    for (std::size_t i = 0; i < component.rows.size(); ++i)
        candidates.addRow(component.rows[i], prepared.rows[i]);
    candidates.addCommon("sucrose");
    candidates.addCommon("dextrose-monohydrate");
    candidates.addSyrup();
    candidates.addCommon("water");
    if (now.milkSolidsNotFat.value > 0.0)
        candidates.addCommon("whole-milk");

    Choices choices;
    const MixFigures before = figuresOf(now, wanted.texture);
    const Grams most = now.mass() * mostOfMix;
    for (const Candidate& candidate : candidates.all()) {
        const Mix gram = candidate.gram();
        Working working;
        const auto amount = wanted.mixWith ? amountReaching(
                                wanted.target, [&](Grams added) { return wanted.mixWith(candidate.rows(added)); }, most)
                                           : amountReaching(wanted.target, now, gram, most, &working);
        if (!amount) {
            if (auto reason = whyNot(candidate, now, wanted))
                choices.leftOut.push_back(std::move(*reason));
            continue;
        }
        CorrectionChoice choice;
        choice.name = candidate.name;
        choice.rows = candidate.rows(*amount);
        choice.added = *amount;
        choice.working = std::move(working);
        choice.added_sd = uncertaintyOf(*amount, now, gram, wanted);
        choice.mix = wanted.mixWith ? wanted.mixWith(choice.rows) : withAdded(now, gram, *amount);
        choice.after = figuresOf(choice.mix, wanted.texture);
        if (choice.after.textureClass != before.textureClass && choice.after.textureClass != wanted.intended.textureClass) {
            choices.leftOut.push_back(phrase("“{0}” would change the kind of dessert. {1} g of it would make it {2}.",
                candidate.name, grams(*amount), std::string(nameOf(choice.after.textureClass))));
            continue;
        }
        choice.disturbance = disturbanceOf(before, choice.after, wanted.intended);
        choice.effects = effectsOf(before, choice.after);
        if (isDry(gram))
            choice.effects.push_back(
                phrase("Dissolve it in a little of the mix, warmed, and read again when all is mixed and cool."));
        choices.ranked.push_back(std::move(choice));
    }
    if (choices.ranked.empty())
        choices.leftOut.push_back(
            phrase("Nothing brings it there without adding more than the mix weighs. Start a new mix instead."));
    std::ranges::stable_sort(choices.ranked, {}, &CorrectionChoice::disturbance);
    return choices;
}

}  // namespace firn
