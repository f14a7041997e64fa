#include "derivation/formula_text.h"

#include <cmath>
#include <gtest/gtest.h>

namespace firn {
namespace {

Symbol symbol(const char* name, const char* subscript, double value, const char* unit)
{
    return {name, subscript, value, unit, {}};
}

const Symbol mass = symbol("m", "sugars", 120.5, "g");
const Symbol whole = symbol("m", "mix", 1000.0, "g");
const Symbol cold = symbol("T", "", -2.5, "°C");
const Symbol density = symbol("ρ", "", 1.25, "g/mL");

std::string shown(const Formula& formula) { return textOf(formula) + " | " + textOf(withValues(formula)); }

TEST(Formula, OneLineWithAndWithoutValues)
{
    EXPECT_EQ(shown(100.0 * (mass / Formula(whole))), "100 · m_sugars / m_mix | 100 · 120.5 g / 1000 g");
    EXPECT_EQ(shown(mass / Formula(density)), "m_sugars / ρ | 120.5 g / (1.25 g/mL)");
    EXPECT_EQ(shown(1.0 / (1.0 - mass / Formula(whole))), "1 / (1 − m_sugars / m_mix) | 1 / (1 − 120.5 g / 1000 g)");
    EXPECT_EQ(shown(power(1.0 - Formula(cold), 2.0)), "(1 − T)² | (1 − (−2.5 °C))²");
    EXPECT_EQ(shown(power(cold, 1.5)), "T^1.5 | (−2.5 °C)^1.5");
    EXPECT_EQ(shown(root(mass * Formula(whole))), "√(m_sugars · m_mix) | √(120.5 g · 1000 g)");
    EXPECT_EQ(shown(-(Formula(mass) + whole)), "−(m_sugars + m_mix) | −(120.5 g + 1000.0 g)");
    EXPECT_EQ(shown(mass - (Formula(whole) - cold)), "m_sugars − (m_mix − T) | 120.5 g − (1000.0 g − (−2.5 °C))");
    EXPECT_EQ(shown(whole * Formula(cold)), "m_mix · T | 1000 g · (−2.5 °C)");
    EXPECT_EQ(shown(equation(cold, ln(mass))), "T = ln(m_sugars) | −2.5 °C = ln(120.5 g)");
}

TEST(Formula, AnEquationKeepsWhatItFinds)
{
    EXPECT_EQ(textOf(withValues(equation(mass, whole / Formula(density)), &mass)), "m_sugars = 1000 g / (1.25 g/mL)");
}

TEST(Formula, LongSumsFoldAndKeepTheirTerms)
{
    std::vector<SeriesTerm> terms;
    for (int i = 1; i <= 14; ++i)
        terms.push_back({"row", symbol("m", "i", i, "g")});
    const Formula sum = series("i", symbol("m", "i", 0, "g"), terms);
    EXPECT_EQ(textOf(sum), "Σ_i m_i");
    EXPECT_EQ(textOf(withValues(sum), 3), "1 g + 2 g + … + 14 g (14 terms)");
    EXPECT_EQ(textOf(withValues(2.0 * sum), 2), "2 · (1 g + … + 14 g (14 terms))");
    EXPECT_EQ(termsOf(1.0 / sum)->size(), 14u);
    EXPECT_EQ(valueOf(sum), 105.0);
    EXPECT_EQ(textOf(withValues(series("i", mass, {}))), "0");
    EXPECT_EQ(termsOf(mass), nullptr);
}

TEST(Formula, AmountsToWhatItSays)
{
    EXPECT_DOUBLE_EQ(*valueOf(100.0 * (mass / Formula(whole))), 12.05);
    EXPECT_DOUBLE_EQ(*valueOf(root(power(Formula(cold), 2.0))), 2.5);
    EXPECT_DOUBLE_EQ(*valueOf(function("max", {0.0, cold})), 0.0);
    EXPECT_DOUBLE_EQ(*valueOf(function("min", {0.0, cold})), -2.5);
    EXPECT_DOUBLE_EQ(*valueOf(polynomial({1.0, 0.0, -2.0}, cold)), -11.5);
    EXPECT_FALSE(valueOf(1.0 + function("CRC", {cold})).has_value());
}

TEST(Formula, ValuesHaveFourDigitsUnlessTheySayOtherwise)
{
    const auto text = [](double value, std::optional<int> decimals = {}) { return valueText({value, "", true, decimals}); };
    EXPECT_EQ(text(22.18), "22.18");
    EXPECT_EQ(text(0.4740), "0.474");
    EXPECT_EQ(text(-2.7452), "−2.745");
    EXPECT_EQ(text(12345.67), "12345.7");
    EXPECT_EQ(text(0.0), "0");
    EXPECT_EQ(text(-0.0), "0");
    EXPECT_EQ(text(1.104, 4), "1.1040");
    EXPECT_EQ(text(-0.00001, 2), "0.00");
    EXPECT_EQ(text(0.00001234), "1.23·10⁻⁵");
    EXPECT_EQ(text(HUGE_VAL), "∞");
    EXPECT_EQ(valueText({0.25, "g"}), "0.25 g");
}

TEST(Formula, WhatIsShownOfASumAddsUpToWhatIsShownOfItsResult)
{
    const auto text = [](double a, double b) {
        const Symbol result = symbol("Δm", "", a - b, "g");
        return textOf(withValues(equation(result, symbol("m", "1", a, "g") - Formula(symbol("m", "2", b, "g"))), &result)) + " = "
               + valueText({result.value, result.unit, true});
    };
    EXPECT_EQ(text(352.36, 333.0), "Δm = 352.36 g − 333.00 g = 19.36 g");
    EXPECT_EQ(text(500.0, 200.0), "Δm = 500 g − 200 g = 300 g");
    // 1000.0 − 1.0 would be 999.0, but 999.08 is shown as 999.1: another digit is needed.
    EXPECT_EQ(text(1000.04, 0.96), "Δm = 1000.04 g − 0.96 g = 999.1 g");
}

TEST(Formula, ASmallTermOfASumKeepsItsPowerOfTenAndItsNeighboursTheirDigits)
{
    const auto text = [](double a, double b) {
        return textOf(withValues(symbol("L", "1", a, "") + Formula(symbol("L", "2", b, ""))));
    };
    EXPECT_EQ(text(0.5238, 0.0000123), "0.5238 + 1.23·10⁻⁵");
    EXPECT_EQ(text(0.5238, 12.5), "0.5238 + 12.5000");
    const Symbol sumOfAll = symbol("A", "", 0.5238123, "");
    const Formula sum = equation(sumOfAll, symbol("L", "1", 0.5238, "") + Formula(symbol("L", "2", 0.0000123, "")));
    EXPECT_EQ(textOf(withValues(sum, &sumOfAll)), "A = 0.5238 + 1.23·10⁻⁵");
    // Of two terms, neither of them small, nothing changes in how they are written: 0.00012 is not yet small.
    EXPECT_EQ(text(0.5, 0.00012), "0.50000 + 0.00012");
}

TEST(Formula, WhatIsSaidOfASymbolIsRoundedAsInItsSum)
{
    const Symbol sumOfAll = symbol("m", "", 259.46, "g");
    std::vector<SeriesTerm> terms;
    for (const double grams : {190.131, 67.30, 2.029})
        terms.push_back({"row", symbol("m", std::to_string(terms.size() + 1).c_str(), grams, "g")});
    const Formula sum = equation(sumOfAll, series("i", symbol("m", "i", 0, "g"), terms));
    const Formula values = withValues(sum, &sumOfAll);
    EXPECT_EQ(textOf(values), "m = 190.13 g + 67.30 g + 2.03 g");
    for (const Symbol& each : symbolsAsShown(sum, values)) {
        if (each.subscript.empty())
            continue;
        EXPECT_NE(textOf(values).find(valueText({each.value, each.unit, true, each.decimals})), std::string::npos) << textOf(each);
    }
}

TEST(Formula, SumsOverAnIndexHaveALegend)
{
    Symbol general = symbol("m", "i", 0, "g");
    general.meaning = phrase("a row's mass");
    const auto legend = generalSymbolsOf(equation(whole, series("i", general * Formula(whole), {{"row", mass}})));
    ASSERT_EQ(legend.size(), 1u);
    EXPECT_EQ(textOf(legend.front()), "m_i");
    EXPECT_EQ(english(legend.front().meaning), "a row's mass");
}

TEST(Formula, TheSmallestNumbersAreShownToo)
{
    EXPECT_NEAR(valueShown({5e-324, "g", true, {}}), 5e-324, 1e-323);
    EXPECT_NO_THROW(inPowersOfTen(5e-324));
}

TEST(Formula, HalvesAreRoundedAwayFromZero)
{
    EXPECT_EQ(english(phrase("{0} {1} {2}", Figure{2.5, 0}, Figure{-2.5, 0}, Figure{1.005, 2})), "3 -3 1.01");
    EXPECT_EQ(valueText({0.125, "", true, 2}), "0.13");
    EXPECT_EQ(valueText({2.4999, "", true, 0}), "2");
}

}  // namespace
}  // namespace firn
