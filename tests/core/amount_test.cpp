#include "units/amount.h"

#include <clocale>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <locale>
#include <rapidcheck/gtest.h>

namespace firn {
namespace {

struct Written {
    std::string_view text;
    double value;
    std::size_t length;
};

class Number : public testing::TestWithParam<Written> {};

TEST_P(Number, IsReadAsWritten)
{
    const auto number = leadingNumber(GetParam().text);
    ASSERT_TRUE(number) << GetParam().text << ": " << english(number.error());
    EXPECT_DOUBLE_EQ(number->value, GetParam().value) << GetParam().text;
    EXPECT_EQ(number->length, GetParam().length) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(Amounts, Number,
    testing::Values(Written{"250 g", 250, 3}, Written{"  250", 250, 5}, Written{"1.5", 1.5, 3}, Written{"1,5", 1.5, 3},
        Written{".5", 0.5, 2}, Written{",5", 0.5, 2}, Written{"0.125 kg", 0.125, 5}, Written{"1/2", 0.5, 3}, Written{"1⁄2", 0.5, 5},
        Written{"1∕2", 0.5, 5}, Written{"½", 0.5, 2}, Written{"⅓", 1.0 / 3, 3}, Written{"⅞ cup", 0.875, 3},
        Written{"1 1/2", 1.5, 5}, Written{"1½", 1.5, 3}, Written{"1 ½", 1.5, 4}, Written{"2\u00a01/4 cups", 2.25, 6},
        Written{"3/2", 1.5, 3}, Written{"1e3", 1000, 3}, Written{"2.5E-1 g", 0.25, 6}, Written{"2eggs", 2, 1},
        Written{"1000000000", 1e9, 10}, Written{"1.", 1, 2}, Written{"1, ", 1, 2}, Written{"1e-400", 0, 6}, Written{"007", 7, 3},
        Written{"0", 0, 1}));

// A comma is a decimal mark: 1,250 kg is a German kilogram and a quarter, not an English ton and a quarter.
TEST(LeadingNumber, CommaIsADecimalMarkEvenBeforeThreeDigits)
{
    EXPECT_DOUBLE_EQ(leadingNumber("1,000")->value, 1.0);
    EXPECT_DOUBLE_EQ(leadingNumber("1,250 kg")->value, 1.25);
}

// In grams and millilitres either mark could as well part the thousands, and a thousand times too little would go unseen.
TEST(ParseAmount, OneMarkBeforeThreeDigitsIsAskedAboutWhereItCouldPartThousands)
{
    struct Doubtful {
        std::string_view text;
        AmountReadings readings;
    };
    const Doubtful cases[] = {
        {"1.015 g", {{1015, Unit::Gram}, {1.015, Unit::Gram}}},
        {"1,015 g", {{1015, Unit::Gram}, {1.015, Unit::Gram}}},
        {"1.015", {{1015, Unit::Gram}, {1.015, Unit::Gram}}},
        {"1,000g", {{1000, Unit::Gram}, {1, Unit::Gram}}},
        {"1.250 ml", {{1250, Unit::Millilitre}, {1.25, Unit::Millilitre}}},
        {"12,500 mL", {{12500, Unit::Millilitre}, {12.5, Unit::Millilitre}}},
        {"999.999 mg", {{999999, Unit::Milligram}, {999.999, Unit::Milligram}}},
        {"2,000 pieces", {{2000, Unit::Piece}, {2, Unit::Piece}}},
    };
    for (const auto& [text, readings] : cases) {
        const auto amount = parseAmount(text);
        ASSERT_FALSE(amount.has_value()) << text;
        ASSERT_TRUE(amount.error().readings) << text << ": " << english(amount.error().sentence);
        EXPECT_EQ(*amount.error().readings, readings) << text;
    }
    EXPECT_EQ(english(parseAmount("1,015 g").error().sentence),
        "“1,015” can mean 1015 g or 1.0150 g. Write it in one of these two ways.");
    // Both ways out lead somewhere.
    EXPECT_EQ(parseAmount("1015 g")->value, 1015);
    EXPECT_EQ(parseAmount("1.0150 g")->value, 1.015);
    // At the start of a longer text, too.
    EXPECT_TRUE(leadingAmount("1.015 g sugar").error().readings);
}

TEST(ParseAmount, IsNotAskedAboutWhereOnlyOneReadingIsSensible)
{
    const std::pair<std::string_view, Amount> cases[] = {
        {"1.015 kg", {1.015, Unit::Kilogram}},
        {"1,250 kg", {1.25, Unit::Kilogram}},
        {"12.345 kg", {12.345, Unit::Kilogram}},
        {"0.125 kg", {0.125, Unit::Kilogram}},
        {"0,125 l", {0.125, Unit::Litre}},
        {"1.250 l", {1.25, Unit::Litre}},
        {"0,500 g", {0.5, Unit::Gram}},
        {".125 g", {0.125, Unit::Gram}},
        {"1250.125 g", {1250.125, Unit::Gram}},
        {"1,25 g", {1.25, Unit::Gram}},
        {"1.5 g", {1.5, Unit::Gram}},
        {"1.0150 g", {1.015, Unit::Gram}},
        {"1.125 cups", {1.125, Unit::Cup}},
        {"2.205 lb", {2.205, Unit::Pound}},
        {"1.250 cl", {12.5, Unit::Millilitre}},
        {"1.125 %", {1.125, Unit::PercentOfMix}},
    };
    for (const auto& [text, amount] : cases) {
        const auto read = parseAmount(text);
        ASSERT_TRUE(read) << text << ": " << english(read.error().sentence);
        EXPECT_DOUBLE_EQ(read->value, amount.value) << text;
        EXPECT_EQ(read->unit, amount.unit) << text;
    }
    EXPECT_DOUBLE_EQ(parseAmount("1,250", Unit::Kilogram)->value, 1.25);
}

// A pinch was once read as 0.308058 mL, which no cook says. Singular and plural, alone and before a name.
TEST(ParseAmount, PinchesDashesShotsAndDropsStayWhatTheyAre)
{
    struct Words {
        Unit unit;
        std::string_view one, many;
    };
    for (const Words& words : {Words{Unit::Pinch, "pinch", "pinches"}, Words{Unit::Dash, "dash", "dashes"},
             Words{Unit::Shot, "shot", "shots"}, Words{Unit::Drop, "drop", "drops"}}) {
        const std::string one = "1 " + std::string(words.one), many = "2 " + std::string(words.many);
        EXPECT_EQ(*parseAmount(one), (Amount{1.0, words.unit})) << one;
        EXPECT_EQ(*parseAmount(many), (Amount{2.0, words.unit})) << many;
        EXPECT_EQ(amountText({1.0, words.unit}), one);
        EXPECT_EQ(amountText({2.0, words.unit}), many);
        const auto leading = leadingAmount(many + " of something");
        EXPECT_EQ(leading->unit, words.unit) << many;
        EXPECT_EQ(leading->length, many.size()) << many;
    }
}

// Files written before pinches were units hold the millilitres.
TEST(ParseAmount, MillilitresOfAPinchAreStillRead) { EXPECT_EQ(*parseAmount("0.308058 mL"), (Amount{0.308058, Unit::Millilitre})); }

std::string refusal(std::string_view text)
{
    const auto number = leadingNumber(text);
    return number ? "read as " + exactNumber(number->value) : english(number.error());
}

TEST(LeadingNumber, RefusesWithASentenceOfItsOwn)
{
    EXPECT_EQ(refusal(""), "An amount needs a number, such as 250 g or 1 1/2 cups.");
    EXPECT_EQ(refusal(" \t\u00a0"), "An amount needs a number, such as 250 g or 1 1/2 cups.");
    EXPECT_EQ(refusal("salt"), "“salt” does not start with a number. Write an amount such as 250 g or 1 1/2 cups.");
    for (const std::string_view negative : {"-5", "- 5 g", "−5", "–5", "-.5", "-½"})
        EXPECT_EQ(refusal(negative), "An amount cannot be negative.") << negative;
    for (const std::string_view range : {"2-3 lemons", "2 - 3", "2–3", "1/2 - 1 cup", "2 to 3 cups", "2 or 3"})
        EXPECT_EQ(refusal(range), "An amount cannot be a range. Write one number.") << range;
    for (const std::string_view fraction : {"1/0", "1 1/0", "0/0 cup", "1⁄0"})
        EXPECT_EQ(refusal(fraction), "A fraction cannot have zero below the line.") << fraction;
    for (const std::string_view large : {"1e308", "1e999", "1000000001", "1e308/2", "1e10 g"})
        EXPECT_EQ(refusal(large), "An amount cannot be larger than 1000000000.") << large;
    EXPECT_EQ(refusal(std::string(400, '9')), "An amount cannot be larger than 1000000000.");
    for (const std::string_view marks : {"1.000,5", "1,000.5", "1,000,000", "1.2.3", "1'015 g", "1’015"})
        EXPECT_EQ(refusal(marks), "An amount has one decimal mark and no mark between thousands. Write 1000.5 or 1000,5.") << marks;
    for (const std::string_view thousands : {"1 000", "12 500 g", "1\u00a0000 g"})
        EXPECT_EQ(refusal(thousands), "An amount has no blank between thousands. Write 1000 for 1 000.") << thousands;
}

TEST(LeadingNumber, WordsForNotANumberAreRefused)
{
    for (const std::string_view word : {"nan", "NaN g", "inf", "infinity", "-inf", "+5", "e5", ".", ",", "/2", "٣"})
        EXPECT_EQ(refusal(word),
            "“" + std::string(word) + "” does not start with a number. Write an amount such as 250 g or 1 1/2 cups.");
}

TEST(LeadingNumber, LongTextsAreQuotedInShort)
{
    const std::string text(1000, 'x');
    EXPECT_EQ(refusal(text),
        "“" + std::string(40, 'x') + "…” does not start with a number. Write an amount such as 250 g or 1 1/2 cups.");
}

struct GermanNumbers : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

// A German locale once turned a typed 1.5 into 15.
TEST(LeadingNumber, DoesNotDependOnTheLocale)
{
    const std::locale before = std::locale::global(std::locale(std::locale::classic(), new GermanNumbers));
    std::setlocale(LC_ALL, "de_DE.UTF-8");  // where the machine has it
    EXPECT_DOUBLE_EQ(leadingNumber("1.5")->value, 1.5);
    EXPECT_DOUBLE_EQ(leadingNumber("1,5")->value, 1.5);
    EXPECT_EQ(amountText({1250.25, Unit::Gram}), "1250.25 g");
    EXPECT_EQ(exactNumber(1250.25), "1250.25");
    EXPECT_EQ(english(phrase("{0}", Figure{1250.25, 2})), "1250.25");
    std::setlocale(LC_ALL, "C");
    std::locale::global(before);
}

TEST(StartsWithNumber, AlsoIfTheNumberIsRefused)
{
    for (const std::string_view text : {"2 eggs", " ½ cup", "-5 g", "2-3", "1/0", "1e308"})
        EXPECT_TRUE(startsWithNumber(text)) << text;
    for (const std::string_view text : {"", "eggs", "- 5 g", "nan", "of 2"})
        EXPECT_FALSE(startsWithNumber(text)) << text;
}

struct WrittenAmount {
    std::string_view text;
    Amount amount;
};

class ParsedAmount : public testing::TestWithParam<WrittenAmount> {};

TEST_P(ParsedAmount, IsReadAsWritten)
{
    const auto amount = parseAmount(GetParam().text);
    ASSERT_TRUE(amount) << GetParam().text << ": " << english(amount.error().sentence);
    EXPECT_DOUBLE_EQ(amount->value, GetParam().amount.value) << GetParam().text;
    EXPECT_EQ(amount->unit, GetParam().amount.unit) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(Amounts, ParsedAmount,
    testing::Values(WrittenAmount{"250 g", {250, Unit::Gram}}, WrittenAmount{"250g", {250, Unit::Gram}},
        WrittenAmount{"250", {250, Unit::Gram}}, WrittenAmount{" 1 1/2 cups ", {1.5, Unit::Cup}},
        WrittenAmount{"0,5 l", {0.5, Unit::Litre}}, WrittenAmount{"12 %", {12, Unit::PercentOfMix}},
        WrittenAmount{"12%", {12, Unit::PercentOfMix}}, WrittenAmount{"2 T", {2, Unit::Tablespoon}},
        WrittenAmount{"2 t", {2, Unit::Teaspoon}}, WrittenAmount{"8 fl. oz.", {8, Unit::FluidOunce}},
        WrittenAmount{"25 cl", {250, Unit::Millilitre}}, WrittenAmount{"2,5 dl", {250, Unit::Millilitre}},
        WrittenAmount{"1 DL.", {100, Unit::Millilitre}}, WrittenAmount{"3 pcs", {3, Unit::Piece}},
        WrittenAmount{"250\u00a0g", {250, Unit::Gram}}));

std::string amountRefusal(std::string_view text)
{
    const auto amount = parseAmount(text);
    return amount ? "read as " + amountText(*amount) : english(amount.error().sentence);
}

TEST(ParseAmount, RefusesWhatIsLeftOver)
{
    EXPECT_EQ(amountRefusal("2 smidgens"), "“smidgens” is not a unit that Firn knows; the units are g, kg, mg, oz, lb, mL, L, tsp, "
                                           "tbsp, cup, metric tsp, metric tbsp, "
                                           "metric cup, imperial cup, fl oz, pt, qt, imperial fl oz, imperial pt, shot, dash, "
                                           "pinch, drop, piece, %.");
    EXPECT_EQ(amountRefusal("2 g sugar"), "“sugar” cannot stand after an amount. Write only a number and a unit.");
    EXPECT_EQ(amountRefusal("1e9 dl"), "An amount cannot be larger than 1000000000.");
    EXPECT_EQ(amountRefusal("-1 g"), "An amount cannot be negative.");
}

TEST(ParseAmount, UsesTheFallbackUnit)
{
    EXPECT_EQ(*parseAmount("3", Unit::Piece), (Amount{3, Unit::Piece}));
    EXPECT_EQ(*parseAmount("3 kg", Unit::Piece), (Amount{3, Unit::Kilogram}));
}

TEST(AmountText, UsesFractionsForKitchenMeasuresOnly)
{
    EXPECT_EQ(amountText({1.5, Unit::Cup}), "1 1/2 cups");
    EXPECT_EQ(amountText({0.5, Unit::Cup}), "1/2 cup");
    EXPECT_EQ(amountText({1.0, Unit::Cup}), "1 cup");
    EXPECT_EQ(amountText({0.0, Unit::Cup}), "0 cups");
    EXPECT_EQ(amountText({1.0 / 3.0, Unit::Cup}), "1/3 cup");
    EXPECT_EQ(amountText({2.0 + 2.0 / 3.0, Unit::Tablespoon}), "2 2/3 tbsp");
    EXPECT_EQ(amountText({0.125, Unit::Teaspoon}), "1/8 tsp");
    EXPECT_EQ(amountText({0.75, Unit::Pound}), "3/4 lb");
    EXPECT_EQ(amountText({2.5, Unit::Piece}), "2 1/2 pieces");
    EXPECT_EQ(amountText({0.1, Unit::Cup}), "0.1 cup");
    EXPECT_EQ(amountText({0.333, Unit::Cup}), "0.333 cup");
    EXPECT_EQ(amountText({1.5, Unit::Gram}), "1.5 g");
    EXPECT_EQ(amountText({0.5, Unit::Litre}), "0.5 L");
    EXPECT_EQ(amountText({12.0, Unit::PercentOfMix}), "12 %");
}

TEST(AmountNumber, HasAtMostSixDecimalsAndNoTrailingZeros)
{
    EXPECT_EQ(amountNumber({1.0 / 3.0, Unit::Gram}), "0.333333");
    EXPECT_EQ(amountNumber({250.0, Unit::Gram}), "250");
    EXPECT_EQ(amountNumber({100.0, Unit::Gram}), "100");
    EXPECT_EQ(amountNumber({1e-9, Unit::Gram}), "0");
    EXPECT_EQ(amountNumber({1e9, Unit::Gram}), "1000000000");
}

/// Thousandths up to a thousand, among them all numbers that could be read in two ways.
double anyThousandths() { return *rc::gen::inRange(0, 1000000) / 1000.0; }

double anyValue() { return static_cast<double>(*rc::gen::inRange(0, 1000000000)) / *rc::gen::inRange(1, 100000); }

Unit anyUnit() { return allUnits()[*rc::gen::inRange<std::size_t>(0, allUnits().size())].unit; }

RC_GTEST_PROP(ExactNumber, IsReadBackExactly, ())
{
    const double value = anyValue();
    RC_ASSERT(leadingNumber(exactNumber(value))->value == value);
}

RC_GTEST_PROP(AmountText, IsReadBackWithinHalfOfItsLastDecimal, ())
{
    const Amount amount{anyValue(), anyUnit()};
    const auto read = parseAmount(amountText(amount));
    RC_ASSERT(read.has_value());
    RC_ASSERT(read->unit == amount.unit);
    RC_ASSERT(std::abs(read->value - amount.value) <= 0.5e-6 + amount.value * std::numeric_limits<double>::epsilon());
}

RC_GTEST_PROP(AmountText, IsNeverAskedAboutAndReadsBackTheSame, ())
{
    const Amount amount{anyThousandths(), anyUnit()};
    const auto read = parseAmount(amountText(amount));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == amount);
    const auto number = parseAmount(amountNumber(amount), amount.unit);
    RC_ASSERT(number.has_value() && *number == amount);
    const auto exact = parseAmount(exactAmountNumber(amount), amount.unit);
    RC_ASSERT(exact.has_value() && *exact == amount);
}

RC_GTEST_PROP(AmountText, FractionsOfTheKitchenAreReadBackExactly, ())
{
    const Amount amount{*rc::gen::inRange(0, 1000) + *rc::gen::inRange(0, 24) / 24.0, Unit::Cup};
    const int twentyFourths = static_cast<int>(std::lround(amount.value * 24)) % 24;
    RC_PRE(twentyFourths % 3 == 0 || twentyFourths % 8 == 0);
    RC_ASSERT(parseAmount(amountText(amount))->value == amount.value);
}

}  // namespace
}  // namespace firn
