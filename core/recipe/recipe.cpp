#include "recipe/recipe.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

struct ProcessKey {
    Process process;
    std::string_view key;
};

constexpr std::array<ProcessKey, allProcesses.size()> processKeys = {{
    {Process::Still, "still"},
    {Process::Scraped, "scraped"},
    {Process::Churned, "churned"},
    {Process::Folded, "folded"},
    {Process::Unfrozen, "unfrozen"},
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

std::optional<Process> processOfWhole(const Recipe& recipe)
{
    std::vector<std::optional<Process>> frozen;
    for (std::size_t i = 0; i < recipe.components.size(); ++i) {
        if (const auto process = processOf(recipe, i); process != Process::Unfrozen)
            frozen.push_back(process);
    }
    if (frozen.empty())
        return Process::Unfrozen;
    const bool speaksForAll = recipe.process && recipe.process != Process::Unfrozen;
    return frozen.size() > 1 && speaksForAll ? recipe.process : frozen.front();
}

double overrunOf(const Recipe& recipe, std::size_t component)
{
    return recipe.components.at(component).overrun_percent.value_or(recipe.overrun_percent);
}

}  // namespace firn
