#include "exchange/derivation.h"

#include "../shipped_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace firn {
namespace {

Derivation hostile(const std::string& figure)
{
    Recipe recipe;
    const std::string name = "a\x1b[31mb <b>{0}</b> \xff";
    recipe.ingredients.push_back(*shippedCatalogue().find("sucrose"));
    recipe.ingredients.back().id = "own";
    recipe.ingredients.back().name = name;
    for (int i = 0; i < 14; ++i)
        recipe.components.front().rows.push_back({name, {10.0 + i, Unit::Gram}, {}, {}});
    recipe.components.front().rows.push_back({"water", {500, Unit::Gram}, {}, {}});
    return *explain(figure, recipe, shippedCatalogue(), {});
}

TEST(DerivationText, HoldsEveryRowAndNoControlCharacter)
{
    const std::string page = derivationText(hostile("sugars_g.sucrose"));
    EXPECT_TRUE(page.starts_with("sugars_g.sucrose = 231 g\n")) << page;
    EXPECT_NE(page.find("m_sucrose = 10 g · 1 g/g + 11 g · 1 g/g + 12 g · 1 g/g + … + 23 g · 1 g/g (14 terms) = 231 g"),
        std::string::npos)
        << page;
    EXPECT_NE(page.find("- 15 g a [31mb <b>{0}</b>"), std::string::npos) << page;
    EXPECT_EQ(page.find('\x1b'), std::string::npos);
    EXPECT_EQ(page.find("\n\n\n"), std::string::npos);
}

TEST(DerivationJson, HasTheShapeOfTheContract)
{
    const auto json = nlohmann::json::parse(derivationJson(hostile("percent.sugars")));
    EXPECT_EQ(json.at("figure"), "percent.sugars");
    EXPECT_EQ(json.at("unit"), "%");
    EXPECT_TRUE(json.at("value").is_number());
    const auto& steps = json.at("steps");
    ASSERT_EQ(steps.size(), 2u);
    for (const auto& step : steps) {
        for (const char* key : {"formula", "with_values", "unit", "source", "symbol", "meaning"})
            EXPECT_TRUE(step.at(key).is_string()) << key;
        EXPECT_TRUE(step.at("result").is_number());
    }
    EXPECT_EQ(steps.back().at("result"), json.at("value"));
    EXPECT_EQ(steps.back().at("formula"), "w_sugars = 100 % · m_sugars / m_mix");
    const auto& symbols = steps.back().at("symbols");
    EXPECT_TRUE(std::ranges::any_of(symbols, [](const auto& symbol) { return symbol.at("figure") == "mass_g"; }));
}

TEST(DerivationJson, TermsKeepNamesFromFiles)
{
    const auto json = nlohmann::json::parse(derivationJson(hostile("sugars_g.sucrose")));
    const auto& terms = json.at("steps").front().at("terms");
    ASSERT_EQ(terms.size(), 14u);
    EXPECT_EQ(terms.front().at("label"), "10 g a\x1b[31mb <b>{0}</b> \xEF\xBF\xBD");
}

}  // namespace
}  // namespace firn
