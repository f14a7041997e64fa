#include "ingredients/ingredient.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

// In the order of the enumerations.
constexpr std::array<std::string_view, 14> allergenKeys{"milk", "egg", "gluten", "nuts", "peanut", "soya", "sesame", "sulphites",
    "fish", "crustaceans", "molluscs", "celery", "mustard", "lupin"};
constexpr std::array<std::string_view, 7> hazardKeys{
    "raw-egg", "toxic-leaves", "fruit-kernels", "elderberry", "infant-honey", "whole-nuts", "tonka"};

template <class Enum, std::size_t count>
std::optional<Enum> named(const std::array<std::string_view, count>& keys, std::string_view key)
{
    const auto found = std::ranges::find(keys, key);
    return found == keys.end() ? std::nullopt : std::optional(static_cast<Enum>(found - keys.begin()));
}

}  // namespace

std::string_view keyOf(Allergen allergen) { return allergenKeys[static_cast<std::size_t>(allergen)]; }

std::optional<Allergen> allergenNamed(std::string_view key) { return named<Allergen>(allergenKeys, key); }

std::string_view keyOf(Hazard hazard) { return hazardKeys[static_cast<std::size_t>(hazard)]; }

std::optional<Hazard> hazardNamed(std::string_view key) { return named<Hazard>(hazardKeys, key); }

}  // namespace firn
