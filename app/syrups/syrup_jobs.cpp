#include "syrups/syrup_job.h"

#include "gauges/wording.h"
#include "syrup/scales.h"
#include "syrup/solubility.h"
#include "syrup/syrup.h"
#include "syrups/fields.h"

#include <QCoreApplication>
#include <cmath>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::SyrupJobs)
};

// To find the field that a refusal lies in, core is asked in turn about each of them with the others harmless.
constexpr Grams someSyrup{1.0};
constexpr Millilitres someVolume{1.0};
constexpr Celsius room{20.0};
constexpr Celsius boiling{100.0};

tl::unexpected<Refusal> refused(std::size_t field, const Sentence& why) { return tl::unexpected<Refusal>({field, why}); }

MarkedLine warning(const QString& text) { return {Mark::Warning, text}; }
MarkedLine reason(const QString& text) { return {Mark::None, text, true}; }

MarkedLine hotSugar()
{
    return {Mark::Danger,
        Words::tr("Boiling syrup is hotter than boiling water, and it sticks: it burns deeply. Keep sleeves long and the "
                  "pot deep, keep children away, and follow the safe practice of your kitchen.")};
}

/// As gramsText writes it, so that the recipe says what was read here.
Row row(const char* ingredient, Grams mass, const QString& note = {})
{
    const double shown_g = std::abs(mass.value) < 9.95 ? std::round(10.0 * mass.value) / 10.0 : std::round(mass.value);
    return {ingredient, {shown_g, Unit::Gram}, note.simplified().toStdString(), {}};
}

/// Nothing of something is no row.
std::vector<Row> rowsOf(const SugarAndWater& contents, const QString& note = {})
{
    std::vector<Row> rows{row("sucrose", contents.sugar, note), row("water", contents.water)};
    std::erase_if(rows, [](const Row& each) { return each.amount.value == 0.0; });
    return rows;
}

QString syrupOrWater(MassFraction strength)
{
    return strength.value > 0.0 ? Words::tr("syrup of %1").arg(brixText(percent(strength))) : Words::tr("water");
}

/// What crystallises from a syrup that is left to cool to the temperature of a room.
void warnOfCrystals(Outcome& outcome, const SugarAndWater& syrup)
{
    if (const auto cooled = dissolve(Constituent::Sucrose, syrup.sugar, syrup.water, boiling, room); cooled && cooled->warning)
        outcome.lines.push_back(warning(translated(*cooled->warning)));
}

Worked mix(const std::vector<Typed>& typed)
{
    const auto first = std::get<MassFraction>(typed[0]);
    const auto second = std::get<MassFraction>(typed[1]);
    const auto wanted = std::get<MassFraction>(typed[2]);
    const auto total = std::get<Grams>(typed[3]);
    if (const auto some = pearsonSquare(first, second, wanted, someSyrup); !some)
        return refused(2, some.error());
    Outcome outcome;
    const auto blend = pearsonSquare(first, second, wanted, total, &outcome.working);
    if (!blend)
        return refused(3, blend.error());
    outcome.square = {first, second, wanted, *blend};
    outcome.answer = Words::tr("%1 %2, %3 %4", "grams, of what, grams, of what")
                         .arg(gramsText(blend->first), syrupOrWater(first), gramsText(blend->second), syrupOrWater(second));
    const auto contents = contentsOf(total, wanted);
    warnOfCrystals(outcome, contents);
    outcome.lines.push_back(
        reason(Words::tr("Each part is the difference on its diagonal. By mass, since volumes do not add up; exact, 0 to 100 %.")));
    outcome.rows = rowsOf(contents, outcome.answer);
    return outcome;
}

