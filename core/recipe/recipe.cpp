#include "recipe/recipe.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

struct ProcessKey {
    Process process;
    std::string_view key;
};

constexpr std::array<ProcessKey, 4> processKeys = {{
    {Process::Still, "still"},
    {Process::Scraped, "scraped"},
    {Process::Churned, "churned"},
    {Process::Folded, "folded"},
}};

}  // namespace

std::string_view keyOf(Process process) { return std::ranges::find(processKeys, process, &ProcessKey::process)->key; }

std::optional<Process> processNamed(std::string_view key)
{
    const auto found = std::ranges::find(processKeys, key, &ProcessKey::key);
    return found == processKeys.end() ? std::nullopt : std::optional(found->process);
}

Recipe::Recipe() = default;
Recipe::Recipe(const Recipe&) = default;
Recipe::Recipe(Recipe&&) noexcept = default;
Recipe& Recipe::operator=(const Recipe&) = default;
Recipe& Recipe::operator=(Recipe&&) noexcept = default;
Recipe::~Recipe() = default;
bool operator==(const Recipe&, const Recipe&) = default;
bool operator==(const LinkedRecipe&, const LinkedRecipe&) = default;
bool operator==(const Version&, const Version&) = default;

std::optional<Process> processOf(const Recipe& recipe, std::size_t component)
{
    const auto own = recipe.components.at(component).process;
    return own ? own : recipe.process;
}

double overrunOf(const Recipe& recipe, std::size_t component)
{
    return recipe.components.at(component).overrun_percent.value_or(recipe.overrun_percent);
}

}  // namespace firn
