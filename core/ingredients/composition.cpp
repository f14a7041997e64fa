#include "ingredients/composition.h"

#include <algorithm>
#include <numeric>

namespace firn {

const std::array<ConstituentFacts, constituentCount>& allConstituents()
{
    using enum Constituent;
    static constexpr std::array<ConstituentFacts, constituentCount> facts{{
        {Water, "water", "Water"},
        {Fat, "fat", "Fat"},
        {Protein, "protein", "Protein"},
        {Sucrose, "sucrose", "Sucrose"},
        {Glucose, "glucose", "Glucose"},
        {Fructose, "fructose", "Fructose"},
        {Galactose, "galactose", "Galactose"},
        {Lactose, "lactose", "Lactose"},
        {Maltose, "maltose", "Maltose"},
        {Trehalose, "trehalose", "Trehalose"},
        {Oligosaccharides, "oligosaccharides", "Oligosaccharides"},
        {Dextrins, "dextrins", "Dextrins"},
        {Sorbitol, "sorbitol", "Sorbitol"},
        {Xylitol, "xylitol", "Xylitol"},
        {Erythritol, "erythritol", "Erythritol"},
        {Maltitol, "maltitol", "Maltitol"},
        {Glycerol, "glycerol", "Glycerol"},
        {Starch, "starch", "Starch"},
        {Fibre, "fibre", "Fibre"},
        {Hydrocolloid, "hydrocolloid", "Stabiliser gums"},
        {Minerals, "minerals", "Minerals"},
        {Salt, "salt", "Salt"},
        {Acid, "acid", "Acid"},
        {Ethanol, "ethanol", "Alcohol"},
        {Other, "other", "Other solids"},
    }};
    return facts;
}

std::optional<Constituent> constituentNamed(std::string_view key)
{
    const auto& all = allConstituents();
    const auto found = std::ranges::find(all, key, &ConstituentFacts::key);
    return found == all.end() ? std::nullopt : std::optional(found->constituent);
}

Grams Amounts::total() const { return std::accumulate(begin(), end(), Grams{}); }

void Amounts::add(const Amounts& other, double factor)
{
    for (std::size_t i = 0; i < constituentCount; ++i) {
        m_grams[i] += other.m_grams[i] * factor;
    }
}

}  // namespace firn
