// Advice is followed here on the mix itself, and what comes of it must be what was promised: over 8 to 45 % sugar, 0 to 15 % vol, 0 to 15 % fat,
// each process, serving and freezer from -4 to -24 °C. FIRN_ADVICE_GRID=full takes small steps.

#include "texture/firmness.h"
#include "texture/serving.h"
#include "texture/texture.h"
#include "texture/texture_class.h"

#include <cstdlib>
#include <cstring>
#include <gtest/gtest.h>

namespace firn {
namespace {

struct Composed {
    double sugar_percent, alcohol_percentByVolume, fat_percent;
    bool isOfMilk;
};

Mix mixOf(const Composed& composed)
{
    constexpr double usualDensity = 1.08;
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {composed.sugar_percent};
    mix.amounts[Constituent::Ethanol] = {composed.alcohol_percentByVolume * 0.7892 / usualDensity};
    mix.amounts[Constituent::Fat] = {composed.fat_percent};
    if (composed.isOfMilk) {
        mix.amounts[Constituent::Lactose] = {3.5};
        mix.amounts[Constituent::Protein] = {2.5};
        mix.milkSolidsNotFat = {6.5};
        mix.amounts[Constituent::Minerals] = {0.5};
        mix.milkFat = {composed.fat_percent};
    }
    mix.amounts[Constituent::Water] = {100.0 - mix.mass().value};
    return mix;
}

/// Typed here apart from the program: 9.09 % of dextrose monohydrate is water, 33.30 % by mass of a spirit of 40 % vol alcohol (OIML R 22).
Mix following(Mix mix, const MixChange& change)
{
    const auto add = [&](Constituent constituent, double share) { mix.amounts[constituent] += change.mass * share; };
    switch (change.stuff) {
    case Stuff::Sucrose:
        add(Constituent::Sucrose, 1.0);
        break;
    case Stuff::Dextrose:
        add(Constituent::Glucose, 0.9091);
        add(Constituent::Water, 0.0909);
        break;
    case Stuff::Water:
        add(Constituent::Water, 1.0);
        break;
    case Stuff::Spirit:
        add(Constituent::Ethanol, 0.3330);
        add(Constituent::Water, 0.6670);
        break;
    case Stuff::Salt:
        add(Constituent::Salt, 1.0);
        break;
    case Stuff::Acid:
        add(Constituent::Acid, 1.0);
        break;
    }
    return mix;
}

/// The curve is interpolated, which is good to 0.005 % of the mix.
constexpr double errorOfCurve = 0.0002;

bool isServedWell(const Mix& mix, const TextureInput& input)
{
    const Texture found = texture(mix, freezingCurve(mix), input);
    const double ice = found.iceAtServing.value, fat = shareOf(mix[Constituent::Fat], mix).value;
    const double diluted = 1.0 - std::max(0.0, fat - 0.10);
    switch (found.textureClass) {
    case TextureClass::Granita:
    case TextureClass::ScrapedIce:
        return ice >= 0.43 - errorOfCurve && ice <= 0.80 + errorOfCurve;
    case TextureClass::Semifreddo:
        return ice >= 0.15 * diluted - errorOfCurve && ice <= 0.55 * diluted + errorOfCurve;
    default:
        return ice >= 0.30 * diluted - errorOfCurve && ice <= 0.55 * diluted + errorOfCurve;
    }
}

/// What is folded is held by its foam and needs less ice.
bool setsFirmlyIn(const Mix& mix, Celsius freezer, Process process)
{
    const double least = process == Process::Folded ? 0.30 : 0.40;
    const double fatFree = 1.0 - shareOf(mix[Constituent::Fat], mix).value;
    return freezingCurve(mix).iceAt(freezer).value >= least * fatFree - errorOfCurve;
}

/// What is wrong with a piece of advice; nothing if it can be followed and leads to what it promises.
std::string faultOf(const Advice& advice, const Mix& mix, const TextureInput& input)
{
    if (advice.freezerAt) {
        if (*advice.freezerAt >= input.freezerAt)
            return "the freezer is that cold already";
        return advice.promise == Advice::Promise::IsColdEnough       ? (*advice.freezerAt <= input.serveAt ? "" : "still too warm")
               : setsFirmlyIn(mix, *advice.freezerAt, input.process) ? ""
                                                                     : "does not set in that freezer";
    }
    if (const auto& range = advice.serveBetween) {
        if ((range->warmest - range->coldest).value < 1.0 - 1e-9)
            return "narrower than 1 K";
        if (range->warmest >= freezingCurve(mix).freezingPoint->temperature || range->coldest < input.freezerAt)
            return "cannot be reached";
        for (const double along : {0.0, 0.5, 1.0}) {
            TextureInput there = input;
            there.serveAt = range->coldest + (range->warmest - range->coldest) * along;
            if (!isServedWell(mix, there) || texture(mix, freezingCurve(mix), there).served != Served::Well)
                return "not served well at " + std::to_string(there.serveAt.value);
        }
        return "";
    }
    Mix after = mix;
    for (const MixChange& change : advice.changes) {
        if (std::abs(change.mass.value) > mix.mass().value)
            return "more than the mix";
        after = following(after, change);
    }
    if (classOf(after, input.process) != classOf(mix, input.process))
        return "another kind";
    for (const Grams part : after.amounts) {
        if (part.value < 0.0)
            return "takes out more than there is";
    }
    if (advice.promise == Advice::Promise::SetsInFreezer)
        return setsFirmlyIn(after, input.freezerAt, input.process) ? "" : "does not set";
    return isServedWell(after, input) ? "" : "not served well";
}

bool isFullGrid()
{
    const char* grid = std::getenv("FIRN_ADVICE_GRID");
    return grid && std::strcmp(grid, "full") == 0;
}

std::vector<double> steps(double from, double to, double coarse, double fine)
{
    std::vector<double> values;
    for (double value = from; value <= to + 1e-9; value += isFullGrid() ? fine : coarse)
        values.push_back(value);
    return values;
}

template <class Visit>
void visitGrid(Visit visit)
{
    for (const double sugar : steps(8.0, 45.0, 6.0, 2.0)) {
        for (const double alcohol : steps(0.0, 15.0, 5.0, 3.0)) {
            for (const double fat : steps(0.0, 15.0, 5.0, 2.5)) {
                for (const bool isOfMilk : {false, true})
                    visit(mixOf({sugar, alcohol, fat, isOfMilk}));
            }
        }
    }
}

TEST(Advice, LeadsToWhatItPromisesOverTheGrid)
{
    std::size_t given = 0;
    std::array<std::size_t, 3> ofPromise{};
    visitGrid([&](const Mix& mix) {
        const FreezingCurve curve = freezingCurve(mix);
        for (const Process process : allProcesses) {
            for (const double serveAt : steps(-24.0, -4.0, 5.0, 2.5)) {
                for (const double freezerAt : steps(-24.0, -4.0, 10.0, 4.0)) {
                    const TextureInput input{process, 0.0, {serveAt}, {freezerAt}};
                    for (const Advice& advice : texture(mix, curve, input).advice) {
                        ++given;
                        ++ofPromise[std::size_t(advice.promise)];
                        EXPECT_EQ(faultOf(advice, mix, input), "")
                            << english(advice.sentence) << "\n"
                            << percent(shareOf(mix[Constituent::Sucrose], mix)) << " % sugar, " << mix[Constituent::Ethanol].value
                            << " % alcohol, " << mix[Constituent::Fat].value << " % fat, " << keyOf(process) << ", served at "
                            << serveAt << " from " << freezerAt;
                    }
                }
            }
        }
    });
    for (const std::size_t count : ofPromise)
        EXPECT_GT(count, 20u) << "each promise must be made somewhere, or nothing is tried";
    RecordProperty("advice", int(given));
}

/// What the trade makes and how it serves it: typed here apart from the program, with the sources in docs/models.md. The sugars are those that the
/// band counts: all of them in water ices, elsewhere without milk sugar.
struct Usual {
    TextureClass kind;
    Process process;
    double serveAt_c;
    double leastSugar_percent, mostSugar_percent;
    std::vector<double> fats_percent;
    std::vector<double> milkSolidsNotFat_percent;
};

const std::vector<Usual>& usual()
{
    using T = TextureClass;
    static const std::vector<Usual> all{
        {T::Granita, Process::Scraped, -10.0, 20.0, 26.0, {0.0, 1.0}, {0.0}},
        {T::Sorbet, Process::Churned, -12.0, 30.0, 36.0, {0.0, 1.0}, {0.0}},
        {T::Sherbet, Process::Churned, -12.0, 26.0, 35.0, {1.0, 2.0}, {1.0, 3.0}},
        // McGee: premium, and hand-made.
        {T::IceCream, Process::Churned, -12.0, 13.0, 16.0, {16.0, 20.0}, {7.0, 8.0}},
        {T::IceCream, Process::Churned, -12.0, 15.0, 20.0, {10.0}, {7.0, 10.0}},
        // Other solids, those of its eggs among them, are counted as milk solids here.
        {T::Semifreddo, Process::Folded, -14.0, 15.0, 25.0, {15.0, 20.0, 28.0}, {6.0}},
    };
    return all;
}

Mix usualMix(double sugar_percent, double fat_percent, double milkSolidsNotFat_percent)
{
    Mix mix;
    mix.amounts[Constituent::Sucrose] = {sugar_percent};
    mix.amounts[Constituent::Fat] = {fat_percent};
    mix.amounts[Constituent::Lactose] = {0.54 * milkSolidsNotFat_percent};
    mix.amounts[Constituent::Protein] = {0.38 * milkSolidsNotFat_percent};
    mix.amounts[Constituent::Minerals] = {0.08 * milkSolidsNotFat_percent};
    mix.milkSolidsNotFat = {milkSolidsNotFat_percent};
    mix.milkFat = {milkSolidsNotFat_percent > 0.0 ? fat_percent : 0.0};
    mix.amounts[Constituent::Water] = {100.0 - mix.mass().value};
    return mix;
}

// What is said to be usual must come out as it is served, by its ice alone, and with nothing to change.
TEST(Advice, AMixInItsBandAtItsUsualTemperatureIsToldNothingToChange)
{
    for (const Usual& each : usual()) {
        for (double sugar = each.leastSugar_percent; sugar <= each.mostSugar_percent; sugar += 0.5) {
            for (const double fat : each.fats_percent) {
                for (const double milk : each.milkSolidsNotFat_percent) {
                    const Mix mix = usualMix(sugar, fat, milk);
                    const TextureInput input{each.process, 0.0, {each.serveAt_c}, {-18.0}};
                    const Texture found = texture(mix, freezingCurve(mix), input);
                    SCOPED_TRACE(std::string(nameOf(each.kind)) + ", " + std::to_string(sugar) + " % sugar, " + std::to_string(fat)
                                 + " % fat, " + std::to_string(milk) + " % milk solids-not-fat, "
                                 + std::to_string(percent(found.iceAtServing)) + " % ice");
                    EXPECT_EQ(found.textureClass, each.kind);
                    EXPECT_TRUE(found.advice.empty() && found.faults.empty()) << english(found.faults.front());
                    EXPECT_TRUE(isServedWell(mix, input)) << "its ice is not that of what is served";
                }
            }
        }
    }
}

// Spirit in place of some of the sugar, as the trade makes it: 2.3 g of sugar for a gram of alcohol.
TEST(Advice, AMixWithSpiritThatIsAsSoftIsToldNothingToChangeEither)
{
    for (const Usual& each : {usual()[0], usual()[1]}) {
        for (double asSugar = each.leastSugar_percent; asSugar <= each.mostSugar_percent; asSugar += 1.0) {
            for (const double ethanol : {0.6, 1.5, 2.5}) {
                Mix mix = usualMix(asSugar - 2.3 * ethanol, 0.0, 0.0);
                mix.amounts[Constituent::Ethanol] = {ethanol};
                mix.amounts[Constituent::Water] += Grams{-ethanol};
                const TextureInput input{each.process, 0.0, {each.serveAt_c}, {-18.0}};
                const Texture found = texture(mix, freezingCurve(mix), input);
                SCOPED_TRACE(std::string(nameOf(each.kind)) + ", as soft as " + std::to_string(asSugar) + " % sugar, "
                             + std::to_string(ethanol) + " % alcohol");
                EXPECT_EQ(found.textureClass, each.kind);
                EXPECT_TRUE(found.advice.empty() && found.faults.empty()) << english(found.faults.front());
                EXPECT_TRUE(isServedWell(mix, input)) << "its ice is not that of what is served";
            }
        }
    }
}

// The two rules of the program contradicted each other before a class (T7).
TEST(Advice, SugarAndWaterInTheBandsAreNotToldToHaveMoreSugar)
{
    for (double sugar = 20.0; sugar <= 26.0; sugar += 0.5) {
        const Mix mix = mixOf({sugar, 0.0, 0.0, false});
        EXPECT_TRUE(
            texture(mix, freezingCurve(mix), {Process::Scraped, 0.0, usualServing(Process::Scraped), {-18.0}}).faults.empty());
    }
    for (double sugar = 30.0; sugar <= 36.0; sugar += 0.5) {
        const Mix mix = mixOf({sugar, 0.0, 0.0, false});
        EXPECT_TRUE(
            texture(mix, freezingCurve(mix), {Process::Churned, 0.0, usualServing(Process::Churned), {-18.0}}).faults.empty());
    }
}

std::string saidOf(const Mix& mix, const TextureInput& input)
{
    std::string text;
    for (const Sentence& fault : texture(mix, freezingCurve(mix), input).faults)
        text += english(fault) + "\n";
    return text;
}

// 12.7 % salt and acid: "less sugar or more water" (C13).
TEST(Advice, TheConstituentAtFaultIsNamed)
{
    Mix salty = mixOf({15.0, 0.0, 0.0, false});
    salty.amounts[Constituent::Salt] = {9.0};
    salty.amounts[Constituent::Acid] = {3.7};
    salty.amounts[Constituent::Water] += Grams{-12.7};
    const std::string said = saidOf(salty, {Process::Churned, 0.0, {-12.0}, {-18.0}});
    EXPECT_NE(said.find("The main cause is salt: 9.0 % by mass."), std::string::npos) << said;
    EXPECT_NE(said.find("To make it set at -18 °C, use "), std::string::npos) << said;
    EXPECT_NE(said.find("g less salt."), std::string::npos) << said;
    EXPECT_EQ(said.find("sugar"), std::string::npos) << said;

    Mix sour = mixOf({10.0, 0.0, 0.0, false});
    sour.amounts[Constituent::Acid] = {45.0};
    sour.amounts[Constituent::Water] += Grams{-45.0};
    EXPECT_NE(saidOf(sour, {Process::Churned, 0.0, {-12.0}, {-18.0}}).find("The main cause is acid: 45.0 %"), std::string::npos);

    const Mix strong = mixOf({20.0, 15.0, 0.0, false});
    EXPECT_NE(saidOf(strong, {Process::Scraped, 0.0, {-10.0}, {-18.0}}).find("The main cause is alcohol"), std::string::npos);
    const Mix both = mixOf({32.0, 8.0, 0.0, false});
    EXPECT_NE(saidOf(both, {Process::Churned, 0.0, {-12.0}, {-18.0}}).find("The main causes are"), std::string::npos)
        << saidOf(both, {Process::Churned, 0.0, {-12.0}, {-18.0}});
}

TEST(Advice, MoreSugarIsSaidInGramsAndWithDextroseWhereItWouldBeTooSweet)
{
    // 46 % ice at -12 °C, where firm begins, is a sucrose solution of 32.5 %: 15.5 g in 100 g of 22 %.
    const std::string plain = saidOf(mixOf({22.0, 0.0, 0.0, false}), {Process::Churned, 0.0, {-12.0}, {-18.0}});
    EXPECT_NE(plain.find("To serve it at -12 °C, add 16 g of sugar."), std::string::npos) << plain;
    const std::string cold = saidOf(mixOf({26.0, 0.0, 0.0, false}), {Process::Churned, 0.0, {-17.0}, {-18.0}});
    EXPECT_NE(cold.find("g of dextrose, which sweetens less"), std::string::npos) << cold;
}

TEST(Advice, GramsGrowWithTheBatch)
{
    Mix batch;
    for (int i = 0; i < 10; ++i)
        batch.add(mixOf({22.0, 0.0, 0.0, false}));
    const std::string said = saidOf(batch, {Process::Churned, 0.0, {-12.0}, {-18.0}});
    EXPECT_NE(said.find("add 155 g of sugar"), std::string::npos) << said;
}

TEST(Advice, ServedColderThanTheFreezerIsHelpedByAColderFreezerOnly)
{
    const Mix mix = mixOf({25.0, 0.0, 0.0, false});
    const Texture found = texture(mix, freezingCurve(mix), {Process::Scraped, 0.0, {-20.0}, {-18.0}});
    ASSERT_EQ(found.advice.size(), 1u);
    EXPECT_EQ(found.advice.front().freezerAt, Celsius{-20.0});
    EXPECT_EQ(found.advice.front().promise, Advice::Promise::IsColdEnough);
}

}  // namespace
}  // namespace firn
