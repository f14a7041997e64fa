#include "document/measure_edits.h"

#include "document/change_value.h"
#include "document/whole_recipe.h"
#include "recipe/versions.h"

#include <QCoreApplication>
#include <algorithm>

namespace firn::app {

namespace {

struct ReadingsOf {
    using Value = std::vector<ReadingRecord>;
    auto& in(auto& recipe) const { return recipe.readings; }
    friend bool operator==(const ReadingsOf&, const ReadingsOf&) = default;
};

struct ComponentAt {
    using Value = Component;
    std::size_t index;
    auto& in(auto& recipe) const { return recipe.components.at(index); }
    friend bool operator==(const ComponentAt&, const ComponentAt&) = default;
};

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::MeasureEdits)
};

// Resolutions of kitchen scales (common practice, no source).
constexpr Grams scaleStep{1.0};
constexpr Grams fineScaleStep{0.1};
constexpr Grams smallAmount{10.0};

Recipe withReadings(Recipe recipe, std::vector<ReadingRecord> readings)
{
    const std::string version = versionOfBench(recipe);
    for (ReadingRecord& reading : readings) {
        reading.version = version;
        recipe.readings.push_back(std::move(reading));
    }
    return recipe;
}

}  // namespace

void keepReadings(Document& document, const std::vector<ReadingRecord>& readings)
{
    change(document, Words::tr("Save reading"), ReadingsOf{}, withReadings(document.recipe(), readings).readings);
}

void removeReading(Document& document, std::size_t reading)
{
    std::vector<ReadingRecord> after = document.recipe().readings;
    if (reading >= after.size())
        return;
    after.erase(after.begin() + std::ptrdiff_t(reading));
    change(document, Words::tr("Delete reading"), ReadingsOf{}, std::move(after));
}

void removeBatchCorrection(Document& document, std::size_t correction)
{
    Recipe after = document.recipe();
    if (correction >= after.batchCorrections.size())
        return;
    after.batchCorrections.erase(after.batchCorrections.begin() + std::ptrdiff_t(correction));
    change(document, Words::tr("Delete correction"), WholeRecipe{}, std::move(after));
}

void applyCause(Document& document, std::size_t component, const Cause& cause)
{
    change(document, Words::tr("Apply correction"), ComponentAt{component},
        corrected(document.recipe(), document.catalogue(), component, {}, cause));
}

std::vector<Row> asWeighed(const CorrectionChoice& choice)
{
    return weighable(choice.rows, choice.added < smallAmount ? fineScaleStep : scaleStep);
}

void addToRecipe(Document& document, std::size_t component, const CorrectionChoice& choice)
{
    change(document, Words::tr("Add %1").arg(QString::fromStdString(choice.name)), ComponentAt{component},
        corrected(document.recipe(), document.catalogue(), component, asWeighed(choice)));
}

void addToBatch(Document& document, std::size_t component, const CorrectionChoice& choice, MassFraction sugarsBefore,
    const std::vector<ReadingRecord>& readings, const std::string& date)
{
    Recipe after = withReadings(document.recipe(), readings);
    BatchCorrection correction;
    correction.date = date;
    correction.component = after.components.at(component).name;
    correction.version = versionOfBench(document.recipe());
    correction.sugarsBefore_percent = percent(sugarsBefore);
    correction.sugarsAfter_percent = percent(choice.after.sugars);
    for (const Row& row : asWeighed(choice))
        correction.added.push_back({row.ingredient, {row.amount.value}});
    after.batchCorrections.push_back(std::move(correction));
    change(document, Words::tr("Correct this batch"), WholeRecipe{}, std::move(after));
}

}  // namespace firn::app
