// What a person types: a search, an answer, a temperature, the name of an ingredient.
#include "subjects.h"
#include "usual_catalogue.h"

#include "explain/answer.h"
#include "ingredients/catalogue_filter.h"
#include "ingredients/ingredient_id.h"
#include "ingredients/matching.h"
#include "notebook/search.h"
#include "recipe/text_line.h"
#include "units/temperature.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace firn {

namespace {

RecipeCard cardNamed(const char* title, const char* ingredient, double grams)
{
    Recipe recipe;
    recipe.title = title;
    recipe.tags = {"pear", "summer"};
    recipe.components.front().rows = {{ingredient, {grams, Unit::Gram}, {}, {}}, {"water", {500.0, Unit::Gram}, {}, {}}};
    return withFigures(cardOf(recipe, std::string(title) + ".firn", 0), analyse(recipe, usualCatalogue(), {}));
}

bool isRange(const CardRange& range)
{
    return (range.from || range.to) && std::isfinite(range.from.value_or(0.0)) && std::isfinite(range.to.value_or(0.0))
           && (!range.from || !range.to || *range.from <= *range.to);
}

}  // namespace

bool queryFindsSomeOfAll(std::string_view input)
{
    static const std::array cards{cardNamed("Pear sorbet", "sucrose", 200.0), cardNamed("Crème brûlée", "egg yolk", 90.0),
        unreadableCard("broken.firn", 0, phrase("It is torn."))};
    const std::vector<std::string> tags = tagsFrom(input);
    if (std::ranges::any_of(tags, [](const std::string& tag) { return tag.empty(); }))
        return false;
    const auto query = queryFrom(input);
    if (!query)
        return !english(query.error()).empty();
    const bool isFolded = std::ranges::all_of(query->words,
        [](const std::string& word) { return word.size() > 1 && word.starts_with(' ') && folded(word) == folded(word.substr(1)); });
    const std::vector<std::size_t> places = found(cards, ordered(cards, CardOrder::Title), {*query, Shelf::All, {}});
    return isFolded && std::ranges::all_of(query->ranges, isRange) && places.size() <= cards.size()
           && std::ranges::all_of(places, [](std::size_t place) { return place < cards.size(); });
}

bool answerIsJudged(std::string_view input)
{
    for (const char* unit : {"%", "°C", "g", "mL", "°Bx", "°Bé", "% vol"}) {
        const ExpectedAnswer expected{-2.7, 0.1, unit, 1, 24.0};
        const auto judgement = judge(input, expected);
        if (english(judgement ? judgement->sentence : judgement.error()).empty())
            return false;
        // Who is right stays right where less exactness is asked for.
        const auto isRight = [](const Result<Judgement>& judged) {
            return judged && (judged->verdict == Verdict::Right || judged->verdict == Verdict::RightButNoUnit);
        };
        if (isRight(judgement) && !isRight(judge(input, {expected.value, 2.0 * expected.tolerance, unit, 1, 24.0})))
            return false;
    }
    return true;
}

bool temperatureIsRead(std::string_view input)
{
    const auto inCelsius = temperatureFrom(input, TemperatureUnit::Celsius);
    const auto inFahrenheit = temperatureFrom(input, TemperatureUnit::Fahrenheit);
    if (!inCelsius || !inFahrenheit)
        return !inCelsius && !inFahrenheit && !english(inCelsius.error()).empty() && !english(inFahrenheit.error()).empty();
    if (!std::isfinite(inCelsius->value) || !std::isfinite(inFahrenheit->value))
        return false;
    // With its unit a temperature is the same to everybody; without one it is the same number.
    const double scale = std::abs(inCelsius->value) + 40.0;
    const auto isNear = [scale](double a, double b) { return std::abs(a - b) <= 1e-12 * scale; };
    if (!isNear(inCelsius->value, inFahrenheit->value)
        && !isNear(inCelsius->value, numberIn(TemperatureUnit::Fahrenheit, *inFahrenheit)))
        return false;
    const double half = 0.05 + 1e-12 * scale;
    const auto shown = temperatureFrom(english(phrase("{0}", chosenTemperatureFigure(*inCelsius))), TemperatureUnit::Fahrenheit);
    return shown && std::abs(shown->value - inCelsius->value) <= half;
}

bool nameIsLookedUp(std::string_view input)
{
    constexpr std::size_t atMost = 3;
    const auto* const meant = usualCatalogue().find(input);
    const std::vector<const Ingredient*> offered = usualCatalogue().search(input, atMost);
    if (offered.size() > atMost || std::ranges::find(offered, nullptr) != offered.end())
        return false;
    const NameMatch match = matchName(usualCatalogue(), input, atMost);
    if ((match.recognition == Recognition::Unknown) != !match.ingredient || match.others.size() > atMost
        || std::ranges::find(match.others, nullptr) != match.others.end())
        return false;
    const Row row = rowFromLine(input);
    if (const auto fault = faultOfLine(row); fault && english(*fault).empty())
        return false;
    filtered(usualCatalogue(), {std::string(input), {}, {}, {}});
    const std::string once = folded(input);
    return isIngredientId(ingredientIdFrom(input)) && folded(once) == once && (!meant || !once.empty());
}

}  // namespace firn
