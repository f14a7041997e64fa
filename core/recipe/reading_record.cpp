#include "recipe/reading_record.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>

namespace firn {

namespace {

constexpr std::array<std::string_view, static_cast<std::size_t>(Instrument::BoilingPoint) + 1> keys{
    "refractometer", "hydrometer-brix", "hydrometer-sg", "hydrometer-baume", "egg", "boiling-point"};

/// The number that these digits are; -1 for anything else.
int numberIn(std::string_view digits)
{
    int number = -1;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return read.ptr == digits.data() + digits.size() ? number : -1;
}

bool isDay(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return false;
    const int year = numberIn(text.substr(0, 4));
    const int month = numberIn(text.substr(5, 2));
    const int day = numberIn(text.substr(8, 2));
    return year >= 0 && month >= 0 && day >= 0
           && std::chrono::year_month_day(
               std::chrono::year(year), std::chrono::month(unsigned(month)), std::chrono::day(unsigned(day)))
                  .ok();
}

bool isTimeOfDay(std::string_view text)
{
    const auto isBelow = [](int number, int limit) { return number >= 0 && number < limit; };
    if (text.size() != 5 && text.size() != 8)
        return false;
    if (text[2] != ':' || !isBelow(numberIn(text.substr(0, 2)), 24) || !isBelow(numberIn(text.substr(3, 2)), 60))
        return false;
    return text.size() == 5 || (text[5] == ':' && isBelow(numberIn(text.substr(6, 2)), 61));
}

}  // namespace

std::string_view keyOf(Instrument instrument) { return keys[static_cast<std::size_t>(instrument)]; }

std::optional<Instrument> instrumentNamed(std::string_view key)
{
    const auto found = std::find(keys.begin(), keys.end(), key);
    return found == keys.end() ? std::nullopt : std::optional(static_cast<Instrument>(found - keys.begin()));
}

std::optional<Sentence> faultOfDate(std::string_view date)
{
    const bool isFine =
        date.empty() || (isDay(date.substr(0, 10)) && (date.size() == 10 || (date[10] == 'T' && isTimeOfDay(date.substr(11)))));
    if (isFine)
        return std::nullopt;
    return phrase("“{0}” is not a date. Write it as 2026-04-03 or 2026-04-03T15:20.", std::string(date));
}

}  // namespace firn
