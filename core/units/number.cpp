#include "units/number.h"

#include "units/text.h"

#include <charconv>
#include <cmath>
#include <limits>

namespace firn {

namespace {

struct Fraction {
    double above;
    double below;
    std::size_t length;
};

struct FractionSign {
    std::string_view sign;
    double above;
    double below;
};
constexpr FractionSign fractionSigns[] = {
    {"½", 1, 2},
    {"⅓", 1, 3},
    {"⅔", 2, 3},
    {"¼", 1, 4},
    {"¾", 3, 4},
    {"⅕", 1, 5},
    {"⅖", 2, 5},
    {"⅗", 3, 5},
    {"⅘", 4, 5},
    {"⅙", 1, 6},
    {"⅚", 5, 6},
    {"⅐", 1, 7},
    {"⅛", 1, 8},
    {"⅜", 3, 8},
    {"⅝", 5, 8},
    {"⅞", 7, 8},
    {"⅑", 1, 9},
    {"⅒", 1, 10},
};

/// "/", the fraction slash U+2044 and the division slash U+2215.
constexpr std::array<std::string_view, 3> slashes = {"/", "\u2044", "\u2215"};
/// Hyphen, minus U+2212 and en dash U+2013: signs of a negative number, or between the ends of a range.
constexpr std::array<std::string_view, 3> dashes = {"-", "\u2212", "\u2013"};

template <std::size_t n>
std::size_t oneOfAt(const std::array<std::string_view, n>& signs, std::string_view text)
{
    const auto found = std::ranges::find_if(signs, [&](std::string_view sign) { return text.starts_with(sign); });
    return found == signs.end() ? 0 : found->size();
}

std::size_t digitsAt(std::string_view text) { return lengthOf(isDigit, text); }

bool isDecimalMark(char c) { return c == '.' || c == ','; }

/// The value of digits, a decimal point and an exponent. What is too large for a double is infinite, what is too small is zero.
double valueOf(std::string_view decimal)
{
    double value = 0.0;
    const auto read = std::from_chars(decimal.data(), decimal.data() + decimal.size(), value);
    if (read.ec != std::errc::result_out_of_range)
        return value;
    const auto exponent = decimal.find_first_of("eE");
    const bool isTiny =
        exponent == decimal.npos ? decimal.find_first_not_of('0') == decimal.find('.') : decimal[exponent + 1] == '-';
    return isTiny ? 0.0 : std::numeric_limits<double>::infinity();
}

std::optional<Fraction> fractionAt(std::string_view text)
{
    for (const FractionSign& sign : fractionSigns) {
        if (text.starts_with(sign.sign))
            return Fraction{sign.above, sign.below, sign.sign.size()};
    }
    const std::size_t above = digitsAt(text);
    const std::size_t slash = above == 0 ? 0 : oneOfAt(slashes, text.substr(above));
    const std::size_t below = slash == 0 ? 0 : digitsAt(text.substr(above + slash));
    if (below == 0)
        return std::nullopt;
    return Fraction{valueOf(text.substr(0, above)), valueOf(text.substr(above + slash, below)), above + slash + below};
}

/// "e5", "E-7": the length of an exponent.
std::size_t exponentAt(std::string_view text)
{
    if (!text.starts_with('e') && !text.starts_with('E'))
        return 0;
    const std::size_t sign = text.size() > 1 && (text[1] == '+' || text[1] == '-') ? 1 : 0;
    const std::size_t digits = digitsAt(text.substr(1 + sign));
    return digits == 0 ? 0 : 1 + sign + digits;
}

/// A number without a sign at the very start, not yet judged: infinite if too large, NaN if it divides by zero.
std::optional<LeadingNumber> numberAt(std::string_view text)
{
    const auto quotient = [](const Fraction& f) {
        return f.below == 0.0 ? std::numeric_limits<double>::quiet_NaN() : f.above / f.below;
    };
    if (const auto fraction = fractionAt(text))
        return LeadingNumber{quotient(*fraction), fraction->length};

    const std::size_t whole = digitsAt(text);
    const bool hasMark = whole < text.size() && isDecimalMark(text[whole]);
    const std::size_t decimals = hasMark ? digitsAt(text.substr(whole + 1)) : 0;
    if (whole + decimals == 0)
        return std::nullopt;
    std::size_t length = whole + (decimals > 0 ? 1 + decimals : 0);
    length += exponentAt(text.substr(length));

    if (length == whole) {
        const std::size_t gap = blanksAt(text.substr(whole));
        if (const auto fraction = fractionAt(text.substr(whole + gap)))
            return LeadingNumber{valueOf(text.substr(0, whole)) + quotient(*fraction), whole + gap + fraction->length};
    }
    std::string decimal(text.substr(0, length));
    std::ranges::replace(decimal, ',', '.');
    return LeadingNumber{valueOf(decimal), length};
}

bool continuesAsRange(std::string_view rest)
{
    rest.remove_prefix(blanksAt(rest));
    std::size_t between = oneOfAt(dashes, rest);
    if (between == 0 && (rest.starts_with("to ") || rest.starts_with("or ")))
        between = 3;
    return between > 0 && numberAt(trimmed(rest.substr(between)));
}

/// The apostrophes that part thousands in Switzerland.
constexpr std::array<std::string_view, 2> apostrophes = {"'", "\u2019"};

/// "1'000": an apostrophe and three digits behind a whole number.
bool hasThousandsApostrophe(std::string_view number, std::string_view rest)
{
    const std::size_t mark = oneOfAt(apostrophes, rest);
    return mark > 0 && digitsAt(number) == number.size() && digitsAt(rest.substr(mark)) == 3;
}

/// "1 000": a whole number of up to three digits, a blank, and three digits.
bool hasBlankThousands(std::string_view number, std::string_view rest)
{
    const std::size_t blank = blankAt(rest);
    return blank > 0 && number.size() <= 3 && digitsAt(number) == number.size() && digitsAt(rest.substr(blank)) == 3;
}

}  // namespace

std::optional<Sentence> faultOfAmount(double value)
{
    if (value < 0.0)
        return phrase("An amount cannot be negative.");
    if (value > largestAmount)
        return phrase("An amount cannot be larger than {0}.", Figure{largestAmount, 0});
    return std::nullopt;
}

bool startsWithNumber(std::string_view text)
{
    text.remove_prefix(blanksAt(text));
    text.remove_prefix(oneOfAt(dashes, text));
    return numberAt(text).has_value();
}

Result<LeadingNumber> leadingNumber(std::string_view text)
{
    const std::size_t gap = blanksAt(text);
    const std::string_view start = text.substr(gap);
    if (start.empty())
        return failure(phrase("An amount needs a number, such as 250 g or 1 1/2 cups."));
    if (const std::size_t dash = oneOfAt(dashes, start); dash > 0 && numberAt(trimmed(start.substr(dash))))
        return failure(*faultOfAmount(-1.0));
    const auto number = numberAt(start);
    if (!number)
        return failure(
            phrase("“{0}” does not start with a number. Write an amount such as 250 g or 1 1/2 cups.", shortened(start)));
    if (std::isnan(number->value))
        return failure(phrase("A fraction cannot have zero below the line."));
    if (auto fault = faultOfAmount(number->value))
        return failure(*fault);

    const std::string_view rest = start.substr(number->length);
    const bool hasSecondMark = rest.size() > 1 && isDecimalMark(rest[0]) && isDigit(rest[1]);
    if (hasSecondMark || hasThousandsApostrophe(start.substr(0, number->length), rest))
        return failure(phrase("An amount has one decimal mark and no mark between thousands. Write 1000.5 or 1000,5."));
    if (continuesAsRange(rest))
        return failure(phrase("An amount cannot be a range. Write one number."));
    if (hasBlankThousands(start.substr(0, number->length), rest))
        return failure(phrase("An amount has no blank between thousands. Write 1000 for 1 000."));
    const bool endsInMark = !rest.empty() && isDecimalMark(rest[0]) && (rest.size() == 1 || blankAt(rest.substr(1)) > 0);
    return LeadingNumber{number->value, gap + number->length + (endsInMark ? 1 : 0)};
}

bool mayPartThousands(std::string_view number)
{
    const std::size_t whole = digitsAt(number);
    return whole >= 1 && whole <= 3 && number[0] != '0' && number.size() == whole + 4 && isDecimalMark(number[whole])
           && digitsAt(number.substr(whole + 1)) == 3;
}

double roundedTo(int decimals, double value)
{
    constexpr double halfInBinary = 1e-12;   // how far a half may be off for being held in binary
    constexpr double allDigitsWhole = 1e15;  // beyond, a double has no decimals to round
    const double power = std::pow(10.0, decimals);
    const double scaled = std::abs(value) * power;
    if (!(scaled < allDigitsWhole))
        return value;
    return std::copysign(std::floor(scaled * (1.0 + halfInBinary) + 0.5) / power, value);
}

std::string exactNumber(double value)
{
    std::string text(400, '\0');
    const auto written = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    text.resize(static_cast<std::size_t>(written.ptr - text.data()));
    return text;
}

}  // namespace firn