Worked make(const std::vector<Typed>& typed)
{
    const auto strength = std::get<MassFraction>(typed[0]);
    const auto volume = std::get<Millilitres>(typed[1]);
    const auto measuredAt = std::get<Celsius>(typed[2]);
    if (const auto some = syrupOf(strength, someVolume, room); !some)
        return refused(0, some.error());
    if (const auto some = syrupOf(strength, someVolume, measuredAt); !some)
        return refused(2, some.error());
    Outcome outcome;
    const auto syrup = syrupOf(strength, volume, measuredAt, &outcome.working);
    if (!syrup)
        return refused(1, syrup.error());
    outcome.answer = Words::tr("%1 sugar, %2 water").arg(gramsText(syrup->sugar), gramsText(syrup->water));
    if (syrup->warning)
        outcome.lines.push_back(warning(translated(*syrup->warning)));
    outcome.lines.push_back(
        reason(Words::tr("Weighed, so it does not matter how warm sugar and water are. %1 weighs %2 at %3: ICUMSA SPS-4, "
                         "0 to 75 % sugar, 0 to 100 °C.",
            "a millilitre, its grams, temperature")
                   .arg(withUnit(figure(someVolume.value, 0), Words::tr("mL")),
                       withUnit(figure(syrup->density.value, 4), Words::tr("g")), chosenDegrees(measuredAt))));
    outcome.rows = rowsOf({syrup->sugar, syrup->water});
    return outcome;
}

Worked boilDown(const std::vector<Typed>& typed)
{
    const auto mass = std::get<Grams>(typed[0]);
    const auto now = std::get<MassFraction>(typed[1]);
    if (const auto some = boiledTo(now, someSyrup, now); !some)
        return refused(1, some.error());
    if (const auto some = boiledTo(now, mass, now); !some)
        return refused(0, some.error());
    const auto* left = std::get_if<Grams>(&typed[2]);
    Outcome outcome;
    const auto boiled = left ? boiledTo(*left, mass, now, &outcome.working)
                             : boiledTo(std::get<MassFraction>(typed[2]), mass, now, &outcome.working);
    if (!boiled)
        return refused(2, boiled.error());
    const auto contents = contentsOf(boiled->mass, boiled->strength);
    outcome.answer = Words::tr("Stop when %1 is left: %2").arg(gramsText(boiled->mass), brixText(percent(boiled->strength)));
    outcome.lines.push_back(hotSugar());
    warnOfCrystals(outcome, contents);
    outcome.lines.push_back(reason(Words::tr("%1 of water is driven off. Weigh the empty pot first, then pot and syrup together.")
                                       .arg(gramsText(boiled->waterDrivenOff))));
    if (boiled->boilsAt)
        outcome.lines.push_back(reason(Words::tr("It boils at %1 then, give or take %2, at sea level.")
                                           .arg(degrees(boiled->boilsAt->temperature), degreesApart(boiled->boilsAt->halfGap))));
    outcome.lines.push_back(
        reason(Words::tr("By mass, to 95 %: all the sugar stays; that none of it inverts or browns is an assumption.")));
    outcome.rows = rowsOf(contents, syrupOrWater(boiled->strength));
    return outcome;
}

Worked dilute(const std::vector<Typed>& typed)
{
    const auto mass = std::get<Grams>(typed[0]);
    const auto now = std::get<MassFraction>(typed[1]);
    const auto wanted = std::get<MassFraction>(typed[2]);
    if (const auto some = dilutedTo(now, someSyrup, now); !some)
        return refused(1, some.error());
    if (const auto some = dilutedTo(now, mass, now); !some)
        return refused(0, some.error());
    Outcome outcome;
    const auto diluted = dilutedTo(wanted, mass, now, &outcome.working);
    if (!diluted)
        return refused(2, diluted.error());
    outcome.answer = Words::tr("Add %1 water").arg(gramsText(diluted->water));
    outcome.lines.push_back(reason(Words::tr("It makes %1 of %2. By mass, exact: the sugar stays what it is.")
                                       .arg(gramsText(diluted->mass), brixText(percent(wanted)))));
    outcome.rows = rowsOf({{}, diluted->water});
    return outcome;
}

WorkedFigure saturationAt(Celsius temperature, const Solubility& solubility, const Saturation& saturation, const Working& working)
{
    return {Words::tr("Saturated at %1").arg(chosenDegrees(temperature)), percentText(solubility.share, solubility.uncertainty),
        Words::tr("This is %1 of what the water holds; %2.", "share of saturation, source")
            .arg(percentText({saturation.ratio}, 0), translatedName(solubility.source)),
        working};
}

