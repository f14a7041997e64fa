#include "exchange/files.h"

#include "exchange/json.h"
#include "exchange/plain_text.h"
#include "exchange/recipe_csv.h"
#include "exchange/recipe_json.h"
#include "exchange/recipe_jsonld.h"
#include "exchange/recipe_text.h"
#include "units/text.h"

#include <algorithm>
#include <array>
#include <fstream>

namespace firn {

namespace {

constexpr double bytesPerMegabyte = 1024.0 * 1024.0;

Result<Recipe> recipeFromAnyJson(std::string_view text)
{
    const auto json = jsonFromText(text);
    if (!json)
        return failure(json.error());
    const bool isLinkedJson = json->is_array() || json->contains("@context") || json->contains("@graph") || json->contains("@type");
    return isLinkedJson && !json->contains("format") ? recipeFromJsonLd(text) : recipeFromJson(text);
}

Result<Recipe> recipeByEnding(std::string_view contents, const std::string& ending)
{
    const std::string_view start = contents.substr(std::min(contents.find_first_not_of(" \t\r\n"), contents.size()));
    if (ending == ".jsonld")
        return recipeFromJsonLd(contents);
    if (ending == ".firn")
        return recipeFromJson(contents);
    if (ending == ".json" || start.starts_with('{'))
        return recipeFromAnyJson(contents);
    return ending == ".csv" ? recipeFromCsv(contents) : recipeFromText(contents);
}

/// A picture, a document of an office program, a program: anything but text. Text in another encoding than UTF-8 is text.
bool isSomethingElse(std::string_view contents)
{
    constexpr std::array<std::string_view, 4> beginnings = {"%PDF-", "{\\rtf", "<?xml", "<svg"};
    if (std::ranges::any_of(beginnings, [&](std::string_view beginning) { return contents.starts_with(beginning); }))
        return true;
    if (contents.starts_with("\xFF\xFE") || contents.starts_with("\xFE\xFF"))  // UTF-16, half of whose bytes are zero
        return false;
    const bool hasZero = contents.find('\0') != std::string_view::npos;
    const auto isControl = [](char c) {
        return c >= '\0' && c < ' ' && std::string_view("\t\n\v\f\r\x1b").find(c) == std::string_view::npos;
    };
    return hasZero || (std::ranges::any_of(contents, isControl) && faultOfText(contents));
}

}  // namespace

std::optional<Sentence> faultOfFile(const std::filesystem::path& file, std::uintmax_t limit_bytes)
{
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (std::filesystem::is_directory(status))
        return phrase("{0} is a folder. Choose a file in it.", file.string());
    if (status.type() == std::filesystem::file_type::not_found)
        return phrase("{0} does not exist. Check the name and the folder.", file.string());
    if (std::filesystem::exists(status) && !std::filesystem::is_regular_file(status))
        return phrase("{0} is a pipe, a socket or a device. Choose an ordinary file.", file.string());
    if (const auto size = std::filesystem::file_size(file, error); !error && size > limit_bytes)
        return phrase("{0} is {1} MB and the limit is {2} MB. Choose a smaller file.", file.string(),
            Figure{static_cast<double>(size) / bytesPerMegabyte, 1}, Figure{static_cast<double>(limit_bytes) / bytesPerMegabyte, 0});
    return std::nullopt;
}

Result<std::string> contentsOf(const std::filesystem::path& file)
{
    if (auto fault = faultOfFile(file))
        return failure(std::move(*fault));
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return failure(phrase("{0} could not be opened. Check that you have permission to read it.", file.string()));
    return contentsOf(stream);
}

Result<std::string> contentsOf(std::istream& stream)
{
    std::string contents;
    std::array<char, 65536> block{};
    while (stream.read(block.data(), block.size()) || stream.gcount() > 0) {
        contents.append(block.data(), static_cast<std::size_t>(stream.gcount()));
        if (contents.size() > largestFile_bytes)
            return failure(phrase("This is more than {0} MB. No recipe is that long.",
                Figure{static_cast<double>(largestFile_bytes) / bytesPerMegabyte, 0}));
    }
    if (stream.bad())
        return failure(phrase("The file could not be read to its end. Try again, or copy it to another disk."));
    return contents;
}

Result<Recipe> recipeFromContents(const std::string& contents, const std::filesystem::path& name)
{
    const bool isStandardInput = name == "-";
    auto recipe = isSomethingElse(contents)
                      ? failure(phrase("This is not a recipe or a text file. Choose a .firn, .txt or .csv file."))
                      : recipeByEnding(withoutByteOrderMark(contents), lowered(name.extension().string()));
    if (!recipe && isStandardInput)
        return failure(std::move(recipe.error()));
    if (!recipe)
        return failure(phrase("{0}: {1}", name.string(), english(recipe.error())));
    const bool couldHoldATitle = lowered(name.extension().string()) == ".firn";  // an empty title there is meant
    if (recipe->title.empty() && !couldHoldATitle && !isStandardInput && !faultOfText(name.stem().string()))
        recipe->title = name.stem().string();
    return recipe;
}

}  // namespace firn
