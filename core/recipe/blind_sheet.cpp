#include "recipe/blind_sheet.h"

#include <algorithm>
#include <random>

namespace firn {

namespace {

constexpr int firstCode = 100;
constexpr int lastCode = 999;

}  // namespace

BlindSheet blindSheet(const std::vector<std::string>& versions, std::uint64_t seed, const std::vector<std::string>& taken)
{
    std::vector<std::string> fresh, used;
    for (int code = firstCode; code <= lastCode; ++code) {
        std::string text = std::to_string(code);
        auto& codes = std::ranges::find(taken, text) == taken.end() ? fresh : used;
        codes.push_back(std::move(text));
    }
    std::mt19937_64 random(seed);
    std::ranges::shuffle(fresh, random);
    fresh.insert(fresh.end(), used.begin(), used.end());
    BlindSheet sheet;
    for (std::size_t i = 0; i < versions.size() && i < fresh.size(); ++i)
        sheet.samples.push_back({fresh[i], versions[i]});
    std::ranges::shuffle(sheet.samples, random);
    return sheet;
}

std::vector<std::string> codesOf(const Recipe& recipe)
{
    std::vector<std::string> codes;
    for (const BlindSheet& sheet : recipe.blindSheets)
        for (const CodedSample& sample : sheet.samples)
            codes.push_back(sample.code);
    return codes;
}

std::vector<std::string> servingOrder(const BlindSheet& sheet, std::size_t taster)
{
    std::vector<std::string> codes;
    for (const CodedSample& sample : sheet.samples)
        codes.push_back(sample.code);
    if (!codes.empty())
        std::ranges::rotate(codes, codes.begin() + std::ptrdiff_t(taster % codes.size()));
    return codes;
}

const BlindSheet* sheetWith(const Recipe& recipe, std::string_view code)
{
    const auto found = std::find_if(recipe.blindSheets.rbegin(), recipe.blindSheets.rend(), [code](const BlindSheet& sheet) {
        return std::ranges::find(sheet.samples, code, &CodedSample::code) != sheet.samples.end();
    });
    return found == recipe.blindSheets.rend() ? nullptr : &*found;
}

bool isStillHidden(const Tasting& tasting, const Recipe& recipe)
{
    const BlindSheet* sheet = tasting.code.empty() ? nullptr : sheetWith(recipe, tasting.code);
    return sheet && !sheet->isRevealed;
}

std::optional<std::string> versionOf(const Tasting& tasting, const Recipe& recipe)
{
    if (tasting.code.empty())
        return tasting.version;
    if (const BlindSheet* sheet = sheetWith(recipe, tasting.code)) {
        if (!sheet->isRevealed)
            return std::nullopt;
        return std::ranges::find(sheet->samples, tasting.code, &CodedSample::code)->version;
    }
    return tasting.version.empty() ? std::nullopt : std::optional(tasting.version);
}

bool isBehindCode(const Recipe& recipe, std::string_view version)
{
    return std::ranges::any_of(recipe.blindSheets, [version](const BlindSheet& sheet) {
        return !sheet.isRevealed && std::ranges::find(sheet.samples, version, &CodedSample::version) != sheet.samples.end();
    });
}

}  // namespace firn
