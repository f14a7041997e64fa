#include "mix/symbols.h"

namespace firn {

namespace {

bool isReportedSugar(Constituent c) { return c >= Constituent::Sucrose && c <= Constituent::Trehalose; }

std::string figureOf(const ConstituentFacts& facts)
{
    if (facts.constituent == Constituent::Water)
        return "water_g";
    return (isReportedSugar(facts.constituent) ? "sugars_g." : "constituents_g.") + std::string(facts.key);
}

std::vector<MixPart> allParts()
{
    std::vector<MixPart> parts;
    for (const ConstituentFacts& facts : allConstituents())
        parts.push_back({figureOf(facts), std::string(facts.key), std::string(facts.label),
            [](const Mix& mix, std::size_t i) { return mix[static_cast<Constituent>(i)]; },
            [](const Composition& composition, std::size_t i) { return composition.per100g[static_cast<Constituent>(i)]; },
            static_cast<std::size_t>(facts.constituent)});
    parts.push_back({"constituents_g.milk_fat", "milkfat", "Milk fat", [](const Mix& mix, std::size_t) { return mix.milkFat; },
        [](const Composition& composition, std::size_t) { return composition.milkFat; }, 0});
    parts.push_back({"constituents_g.milk_solids_not_fat", "msnf", "Milk solids-not-fat",
        [](const Mix& mix, std::size_t) { return mix.milkSolidsNotFat; },
        [](const Composition& composition, std::size_t) { return composition.milkSolidsNotFat; }, 0});
    parts.push_back(
        {"constituents_g.yolk_solids", "yolk", "Yolk solids", [](const Mix& mix, std::size_t) { return mix.yolkSolids; },
            [](const Composition& composition, std::size_t) { return composition.yolkSolids; }, 0});
    return parts;
}

}  // namespace

const std::vector<MixPart>& mixParts()
{
    static const std::vector<MixPart> parts = allParts();
    return parts;
}

const MixPart& partOf(Constituent constituent) { return mixParts()[static_cast<std::size_t>(constituent)]; }
const MixPart& milkFatPart() { return mixParts()[constituentCount]; }
const MixPart& milkSolidsNotFatPart() { return mixParts()[constituentCount + 1]; }

Symbol massOf(const MixPart& part, const Mix& mix, const Working& working)
{
    return {"m", part.subscript, part.of(mix).value, "g", phrase("{0} in the mix", part.label), working.keyOf(part.figure)};
}

Symbol massOf(Constituent constituent, const Mix& mix, const Working& working) { return massOf(partOf(constituent), mix, working); }

Symbol massOfMix(const Mix& mix, const Working& working)
{
    return {"m", "mix", mix.mass().value, "g", phrase("mass of the mix"), working.keyOf("mass_g")};
}

Symbol temperatureSymbol(Celsius temperature) { return {"t", "", temperature.value, "°C", phrase("temperature")}; }

Symbol generalMass() { return {"m", "i", 0.0, "g", phrase("mass of each of them, one a row")}; }

}  // namespace firn
