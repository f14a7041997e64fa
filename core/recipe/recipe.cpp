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

}  // namespace firn
