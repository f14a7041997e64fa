#include "analysis/analysis.h"
#include "cli/arguments.h"
#include "cli/command_line.h"
#include "cli/recipe_argument.h"
#include "document/built_in.h"
#include "document/typed_numbers.h"
#include "readings/sugar_by_boiling.h"
#include "readings/sugar_by_egg.h"
#include "units/deviation.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace firn::app {

namespace {

const QString description =
    QStringLiteral("Says what a measured mix is: sugar and alcohol, % by mass, each with one standard deviation.\n"
                   "A refractometer alone or a hydrometer alone gives the sugar, both together sugar and alcohol.\n"
                   "With a recipe all but its sugar and alcohol is believed; one reading leaves its alcohol as it is.\n"
                   "Where no mix can read so the reason is said, and --json has an empty list with it.");

/// What was read, and what is known besides.
struct Wishes {
    std::optional<double> brix, gravity, baume, eggWidth_mm, boilsAt_c, altitude_m;
    std::optional<double> alcohol_percent, sugar_percent;
    Celsius at{20.0};
    bool compensates = false;
    Mix background;
    std::vector<Sentence> cautions;  // rows of the recipe that count for nothing
};

struct Option {
    const char* name;
    const char* value;
    const char* description;
    std::optional<double> Wishes::*wish;
};

constexpr Option numbers[] = {
    {"brix", "B", "A refractometer's reading, °Bx.", &Wishes::brix},
    {"sg", "S", "A hydrometer's reading, specific gravity 20/20 °C.", &Wishes::gravity},
    {"baume", "B", "A hydrometer's reading, °Bé at 20 °C.", &Wishes::baume},
    {"egg-mm", "MM", "Width of the patch that an egg of 57 g shows.", &Wishes::eggWidth_mm},
    {"boils-at", "T", "The temperature at which the mix boils: 104, or 219F.", &Wishes::boilsAt_c},
    {"altitude", "M", "Of the kitchen, for --boils-at; 0.", &Wishes::altitude_m},
    {"alcohol-known", "MASS%", "The alcohol, where it is known.", &Wishes::alcohol_percent},
    {"sugar-known", "MASS%", "The sugar, where it is known; finds the alcohol.", &Wishes::sugar_percent},
};

/// Takes what a recipe's file amounts to for the background.
Result<void> readRecipe(const QString& file, const std::string& componentName, Wishes& wishes)
{
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return failure(catalogue.error());
    const auto recipe = recipeIn(file);
    if (!recipe)
        return failure(recipe.error());
    const auto component = componentIn(*recipe, componentName);
    if (!component)
        return failure(component.error());
    const Analysis analysis = analyse(*recipe, *catalogue, conditionsOf(*recipe), *component);
    wishes.background = analysis.mix;
    for (const auto& rows : analysis.components) {
        for (const RowAnalysis& row : rows) {
            if (row.problem)
                wishes.cautions.push_back(phrase("{0}: {1}", row.text, english(*row.problem)));
        }
    }
    return {};
}

/// Fails on wishes that do not go together.
Result<void> checked(const Wishes& wishes)
{
    const bool hasHydrometer = wishes.gravity || wishes.baume;
    const int ways = int(wishes.brix || hasHydrometer) + int(wishes.eggWidth_mm.has_value()) + int(wishes.boilsAt_c.has_value());
    if (ways == 0)
        return failure(phrase("Give a reading, such as --brix 19 or --sg 1.078. Run firn read --help for how."));
    if (ways > 1)
        return failure(phrase("An egg and a boiling point are read alone. Leave the other readings out."));
    if (wishes.gravity && wishes.baume)
        return failure(phrase("Give one reading of a hydrometer: --sg or --baume."));
    if (wishes.eggWidth_mm && wishes.sugar_percent)
        return failure(phrase("An egg is too coarse to find the alcohol from. Leave --sugar-known out."));
    if (wishes.boilsAt_c && (wishes.sugar_percent || wishes.alcohol_percent.value_or(0.0) > 0.0))
        return failure(phrase("A boiling point says nothing about alcohol, which leaves with the steam. Leave what is known out."));
    constexpr double lowest_m = -500.0;
    constexpr double highest_m = 5000.0;
    if (wishes.altitude_m && (*wishes.altitude_m < lowest_m || *wishes.altitude_m > highest_m))
        return failure(
            phrase("The altitude must lie between {0} and {1} m. Correct --altitude.", Figure{lowest_m, 0}, Figure{highest_m, 0}));
    for (const auto& known : {wishes.alcohol_percent, wishes.sugar_percent}) {
        if (known && (*known < 0.0 || *known >= 100.0))
            return failure(phrase("{0} % by mass is not from 0 to less than 100. Correct what is known.", Figure{*known, 1}));
    }
    return {};
}

Result<Wishes> wishesIn(const Arguments& arguments)
{
    Wishes wishes;
    for (const Option& option : numbers) {
        const QString name = QString::fromLatin1(option.name);
        if (!arguments.has(name))
            continue;
        const bool isTemperature = option.wish == &Wishes::boilsAt_c;
        const std::string typed = arguments.text(name).toStdString();
        const auto number =
            isTemperature ? temperatureFrom(typed, TemperatureUnit::Celsius).map(&Celsius::value) : numberFromText(typed);
        if (!number)
            return failure(phrase("--{0}: {1}", std::string(option.name), english(number.error())));
        wishes.*option.wish = *number;
    }
    const auto at = arguments.temperature(QStringLiteral("at"));
    if (!at)
        return failure(at.error());
    wishes.at = at->value_or(wishes.at);
    wishes.compensates = arguments.has(QStringLiteral("compensated"));
    if (!arguments.operands().isEmpty())
        return failure(
            phrase("\"{0}\" belongs to no option. Run firn read --help for how.", arguments.operands().front().toStdString()));
    if (const auto isFine = checked(wishes); !isFine)
        return failure(isFine.error());
    if (arguments.has(QStringLiteral("recipe"))) {
        const auto isRead =
            readRecipe(arguments.text(QStringLiteral("recipe")), arguments.text(QStringLiteral("component")).toStdString(), wishes);
        if (!isRead)
            return failure(isRead.error());
    }
    return wishes;
}

std::optional<MassFraction> share(std::optional<double> share_percent)
{
    return share_percent ? std::optional(fromPercent(*share_percent)) : std::nullopt;
}

Result<std::vector<MixEstimate>> found(const Wishes& wishes)
{
    if (wishes.boilsAt_c) {
        const Hectopascals pressure = pressureAtAltitude(wishes.altitude_m.value_or(0.0));
        return sugarByBoiling({{*wishes.boilsAt_c}, pressure}, wishes.background).map([](const MixEstimate& one) {
            return std::vector{one};
        });
    }
    if (wishes.eggWidth_mm)
        return sugarByEgg({{*wishes.eggWidth_mm}, wishes.at}, share(wishes.alcohol_percent), wishes.background)
            .map([](const SugarRange& range) { return std::vector{asEstimate(range)}; });

    std::vector<Measurement> measurements;
    if (wishes.brix) {
        Refractometer instrument;
        instrument.compensates = wishes.compensates;
        measurements.push_back(RefractometerReading{*wishes.brix, wishes.at, instrument});
    }
    if (wishes.gravity)
        measurements.push_back(HydrometerReading{*wishes.gravity, wishes.at, wholeScale(HydrometerScale::SpecificGravity)});
    if (wishes.baume)
        measurements.push_back(HydrometerReading{*wishes.baume, wishes.at, wholeScale(HydrometerScale::Baume)});
    return solve(measurements, {share(wishes.sugar_percent), share(wishes.alcohol_percent)}, wishes.background);
}

QString json(const Result<std::vector<MixEstimate>>& estimates, const Wishes& wishes)
{
    QJsonArray solutions;
    QJsonObject document{{QStringLiteral("format"), QStringLiteral("firn-reading")}, {QStringLiteral("version"), 1}};
    if (estimates) {
        for (const MixEstimate& estimate : *estimates)
            solutions.append(QJsonObject{{QStringLiteral("sugar_percent"), percent(estimate.sugar)},
                {QStringLiteral("sugar_uncertainty"), percent(estimate.sugar_sd)},
                {QStringLiteral("alcohol_percent"), percent(estimate.alcohol)},
                {QStringLiteral("alcohol_uncertainty"), percent(estimate.alcohol_sd)}});
    } else {
        document.insert(QStringLiteral("reason"), QString::fromStdString(english(estimates.error())));
    }
    document.insert(QStringLiteral("solutions"), solutions);
    QJsonArray cautions;
    for (const Sentence& caution : wishes.cautions)
        cautions.append(QString::fromStdString(english(caution)));
    document.insert(QStringLiteral("cautions"), cautions);
    return QString::fromUtf8(QJsonDocument(document).toJson());
}

QString part(const QString& name, MassFraction value, MassFraction sd)
{
    const QString text = QStringLiteral("%1 %2 % by mass").arg(name).arg(percent(value), 0, 'f', 1);
    return sd.value > 0.0 ? text + QStringLiteral(" ± %1").arg(shownDeviation(1, percent(sd)), 0, 'f', 1) : text;
}

QString lines(const Result<std::vector<MixEstimate>>& estimates, const Wishes& wishes)
{
    if (!estimates)
        return QString::fromStdString(english(estimates.error())) + QLatin1Char('\n');
    QString text;
    for (const MixEstimate& estimate : *estimates) {
        if (!text.isEmpty())
            text += QStringLiteral("or ");
        text += QStringLiteral("%1, %2\n")
                    .arg(part(QStringLiteral("sugar"), estimate.sugar, estimate.sugar_sd),
                        part(QStringLiteral("alcohol"), estimate.alcohol, estimate.alcohol_sd));
    }
    const bool isPair = wishes.brix && (wishes.gravity || wishes.baume);
    if (!isPair && !wishes.alcohol_percent && !wishes.sugar_percent && !wishes.boilsAt_c)
        text += wishes.background.isEmpty()
                    ? QStringLiteral("Alcohol is taken as none; where there is some, say how much or give a second reading.\n")
                    : QStringLiteral("The alcohol in the water is the recipe's.\n");
    for (const Sentence& caution : wishes.cautions)
        text += QString::fromStdString(english(caution)) + QLatin1Char('\n');
    return text;
}

Result<std::string> answerTo(const Arguments& arguments)
{
    const auto wishes = wishesIn(arguments);
    if (!wishes)
        return failure(wishes.error());
    const auto estimates = found(*wishes);
    return (arguments.has(QStringLiteral("json")) ? json(estimates, *wishes) : lines(estimates, *wishes)).toStdString();
}

}  // namespace

int readCommand(const QStringList& words)
{
    QList<QCommandLineOption> options;
    for (const Option& option : numbers)
        options.append(
            {QString::fromLatin1(option.name), QString::fromUtf8(option.description), QString::fromLatin1(option.value)});
    options.append({
        {QStringLiteral("at"), QStringLiteral("The temperature of the sample: 20, or 68F; 20."), QStringLiteral("T")},
        {QStringLiteral("compensated"), QStringLiteral("The refractometer compensates temperature.")},
        {QStringLiteral("recipe"), QStringLiteral("What the mix was meant to be; FILE@VERSION for a version."),
            QStringLiteral("FILE")},
        {QStringLiteral("component"), QStringLiteral("The recipe's component that was read; all of it as one mix."),
            QStringLiteral("NAME")},
        {QStringLiteral("json"), QStringLiteral("Prints JSON.")},
    });
    Arguments arguments(
        QStringLiteral("read [--brix B] [--sg S] [--at T] [--alcohol-known MASS%] [--recipe FILE] [--json]"), description, options);
    return answer(arguments, words, answerTo);
}

}  // namespace firn::app