Worked dissolveAt(const std::vector<Typed>& typed)
{
    const auto [solute, amount] = std::get<SoluteAmount>(typed[0]);
    const auto water = std::get<Grams>(typed[1]);
    const auto warm = std::get<Celsius>(typed[2]);
    const auto cool = std::get<Celsius>(typed[3]);
    Working ofWarm, ofCool;
    const auto solubilityWarm = solubilityOf(solute, warm, &ofWarm);
    if (!solubilityWarm)
        return refused(2, solubilityWarm.error());
    const auto solubilityCool = solubilityOf(solute, cool, &ofCool);
    if (!solubilityCool)
        return refused(3, solubilityCool.error());
    Outcome outcome;
    const auto dissolved = dissolve(solute, amount, water, warm, cool, &outcome.working);
    if (!dissolved)
        return refused(1, dissolved.error());
    if (dissolved->warm.solid.value > 0.0)
        outcome.answer = Words::tr("%1 stay solid at %2").arg(gramsText(dissolved->warm.solid), chosenDegrees(warm));
    else if (dissolved->cooled.solid.value > 0.0)
        outcome.answer = Words::tr("Dissolves at %1, not clear at %2").arg(chosenDegrees(warm), chosenDegrees(cool));
    else
        outcome.answer = Words::tr("Dissolves at %1, stays clear at %2").arg(chosenDegrees(warm), chosenDegrees(cool));
    outcome.figures = {saturationAt(warm, *solubilityWarm, dissolved->warm, ofWarm),
        saturationAt(cool, *solubilityCool, dissolved->cooled, ofCool)};
    if (dissolved->warning)
        outcome.lines.push_back(warning(translated(*dissolved->warning)));
    outcome.lines.push_back(reason(translated(dissolved->limit)));
    outcome.rows = rowsOf({{}, dissolved->waterForCooled});
    return outcome;
}

Worked convert(const std::vector<Typed>& typed)
{
    const auto strength = std::get<MassFraction>(typed[0]);
    Outcome outcome;
    outcome.answer = Words::tr("%1 sugar by mass").arg(percentText(strength));
    for (const SyrupScaleFacts& facts : allSyrupScales()) {
        Working working;
        const auto value = valueOn(facts.scale, strength, &working);
        const QString unit = translatedName(facts.unit);
        const QString number = value ? figure(*value, facts.decimals) : QStringLiteral("–");
        outcome.figures.push_back({translatedName(facts.name), value && !unit.isEmpty() ? withUnit(number, unit) : number,
            Words::tr("0 to %1, %2", "range, source").arg(percentText(facts.strongest, 0), translatedName(facts.source)),
            std::move(working)});
    }
    return outcome;
}

}  // namespace

std::vector<SyrupJob> syrupJobs()
{
    const auto mass = [] { return massField(QStringLiteral("mass"), Words::tr("There is"), {1000.0}); };
    const auto now = [](MassFraction example) { return strengthField(QStringLiteral("now"), Words::tr("Its strength"), example); };
    return {
        {Words::tr("Mix two"),
            {strengthField(QStringLiteral("first"), Words::tr("One syrup"), {0.65}),
                strengthField(QStringLiteral("second"), Words::tr("The other, or water"), {0.0}),
                strengthField(QStringLiteral("wanted"), Words::tr("Wanted"), {0.30}),
                massField(QStringLiteral("total"), Words::tr("In all"), {1000.0})},
            mix, true},
        {Words::tr("Make"),
            {strengthField(QStringLiteral("strength"), Words::tr("Strength"), {0.50}),
                volumeField(QStringLiteral("volume"), Words::tr("Volume"), {1000.0}),
                temperatureField(QStringLiteral("measuredAt"), Words::tr("Measured at"), room)},
            make},
        {Words::tr("Boil down"),
            {mass(), now({0.50}), endOfBoilingField(QStringLiteral("until"), Words::tr("Until"), {0.65}, {800.0})}, boilDown},
        {Words::tr("Dilute"), {mass(), now({0.65}), strengthField(QStringLiteral("wanted"), Words::tr("Wanted"), {0.30})}, dilute},
        {Words::tr("Dissolve"),
            {soluteField(QStringLiteral("solute"), Words::tr("Dissolve"), {600.0}),
                massField(QStringLiteral("water"), Words::tr("In water"), {400.0}),
                temperatureField(QStringLiteral("warm"), Words::tr("At"), {80.0}),
                temperatureField(QStringLiteral("cool"), Words::tr("Then cooled to"), {5.0})},
            dissolveAt},
        {Words::tr("Convert"), {strengthField(QStringLiteral("strength"), Words::tr("Strength"), {0.50})}, convert},
    };
}

}  // namespace firn::app
