#include "document/measure_edits.h"

#include "document/change_value.h"
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

}  // namespace

void keepReadings(Document& document, const std::vector<ReadingRecord>& readings)
{
    std::vector<ReadingRecord> after = document.recipe().readings;
    after.insert(after.end(), readings.begin(), readings.end());
    const std::string version = versionOfBench(document.recipe());
    std::for_each(
        after.end() - std::ptrdiff_t(readings.size()), after.end(), [&](ReadingRecord& reading) { reading.version = version; });
    change(document, Words::tr("Keep reading"), ReadingsOf{}, std::move(after));
}

void removeReading(Document& document, std::size_t reading)
{
    std::vector<ReadingRecord> after = document.recipe().readings;
    if (reading >= after.size())
        return;
    after.erase(after.begin() + std::ptrdiff_t(reading));
    change(document, Words::tr("Delete reading"), ReadingsOf{}, std::move(after));
}

void putRight(Document& document, std::size_t component, const Cause& cause)
{
    change(document, Words::tr("Put the recipe right"), ComponentAt{component},
        corrected(document.recipe(), document.catalogue(), component, {}, cause));
}

std::vector<Row> asWeighed(const CorrectionChoice& choice)
{
    return weighable(choice.rows, choice.added < smallAmount ? fineScaleStep : scaleStep);
}

void addChoice(Document& document, std::size_t component, const CorrectionChoice& choice)
{
    change(document, Words::tr("Add %1").arg(QString::fromStdString(choice.name)), ComponentAt{component},
        corrected(document.recipe(), document.catalogue(), component, asWeighed(choice)));
}

}  // namespace firn::app
