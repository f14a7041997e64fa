// The pages of a lesson: which there are, that their figures are those of the analysis, and what they say on spirit and on correcting.
#include "explain/lesson.h"

#include "../shipped_catalogue.h"
#include "derivation/formula_text.h"
#include "exchange/recipe_text.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <stdexcept>

namespace firn {
namespace {

const char* const ginIce = "500 g cucumber\n150 g water\n130 g sucrose\n30 g glucose\n50 g gin\n1 g salt";
const char* const weakSorbet = "600 g water\n200 g sucrose\n20 g lemon juice";

ExplainedAnalysis explained(const char* lines, Process process = Process::Churned)
{
    Recipe recipe = recipeFromText(lines).value();
    recipe.process = process;
    return analyseWithWorkings(recipe, shippedCatalogue(), {}, std::size_t{0});
}

bool has(const ExplainedAnalysis& lesson, LessonTopic topic)
{
    const auto topics = lessonTopics(lesson.analysis);
    return std::ranges::find(topics, topic) != topics.end();
}

const Symbol& resultOf(const LessonPage& page, const std::string& name)
{
    const auto found = std::ranges::find_if(page.steps, [&](const WorkingStep& step) { return textOf(step.result) == name; });
    if (found == page.steps.end())
        throw std::runtime_error("no step finds " + name);
    return found->result;
}

}  // namespace

TEST(Lesson, HasOnlyPagesOnWhatIsInTheRecipe)
{
    EXPECT_EQ(lessonTopics(explained("0 g water").analysis), std::vector{LessonTopic::Nothing});
    EXPECT_FALSE(has(explained(weakSorbet), LessonTopic::Milk));
    EXPECT_FALSE(has(explained(weakSorbet), LessonTopic::Spirit));
    EXPECT_FALSE(has(explained(weakSorbet), LessonTopic::Nothing));
    EXPECT_TRUE(has(explained(ginIce), LessonTopic::Spirit));
    EXPECT_TRUE(has(explained("200 g whole milk\n50 g sucrose"), LessonTopic::Milk));
    EXPECT_FALSE(has(explained("200 g sucrose"), LessonTopic::FreezingPoint));
}

TEST(Lesson, EveryPageOfAnyTopicHasATitleAnIdeaAndSteps)
{
    for (const char* lines : {ginIce, weakSorbet, "500 g whole milk\n100 g cream\n90 g sucrose\n10 g skim milk powder"}) {
        const ExplainedAnalysis lesson = explained(lines);
        for (const LessonTopic topic : lessonTopics(lesson.analysis)) {
            const LessonPage page = lessonPage(topic, lesson);
            EXPECT_EQ(page.topic, topic);
            EXPECT_EQ(page.title, titleOf(topic));
            EXPECT_FALSE(page.idea.pattern.empty());
            EXPECT_TRUE(page.idea.values.empty());
            // The bands are what the trade does: a picture and its sentences.
            EXPECT_EQ(page.steps.empty(), topic == LessonTopic::Bands) << english(page.title);
            EXPECT_FALSE(page.steps.empty() && page.conclusions.empty()) << english(page.title);
            // What a page reckons for itself comes out of its formula, too.
            for (const WorkingStep& step : page.steps) {
                const auto* sides = std::get_if<Operation>(&step.formula.node);
                const auto value = sides && !step.method ? valueOf(sides->parts.back()) : std::nullopt;
                if (value) {
                    EXPECT_NEAR(*value, step.result.value, 1e-9 * std::max(1.0, std::abs(*value))) << textOf(step.formula);
                }
            }
        }
    }
}

TEST(Lesson, TheFiguresAreThoseOfTheAnalysis)
{
    const ExplainedAnalysis lesson = explained(ginIce);
    const auto last = [&](LessonTopic topic) { return lessonPage(topic, lesson).steps.back().result.value; };
    EXPECT_EQ(last(LessonTopic::Sugars), percent(lesson.analysis.shares.sugars));
    EXPECT_EQ(last(LessonTopic::TotalSolids), percent(lesson.analysis.shares.totalSolids));
    EXPECT_EQ(last(LessonTopic::Alcohol), lesson.analysis.alcohol_percentByVolume);
    EXPECT_EQ(last(LessonTopic::Egg), lesson.analysis.readings->egg.exposedWidth.value);
    EXPECT_EQ(last(LessonTopic::Sweetness), lesson.analysis.sweetness_percentSucrose);
    EXPECT_EQ(last(LessonTopic::FreezingCurve), percent(lesson.analysis.texture.iceAtServing));
    EXPECT_EQ(resultOf(lessonPage(LessonTopic::FreezingPoint, lesson), "T_f").value,
        lesson.analysis.freezing.freezingPoint->temperature.value);
}

TEST(Lesson, EveryPageEndsWithTheRowThatIsNotKnown)
{
    const LessonPage page = lessonPage(LessonTopic::Sugars, explained("600 g water\n200 g sucrose\n50 g moon juice"));
    ASSERT_FALSE(page.conclusions.empty());
    EXPECT_EQ(english(page.conclusions.back().sentence),
        "“moon juice” is not known and would be ignored. Choose it from the list first.");
}

TEST(Lesson, EveryTemperatureOfTheServingWindowIsFoundOnThePageThatUsesIt)
{
    const LessonPage page = lessonPage(LessonTopic::Texture, explained("600 g water\n270 g sucrose\n20 g lemon juice"));
    const Symbol& warmest = resultOf(page, "t_warmest");
    EXPECT_TRUE(english(warmest.meaning).starts_with("temperature at which 38 % of the mix is ice (scoopable begins)"))
        << english(warmest.meaning);
    EXPECT_LT(resultOf(page, "t_coldest").value, warmest.value);
    EXPECT_EQ(resultOf(page, "t_most").value, resultOf(page, "t_coldest").value);
    const auto says = [&](const char* text) {
        return std::ranges::any_of(
            page.conclusions, [&](const Conclusion& each) { return english(each.sentence).starts_with(text); });
    };
    EXPECT_TRUE(says("Scoopable: 38 to 46 % of the mix is ice. From 65 to 70 % of the water"));
    EXPECT_TRUE(says("This mix has 3")) << "30.5 % solids are outside of 35 to 40 %";
}

TEST(Lesson, EachCorrectionNamesItsAim)
{
    const LessonPage page = lessonPage(LessonTopic::Correction, explained(weakSorbet));
    EXPECT_TRUE(english(page.conclusions.front().sentence).starts_with("To reach 33.0 % sugars: add "))
        << english(page.conclusions.front().sentence);
}

TEST(Lesson, AMixInsideItsBandIsToldSoAndTakesATargetAsAnExample)
{
    const auto saidOn = [](const char* lines) {
        const LessonPage page = lessonPage(LessonTopic::Correction, explained(lines));
        return english(page.conclusions.front().sentence);
    };
    // A sorbet usually has 30 to 36 %.
    EXPECT_TRUE(saidOn("650 g water\n350 g sucrose")
                    .starts_with("With 35.0 % sugars it is inside its band. Suppose 33.0 % is wanted: add "))
        << saidOn("650 g water\n350 g sucrose");
    EXPECT_TRUE(saidOn("700 g water\n300 g sucrose")
                    .starts_with("With 30.0 % sugars it is inside its band. Suppose 33.0 % is wanted: add "));
    EXPECT_TRUE(saidOn("667 g water\n333 g sucrose")
                    .starts_with("With 33.3 % sugars it is inside its band. Suppose 35.0 % is wanted: add "));
    EXPECT_TRUE(saidOn("705 g water\n295 g sucrose").starts_with("To reach 33.0 % sugars: add "));
    EXPECT_TRUE(saidOn("630 g water\n370 g sucrose").starts_with("To reach 33.0 % sugars: add "));
}

TEST(Lesson, AMixWithoutABandOfTheTradeIsBroughtToAnExample)
{
    const ExplainedAnalysis milkIce = explained("600 g whole milk\n80 g sucrose\n10 g skim milk powder");
    ASSERT_EQ(milkIce.analysis.texture.textureClass, TextureClass::MilkIce);
    const LessonPage page = lessonPage(LessonTopic::Correction, milkIce);
    const double now_percent = percent(milkIce.analysis.shares.sugars);
    const Symbol& wanted = resultOf(page, "w_wanted");
    EXPECT_EQ(wanted.value, std::floor(now_percent) + 2.0);
    EXPECT_NE(english(wanted.meaning).find("a little more, as an example"), std::string::npos);
    EXPECT_EQ(resultOf(page, "w_new").value, wanted.value);
    EXPECT_TRUE(has(milkIce, LessonTopic::Correction));
    EXPECT_FALSE(has(explained("500 g water"), LessonTopic::Correction));
    EXPECT_FALSE(has(explained("100 g water\n400 g sucrose"), LessonTopic::Correction))
        << "60 % and more do not dissolve in the cold";
}

TEST(Lesson, AVerdictSaysThatItIsOne)
{
    const LessonPage egg = lessonPage(LessonTopic::Egg, explained(weakSorbet));
    EXPECT_TRUE(egg.conclusions.front().isVerdict);
    EXPECT_TRUE(english(egg.conclusions.front().sentence).starts_with("It floats"));
    EXPECT_FALSE(lessonPage(LessonTopic::Sugars, explained(weakSorbet)).conclusions.front().isVerdict);
}

TEST(Lesson, SumsHaveTheirLargestTermsFirst)
{
    const LessonPage page = lessonPage(LessonTopic::Sugars, explained("10 g glucose\n30 g fructose\n20 g sucrose\n100 g water"));
    std::size_t sums = 0;
    for (const WorkingStep& step : page.steps) {
        if (const auto* terms = termsOf(step.formula)) {
            ++sums;
            EXPECT_TRUE(
                std::ranges::is_sorted(*terms, std::greater{}, [](const SeriesTerm& term) { return *valueOf(term.formula); }));
        }
    }
    EXPECT_EQ(sums, 4u) << "each of the three sugars, and all of them";
}

TEST(Lesson, SpiritIsHeldAgainstTheSameMixWithoutItsAlcohol)
{
    const ExplainedAnalysis lesson = explained(ginIce, Process::Scraped);
    const LessonPage page = lessonPage(LessonTopic::Spirit, lesson), numbers = lessonPage(LessonTopic::SpiritInNumbers, lesson);
    ASSERT_TRUE(page.beside);
    // 50 g gin hold 16.65 g ethanol; its water stays.
    const ExplainedAnalysis without =
        explained("500 g cucumber\n183.35 g water\n130 g sucrose\n30 g glucose\n1 g salt", Process::Scraped);
    EXPECT_NEAR(resultOf(numbers, "T_without").value, without.analysis.freezing.freezingPoint->temperature.value, 1e-6);
    EXPECT_GT(resultOf(page, "ΔT").value, 0.5);
    EXPECT_NEAR(
        resultOf(numbers, "m_without").value, without.analysis.texture.iceAtServing.value * without.analysis.mass.value, 1e-3);
    EXPECT_GT(resultOf(page, "Δm").value, 20.0);
    const std::string first = english(page.conclusions.front().sentence);
    EXPECT_TRUE(first.starts_with("Without the alcohol, ")) << first;
    EXPECT_NE(first.find(" g more of the water would be ice at -12 °C. It stays liquid between the crystals"), std::string::npos)
        << first;
    const bool isForTheSpoon = first.ends_with(", and the spoon goes in.");
    const Firmness firmness = lesson.analysis.texture.firmness;
    EXPECT_EQ(isForTheSpoon, firmness >= Firmness::Soft && firmness <= Firmness::Firm) << first;
    EXPECT_EQ(english(*page.caption), "The line: this mix. The dots: the same without the alcohol; the water of the spirit stays.");
    // The ice is reckoned from the curve, and nothing on the page from its share.
    for (const WorkingStep& step : numbers.steps)
        for (const Symbol& symbol : symbolsOf(step.formula))
            EXPECT_NE(textOf(symbol), "x_ice") << textOf(step.formula);
    const LessonPage hardly = lessonPage(LessonTopic::Spirit, explained("500 g water\n130 g sucrose\n0.5 g gin"));
    EXPECT_EQ(english(hardly.conclusions.front().sentence), "Too little alcohol to matter.");
}

TEST(Lesson, AWeakMixIsBroughtToTheMiddleOfItsBandWithSucroseAndAStrongOneWithWater)
{
    const LessonPage weak = lessonPage(LessonTopic::Correction, explained(weakSorbet));
    const double sucrose_g = resultOf(weak, "m_sucrose").value;
    const std::string more = std::string(weakSorbet) + "\n" + std::to_string(sucrose_g) + " g sucrose";
    EXPECT_NEAR(percent(explained(more.c_str()).analysis.shares.sugars), 33.0, 1e-5);
    EXPECT_NEAR(resultOf(weak, "w_new").value, 33.0, 1e-9);

    const char* const strong = "500 g water\n290 g sucrose\n20 g lemon juice";
    const double water_g = resultOf(lessonPage(LessonTopic::Correction, explained(strong)), "m_water").value;
    const std::string thinned = std::string(strong) + "\n" + std::to_string(water_g) + " g water";
    EXPECT_NEAR(percent(explained(thinned.c_str()).analysis.shares.sugars), 33.0, 1e-5);
}

}  // namespace firn
