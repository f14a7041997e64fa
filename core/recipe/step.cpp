#include "recipe/step.h"

#include <algorithm>
#include <array>

namespace firn {

namespace {

constexpr std::array<std::string_view, static_cast<std::size_t>(StepKind::Freeze) + 1> keys{
    "dissolve", "heat", "steep", "strain", "reduce", "chill", "fold", "churn", "freeze"};

}  // namespace

std::string_view keyOf(StepKind kind) { return keys[static_cast<std::size_t>(kind)]; }

std::optional<StepKind> stepNamed(std::string_view key)
{
    const auto found = std::find(keys.begin(), keys.end(), key);
    return found == keys.end() ? std::nullopt : std::optional(static_cast<StepKind>(found - keys.begin()));
}

}  // namespace firn
