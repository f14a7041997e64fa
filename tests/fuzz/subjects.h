// What must hold for every input whatsoever, however broken: no crash, one sentence where it is refused, and what is read can be written, read back
// as the same value, and used.
#pragma once

#include <span>
#include <string_view>

namespace firn {

/// One kind of input. The fuzzer of a subject and its folder in tests/fuzz/corpus have its name.
struct FuzzSubject {
    std::string_view name;
    bool (*holds)(std::string_view input);
};

std::span<const FuzzSubject> fuzzSubjects();

// Readers: what is written reads back as the same value.
bool textReadsBack(std::string_view input);
bool jsonReadsBack(std::string_view input);
bool jsonLdReadsBack(std::string_view input);
bool csvReadsBack(std::string_view input);
bool quantityReadsBack(std::string_view input);
bool ingredientCsvCanBeKept(std::string_view input);
bool foodDataCanBeKept(std::string_view input);
bool catalogueReadsBack(std::string_view input);

// What a person types into a field.
bool queryFindsSomeOfAll(std::string_view input);
bool answerIsJudged(std::string_view input);
bool temperatureIsRead(std::string_view input);
bool nameIsLookedUp(std::string_view input);

/// A recipe file that can be read can be used: analysed, reported, scaled, corrected, saved in a folder with its links, its versions compared and
/// put on the bench, its readings and tastings worked out.
bool recipeCanBeUsed(std::string_view input);

}  // namespace firn
