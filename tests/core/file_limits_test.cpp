// How far the numbers of a recipe's file may go (docs/file-format.md): each limit on both of its sides.

#include "exchange/recipe_json.h"

#include <gtest/gtest.h>

#include <string>

namespace firn {
namespace {

struct Limit {
    std::string before, after;  // of the number, in the braces of the recipe
    std::string least, tooLittle, most, tooMuch;
};

std::string inRow(const std::string& fields)
{
    return "\"components\": [{\"rows\": [{\"ingredient\": \"water\", \"amount\": 1, \"unit\": \"g\", " + fields;
}

Limit ofReading(const std::string& key, std::string least, std::string tooLittle, std::string most, std::string tooMuch)
{
    return {"\"readings\": [{\"instrument\": \"hydrometer-sg\", \"value\": 1, \"" + key + "\": ", "}]", std::move(least),
        std::move(tooLittle), std::move(most), std::move(tooMuch)};
}

Limit ofStep(const std::string& fields, std::string least, std::string tooLittle, std::string most, std::string tooMuch)
{
    return {"\"components\": [{\"rows\": [], \"steps\": [{" + fields + ": ", "}]}]", std::move(least), std::move(tooLittle),
        std::move(most), std::move(tooMuch)};
}

TEST(FileLimits, EachOnBothSides)
{
    const std::string steep = "\"step\": \"steep\", \"of\": \"coffee\", ";
    const Limit limits[] = {
        {"\"serve_at_c\": ", "", "-100", "-100.1", "100", "100.1"},
        {"\"freezer_at_c\": ", "", "-100", "-100.1", "100", "100.1"},
        {"\"overrun_percent\": ", "", "0", "-0.1", "1000", "1000.1"},
        {"\"components\": [{\"rows\": [], \"overrun_percent\": ", "}]", "0", "-0.1", "1000", "1000.1"},
        {inRow("\"reads_brix\": "), "}]}]", "0", "-0.1", "100", "100.1"},
        ofReading("temperature_c", "-100", "-100.1", "400", "400.1"),
        ofReading("scale_from", "-1000", "-1000.1", "1000", "1000.1"),
        ofReading("scale_to", "-1000", "-1000.1", "1000", "1000.1"),
        ofReading("division", "0", "-0.1", "1000", "1000.1"),
        ofReading("egg_g", "10", "9.9", "200", "200.1"),
        ofReading("egg_density_g_ml", "0", "-0.1", "2", "2.1"),
        ofReading("pressure_hpa", "100", "99.9", "1200", "1200.1"),
        {"\"readings\": [{\"instrument\": \"hydrometer-sg\", \"value\": ", "}]", "-1000", "-1000.1", "1000", "1000.1"},
        ofStep("\"step\": \"heat\", \"temperature_c\"", "-273.15", "-273.16", "400", "400.1"),
        ofStep("\"step\": \"heat\", \"minutes\"", "0", "-0.1", "1000000", "1000000.1"),
        ofStep("\"step\": \"strain\", \"held_back_g\"", "0", "-0.1", "1000000000", "1000000001"),
        ofStep("\"step\": \"reduce\", \"to_g\"", "0", "-0.1", "1000000000", "1000000001"),
        ofStep("\"step\": \"reduce\", \"to_brix\"", "0", "-0.1", "100", "100.1"),
        ofStep(steep + "\"extracted_percent\": 20, \"soaks_up_g_per_g\"", "0", "-0.1", "1000", "1000.1"),
        ofStep(steep + "\"soaks_up_g_per_g\": 2, \"extracted_percent\"", "0", "-0.1", "100", "100.1"),
        {"\"tastings\": [{\"served_at_c\": ", "}]", "-100", "-100.1", "100", "100.1"},
        {"\"tastings\": [{\"frozen_h\": ", "}]", "0", "-0.1", "1000000", "1000000.1"},
        {"\"tastings\": [{\"scores\": [{\"scale\": \"iciness\", \"score\": ", "}]}]", "-1000000", "-1000000.1", "1000000",
            "1000000.1"},
        {"\"scales\": [{\"name\": \"iciness\", \"to\": 1000000, \"from\": ", "}]", "-1000000", "-1000000.1", "999999", "1000000"},
        {"\"scales\": [{\"name\": \"iciness\", \"from\": -1000000, \"to\": ", "}]", "-999999", "-1000000", "1000000", "1000000.1"},
    };
    for (const Limit& limit : limits) {
        const auto isRead = [&](const std::string& number) {
            const std::string rows = limit.before.starts_with("\"components\"") ? "" : "\"components\": [{\"rows\": []}], ";
            return recipeFromJson(
                "{\"format\": \"firn-recipe\", \"version\": 1, " + rows + limit.before + number + limit.after + "}")
                .has_value();
        };
        SCOPED_TRACE(limit.before);
        EXPECT_TRUE(isRead(limit.least)) << limit.least;
        EXPECT_FALSE(isRead(limit.tooLittle)) << limit.tooLittle;
        EXPECT_TRUE(isRead(limit.most)) << limit.most;
        EXPECT_FALSE(isRead(limit.tooMuch)) << limit.tooMuch;
    }
}

}  // namespace
}  // namespace firn
