#include "tasting/triangle_test.h"

#include <cmath>
#include <fmt/format.h>

namespace firn {

namespace {

constexpr double p = 1.0 / 3.0;

/// In how many ways k of n can be right, as a natural logarithm.
double lnWays(double n, double k) { return std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0); }

/// In percent, as a figure.
Symbol chanceSymbol(std::size_t tasters, std::size_t right, std::string subscript = {})
{
    return {"P", std::move(subscript), 100.0 * chanceByGuessing(tasters, right), "%",
        phrase("share of such tests in which {0} or more of {1} tasters are right by guessing", Figure{double(right), 0},
            Figure{double(tasters), 0})};
}

Symbol waysSymbol(std::size_t tasters, std::size_t right)
{
    constexpr double largestInDigits = 1e9;
    const double ways = std::round(std::exp(lnWays(double(tasters), double(right))));
    return {"C", fmt::format("{}", right), ways, "", phrase("ways in which {0} can be right", Figure{double(right), 0}), {},
        ways < largestInDigits ? std::optional(0) : std::nullopt};
}

void recordChance(Working& working, std::size_t tasters, std::size_t right, const Symbol& chance)
{
    const Formula guessed = Formula(1.0) / Formula(3.0), missed = Formula(2.0) / Formula(3.0);
    std::vector<SeriesTerm> terms;
    for (std::size_t k = right; k <= tasters; ++k)
        terms.push_back(
            {fmt::format("k = {}", k), waysSymbol(tasters, k) * power(guessed, double(k)) * power(missed, double(tasters - k))});
    const Symbol k{"k", "", 0.0, "", phrase("right answers")};
    const Symbol ways{"C", "k", 0.0, "", phrase("ways in which k of {0} tasters can be right", Figure{double(tasters), 0})};
    working
        .found(chance,
            oneHundredPercent() * series("k", ways * power(guessed, k) * power(missed, double(tasters) - k), std::move(terms)),
            Source::TriangleTest)
        .range = phrase("Three cups, two of them alike: who guesses finds the odd one in one of three tests.");
}

void recordLeastRight(Working& working, std::size_t tasters, std::size_t least)
{
    const Symbol chance = chanceSymbol(tasters, least, "least");
    const Symbol result{"k", "least", double(least), "", phrase("right answers that show a difference"), {}, 0};
    recordChance(working, tasters, least, chance);
    working
        .solved(result, function("P", {result}, phrase("share of such tests in which so many or more are right by guessing")),
            chance, Source::TriangleTest,
            phrase("The least number that is reached by guessing in at most {0} % of such tests; one fewer is reached in {1} %.",
                Figure{100.0 * usualRisk, 0}, Figure{100.0 * chanceByGuessing(tasters, least - 1), 1}))
        .uncertainty = phrase("At this risk, one test in twenty shows a difference where there is none.");
}

}  // namespace

double chanceByGuessing(std::size_t tasters, std::size_t right)
{
    const double n = double(tasters);
    double chance = 0.0;
    for (std::size_t k = right; k <= tasters; ++k) {
        const double found = double(k);
        chance += std::exp(lnWays(n, found) + found * std::log(p) + (n - found) * std::log1p(-p));
    }
    return chance;
}

std::optional<std::size_t> leastRight(std::size_t tasters, double risk)
{
    for (std::size_t right = 0; right <= tasters; ++right)
        if (chanceByGuessing(tasters, right) <= risk)
            return right;
    return std::nullopt;
}

Result<Sentence> triangleTest(std::size_t tasters, std::size_t right, Workings* workings)
{
    if (tasters > mostTasters)
        return failure(phrase("More than {0} tasters. Correct the number.", Figure{double(mostTasters), 0}));
    if (right > tasters)
        return failure(phrase("{0} right answers of {1} tasters cannot be. Correct one of them.", Figure{double(right), 0},
            Figure{double(tasters), 0}));
    const auto least = leastRight(tasters);
    if (!least)
        return failure(phrase("Too few tasters: even if all of them were right, it could be guessing. Ask at least three."));
    if (workings) {
        recordChance(workings->of(figureOfChance), tasters, right, chanceSymbol(tasters, right));
        recordLeastRight(workings->of(figureOfLeastRight), tasters, *least);
    }
    const Figure chance{100.0 * chanceByGuessing(tasters, right), 1};
    if (right >= *least)
        return phrase("A difference was shown. Guessing gives as many right answers in {0} % of such tests.", chance);
    return phrase("A difference was not shown. {0} right answers are needed; guessing gives {1} in {2} % of such tests.",
        Figure{double(*least), 0}, Figure{double(right), 0}, chance);
}

}  // namespace firn
