#include "recipe/written_number.h"

#include "units/number.h"
#include "units/unit.h"

#include <array>

namespace firn {

namespace {

struct NumberWord {
    std::string_view word;
    std::string_view digits;
};
constexpr NumberWord numberWords[] = {
    {"a", "1"},
    {"an", "1"},
    {"one", "1"},
    {"two", "2"},
    {"a couple of", "2"},
    {"three", "3"},
    {"four", "4"},
    {"five", "5"},
    {"six", "6"},
    {"seven", "7"},
    {"eight", "8"},
    {"nine", "9"},
    {"ten", "10"},
    {"twelve", "12"},
    {"dozen", "12"},
    {"a dozen", "12"},
};

struct Part {
    std::string_view word;
    std::string_view digits;
};
/// What is followed by "of a" or "a": "half a cup", "three quarters of a cup".
constexpr Part parts[] = {
    {"half", "1/2"},
    {"one half", "1/2"},
    {"a half", "1/2"},
    {"a third", "1/3"},
    {"one third", "1/3"},
    {"two thirds", "2/3"},
    {"quarter", "1/4"},
    {"a quarter", "1/4"},
    {"one quarter", "1/4"},
    {"three quarters", "3/4"},
};

/// "½", "1/2": the bytes of a fraction below one, with nothing before it.
std::size_t fractionAt(std::string_view text)
{
    constexpr std::array<std::string_view, 3> slashes = {"/", "\u2044", "\u2215"};
    const std::size_t above = lengthOf(isDigit, text);
    for (const std::string_view slash : slashes) {
        const std::string_view below = text.substr(above).substr(std::min(slash.size(), text.size() - above));
        if (above > 0 && text.substr(above).starts_with(slash) && lengthOf(isDigit, below) > 0)
            return above + slash.size() + lengthOf(isDigit, below);
    }
    if (above > 0 || text.empty() || !isInsideCharacter(text.substr(1).empty() ? ' ' : text[1]))
        return 0;
    // A sign such as ½: the one character that leadingNumber takes for a number.
    std::size_t length = 1;
    while (length < text.size() && isInsideCharacter(text[length]))
        ++length;
    return startsWithNumber(text.substr(0, length)) ? length : 0;
}

bool isBelowOne(std::string_view fraction)
{
    const auto number = leadingNumber(fraction);
    return number && number->value < 1.0;
}

/// "250", "0,5", "1.000,5", "1e3": digits and marks between them.
std::size_t decimalAt(std::string_view text)
{
    std::size_t length = lengthOf(isDigit, text);
    while (length < text.size() && (text[length] == '.' || text[length] == ',') && lengthOf(isDigit, text.substr(length + 1)) > 0)
        length += 1 + lengthOf(isDigit, text.substr(length + 1));
    const std::string_view rest = text.substr(length);
    if (length > 0 && rest.size() > 1 && (rest[0] == 'e' || rest[0] == 'E')) {
        const std::size_t sign = rest[1] == '+' || rest[1] == '-' ? 1 : 0;
        if (const std::size_t digits = lengthOf(isDigit, rest.substr(1 + sign)); digits > 0)
            length += 1 + sign + digits;
    }
    return length;
}

/// "half a cup", "three quarters of a cup"; not "half cream".
std::optional<WrittenNumber> takePart(WordReader& reader)
{
    const std::size_t start = reader.place();
    std::string_view digits;
    std::size_t longest = 0;
    for (const Part& part : parts) {
        const std::size_t length = oneOfWordsAt(std::span(&part.word, 1), reader.rest());
        if (length > longest) {
            longest = length;
            digits = part.digits;
        }
    }
    if (longest == 0)
        return std::nullopt;
    reader.skip(longest);
    constexpr auto links = std::to_array<std::string_view>({"of a", "of an", "a", "an", "of one"});
    if (reader.take(links))
        return WrittenNumber{digits == "1/2" && reader.take("dozen") ? "6" : std::string(digits), true};
    if (const auto unit = leadingUnit(reader.rest()); unit && unit->unit != Unit::PercentOfMix)  // "half cup sugar"
        return WrittenNumber{std::string(digits), true};
    reader.goBackTo(start);
    return std::nullopt;
}

std::optional<WrittenNumber> takeNumberInWords(WordReader& reader)
{
    if (auto part = takePart(reader))
        return part;
    const NumberWord* longest = nullptr;
    std::size_t length = 0;
    for (const NumberWord& number : numberWords) {
        if (const std::size_t found = oneOfWordsAt(std::span(&number.word, 1), reader.rest()); found > length) {
            length = found;
            longest = &number;
        }
    }
    if (!longest)
        return std::nullopt;
    reader.skip(length);
    return WrittenNumber{std::string(longest->digits), true};
}

}  // namespace

bool takeDash(WordReader& reader)
{
    // Hyphen, no-break hyphen, en and em dash, minus.
    for (const std::string_view dash : {"-", "\u2011", "\u2013", "\u2014", "\u2212"})
        if (reader.takeSign(dash))
            return true;
    return false;
}

std::optional<WrittenNumber> takeNumber(WordReader& reader)
{
    const std::string_view text = reader.rest();
    if (const std::size_t fraction = fractionAt(text); fraction > 0) {
        reader.skip(fraction);
        return WrittenNumber{std::string(text.substr(0, fraction))};
    }
    const std::size_t whole = decimalAt(text);
    if (whole == 0)
        return takeNumberInWords(reader);
    WrittenNumber number{std::string(text.substr(0, whole))};
    const bool isWhole = lengthOf(isDigit, text) == whole;
    // "1-1/2" is one and a half where it is written without blanks.
    const std::string_view glued = text.substr(whole).starts_with('-') ? text.substr(whole + 1) : std::string_view();
    const bool isMixed = isWhole && fractionAt(glued) > 0 && isBelowOne(glued.substr(0, fractionAt(glued)));
    reader.skip(isMixed ? whole + 1 : whole);
    const std::size_t start = reader.place();
    if (isWhole && !isMixed) {
        constexpr auto links = std::to_array<std::string_view>({"and", "&"});
        reader.take(links);
    }
    const std::size_t fraction = fractionAt(reader.rest());
    if (isWhole && fraction > 0 && isBelowOne(reader.rest().substr(0, fraction))) {
        number.digits += " " + std::string(reader.rest().substr(0, fraction));
        reader.skip(fraction);
    } else {
        reader.goBackTo(start);
    }
    return number;
}

}  // namespace firn
