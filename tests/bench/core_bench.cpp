// How long an analysis takes, and how much longer the same curve takes by root finding. Ratios carry over to other machines, times do not.

#include "analysis/analysis.h"
#include "compare/comparison.h"
#include "exchange/catalogue_json.h"
#include "exchange/files.h"
#include "explain/explain.h"
#include "readings/measurement.h"
#include "solution/water_activity.h"

#include <benchmark/benchmark.h>
#include <boost/math/tools/roots.hpp>
#include <chrono>

namespace {

using namespace firn;

std::string catalogueText() { return *contentsOf(std::filesystem::path(FIRN_SOURCE_DIR "/resources/catalogue.json")); }

const Catalogue& catalogue()
{
    static const Catalogue all = *catalogueFromJson(catalogueText());
    return all;
}

/// Twenty rows of an ice cream with everything in it that costs time: milk, egg, several sugars, spirit, salt, acid.
Recipe twentyRows()
{
    Recipe recipe;
    const auto add = [&](const char* ingredient, double grams) {
        recipe.components.front().rows.push_back({ingredient, {grams, Unit::Gram}, {}, {}});
    };
    add("whole milk", 500);
    add("heavy cream", 180);
    add("skim milk powder", 35);
    add("egg yolk", 60);
    add("sucrose", 110);
    add("glucose", 25);
    add("fructose", 8);
    add("trehalose", 12);
    add("glucose syrup", 20);
    add("honey", 10);
    add("strawberry", 120);
    add("pear", 60);
    add("lemon juice", 10);
    add("gin", 12);
    add("salt", 1);
    add("citric-acid", 0.5);
    add("guar gum", 1);
    add("gelatin", 2);
    add("hazelnut", 30);
    add("water", 40);
    return recipe;
}

void analyseTwentyRows(benchmark::State& state)
{
    const Recipe recipe = twentyRows();
    const Conditions conditions;
    for (auto _ : state)
        benchmark::DoNotOptimize(analyse(recipe, catalogue(), conditions));
}
BENCHMARK(analyseTwentyRows)->Unit(benchmark::kMicrosecond);

/// The same with the working of every figure, and one derivation taken out: what opening a derivation costs.
void explainTwentyRows(benchmark::State& state)
{
    const Recipe recipe = twentyRows();
    const Conditions conditions;
    for (auto _ : state)
        benchmark::DoNotOptimize(explain("freezing_point_c", recipe, catalogue(), conditions));
}
BENCHMARK(explainTwentyRows)->Unit(benchmark::kMicrosecond);

/// Two recipes of twenty rows of which so many differ: what an edit costs while they are compared.
void compareTwentyRows(benchmark::State& state)
{
    Recipe other = twentyRows();
    for (std::size_t row = 0; row < std::size_t(state.range(0)); ++row)
        other.components.front().rows[2 * row].amount.value *= 1.2;
    const std::vector<Candidate> both{benchCandidate(twentyRows(), "first"), benchCandidate(other, "other")};
    for (auto _ : state)
        benchmark::DoNotOptimize(compare(both, catalogue()));
}
BENCHMARK(compareTwentyRows)->Arg(1)->Arg(3)->Arg(6)->Arg(7)->Unit(benchmark::kMillisecond);

/// The curve by a bracketing root finder at each of its temperatures.
void curveByRootFinder(const Mix& mix, const FreezingCurve& curve)
{
    const Liquid liquid(mix);
    for (const FreezingStep& step : curve.steps) {
        const auto warmer = [&](double liquidWater_g) {
            return (equilibriumTemperature(liquid.with({liquidWater_g}).activity) - step.temperature).value;
        };
        if (warmer(liquid.freeWater().value) <= 1e-9)
            continue;
        std::uintmax_t steps = 100;
        benchmark::DoNotOptimize(boost::math::tools::toms748_solve(warmer, 1e-6 * liquid.freeWater().value,
            liquid.freeWater().value, boost::math::tools::eps_tolerance<double>(40), steps));
    }
}

void curveAgainstRootFinder(benchmark::State& state)
{
    const Mix mix = analyse(twentyRows(), catalogue(), {}).mix;
    const FreezingCurve curve = freezingCurve(mix);
    using Clock = std::chrono::steady_clock;
    std::chrono::duration<double> parametric{};
    std::chrono::duration<double> searched{};
    for (auto _ : state) {
        const auto start = Clock::now();
        benchmark::DoNotOptimize(freezingCurve(mix));
        const auto middle = Clock::now();
        curveByRootFinder(mix, curve);
        parametric += middle - start;
        searched += Clock::now() - middle;
    }
    state.counters["rootFinderTakesTimes"] = searched / parametric;
}
BENCHMARK(curveAgainstRootFinder)->Unit(benchmark::kMicrosecond);

/// Sugar and alcohol of a whole recipe from a refractometer and a hydrometer.
void solveTwoReadings(benchmark::State& state)
{
    const Mix mix = analyse(twentyRows(), catalogue(), {}).mix;
    const Celsius temperature{12.0};
    const Refractometer refractometer;
    const Hydrometer hydrometer = wholeScale(HydrometerScale::SpecificGravity);
    const std::vector<Measurement> measurements{
        RefractometerReading{*read(refractometer, mix, temperature)->value, temperature, refractometer},
        HydrometerReading{*read(hydrometer, mix, temperature)->value, temperature, hydrometer}};
    for (auto _ : state)
        benchmark::DoNotOptimize(solve(measurements, {}, mix));
}
BENCHMARK(solveTwoReadings)->Unit(benchmark::kMicrosecond);

void loadCatalogue(benchmark::State& state)
{
    const std::string text = catalogueText();
    for (auto _ : state)
        benchmark::DoNotOptimize(catalogueFromJson(text));
}
BENCHMARK(loadCatalogue)->Unit(benchmark::kMillisecond);

/// Type-ahead over ten thousand ingredients: the catalogue many times over, each copy under its own names.
void typeAheadOverTenThousand(benchmark::State& state)
{
    std::vector<Ingredient> many;
    for (int copy = 0; many.size() < 10'000; ++copy) {
        for (Ingredient ingredient : catalogue().all()) {
            ingredient.id += "-" + std::to_string(copy);
            ingredient.name += " " + std::to_string(copy);
            many.push_back(std::move(ingredient));
        }
    }
    const Catalogue large(std::move(many));
    for (auto _ : state) {
        for (const char* typed : {"s", "str", "strawb", "stawberry", "xyzzy"})
            benchmark::DoNotOptimize(large.search(typed, 12));
    }
    state.SetItemsProcessed(state.iterations() * 5);
}
BENCHMARK(typeAheadOverTenThousand)->Unit(benchmark::kMillisecond);

}  // namespace
