// What food is made of, as far as freezing, reading and texture can tell the difference.
#pragma once

#include "units/quantity.h"

#include <array>
#include <optional>
#include <string_view>

namespace firn {

/// Constituents that the models tell apart. The order is the order of files and tables.
enum class Constituent {
    Water,
    Fat,
    Protein,
    Sucrose,
    Glucose,
    Fructose,
    Galactose,
    Lactose,
    Maltose,
    Trehalose,
    Oligosaccharides,  // of glucose syrups, taken as three glucose units; with Dextrins gives any syrup its number of molecules
    Dextrins,          // long chains of glucose syrups and maltodextrins, 4000 g/mol
    Sorbitol,
    Xylitol,
    Erythritol,
    Maltitol,
    Glycerol,
    Starch,
    Fibre,
    Hydrocolloid,
    Minerals,
    Salt,
    Acid,
    Ethanol,
    Other  // solids that the source does not identify
};

inline constexpr std::size_t constituentCount = static_cast<std::size_t>(Constituent::Other) + 1;

struct ConstituentFacts {
    Constituent constituent;
    std::string_view key;    // in files
    std::string_view label;  // for people
};

const std::array<ConstituentFacts, constituentCount>& allConstituents();
std::optional<Constituent> constituentNamed(std::string_view key);

/// Amounts of every constituent, in grams.
class Amounts {
public:
    constexpr Grams& operator[](Constituent c) { return m_grams[static_cast<std::size_t>(c)]; }
    constexpr Grams operator[](Constituent c) const { return m_grams[static_cast<std::size_t>(c)]; }
    constexpr auto begin() const { return m_grams.begin(); }
    constexpr auto end() const { return m_grams.end(); }

    Grams total() const;
    void add(const Amounts& other, double factor);

    friend bool operator==(const Amounts&, const Amounts&) = default;

private:
    std::array<Grams, constituentCount> m_grams{};
};

/// How far the constituents of a food may be from 100 g: tables round each of them and leave traces out.
inline constexpr Grams closesWithin{1.0};

/// What 100 g of an edible portion holds. The three last are parts of the amounts above, told apart because law, texture or the
/// textbook method ask for them.
struct Composition {
    Amounts per100g;
    Grams milkFat;           // part of the fat
    Grams milkSolidsNotFat;  // milk protein, lactose and minerals
    Grams yolkSolids;        // egg yolk without its water
    friend bool operator==(const Composition&, const Composition&) = default;
};

}  // namespace firn
