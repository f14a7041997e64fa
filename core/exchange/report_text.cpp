#include "exchange/report.h"

#include "compare/shown_figures.h"
#include "exchange/page.h"
#include "exchange/plain_text.h"

#include <fmt/format.h>

namespace firn {

namespace {

constexpr std::array<double, 8> curveTemperatures_c = {-4.0, -6.0, -8.0, -10.0, -12.0, -15.0, -18.0, -20.0};

std::string figure(std::string_view name, const std::string& value) { return fmt::format("  {} {}\n", cell(26, name), value); }

std::string rowLine(const RowAnalysis& row)
{
    const std::string how = row.problem ? "see cautions" : english(row.how);
    return fmt::format("  {} {:>9.1f} g {:>6.1f} %  {}\n", cell(33, printable(row.text)), row.mass.value, percent(row.share),
        atMost(22, printable(how)));
}

std::string rowsSection(const Recipe& recipe, const Analysis& analysis)
{
    std::string page;
    for (std::size_t i = 0; i < analysis.components.size(); ++i) {
        const bool hasName = i < recipe.components.size() && !recipe.components[i].name.empty();
        page += heading(hasName ? printable(recipe.components[i].name) : "Ingredients", '-');
        for (const RowAnalysis& row : analysis.components[i])
            page += rowLine(row) + (row.takenAs ? "    " + printable(english(*row.takenAs)) + "\n" : std::string());
        page += "\n";
    }
    return page;
}

std::string compositionSection(const Analysis& analysis)
{
    const auto share = [](MassFraction fraction) { return fmt::format("{:5.1f} %", percent(fraction)); };
    std::string page = heading("Mix", '-');
    page += figure("Mass", fmt::format("{:.1f} g, {:.0f} mL at 20 °C", analysis.mass.value, analysis.volume_20c.value));
    page += figure("Water", share(analysis.shares.water));
    const double uncertainty = percent(analysis.sugarsUncertainty);
    page += figure("Sugars",
        share(analysis.shares.sugars) + (isShownAsZero(uncertainty, 1) ? std::string() : fmt::format(" +- {:.1f}", uncertainty)));
    for (const ConstituentFacts& sugar : allConstituents()) {
        const bool isSugar = sugar.constituent >= Constituent::Sucrose && sugar.constituent <= Constituent::Trehalose;
        if (const Grams mass = analysis.mix[sugar.constituent]; isSugar && mass.value > 0.0)
            page += figure(fmt::format("  {}", sugar.label), fmt::format("{:5.1f} g", mass.value));
    }
    page += figure("Sweet as sucrose of", fmt::format("{:5.1f} %", analysis.sweetness_percentSucrose));
    page += figure("Fat", share(analysis.shares.fat));
    page += figure("Protein", share(analysis.shares.protein));
    page += figure("Total solids", share(analysis.shares.totalSolids));
    page += figure("Alcohol", fmt::format("{}, {:.1f} % vol", share(analysis.shares.alcohol), analysis.alcohol_percentByVolume));
    return page + "\n";
}

std::string freezingSection(const Analysis& analysis)
{
    std::string page = heading("Freezing", '-');
    const auto& point = analysis.freezing.freezingPoint;
    const std::string note = point && point->isExtrapolated ? " (beyond what was measured)" : "";
    page += figure("Freezing point", point ? number(point->temperature.value, 1) + " °C" + note : "none");
    page +=
        figure("  by the textbook method", analysis.textbook ? number(analysis.textbook->freezingPoint.value, 1) + " °C" : "none");
    if (!analysis.freezing.steps.empty()) {
        page += "\n  Temperature   Ice, % of the mix   Water frozen, %\n";
        const double water = shareOf(analysis.texture.mix[Constituent::Water], analysis.texture.mix).value;
        for (const double t_c : curveTemperatures_c) {
            const MassFraction ice = analysis.freezing.iceAt(Celsius{t_c});
            const double waterFrozen = water > 0.0 ? ice.value / water : 0.0;
            page += fmt::format("  {:>8.0f} °C   {:>17.1f}   {:>15.1f}\n", t_c, percent(ice), 100.0 * waterFrozen);
        }
    }
    return page + "\n";
}

std::string textureSection(const Texture& texture)
{
    std::string page = heading("Texture", '-');
    page += figure("Class", fmt::format("{}, {}", nameOf(texture.textureClass), nameOf(texture.firmness)));
    page += figure("Ice when served", fmt::format("{:.1f} %", percent(texture.iceAtServing)));
    page += figure("Ice in the freezer", fmt::format("{:.1f} %", percent(texture.iceInFreezer)));
    if (const auto& window = texture.servingWindow)
        page += figure("Serve between", number(window->coldest.value, 1) + " and " + number(window->warmest.value, 1) + " °C");
    for (const auto& sentences : {texture.reasons, texture.faults}) {
        for (const Sentence& sentence : sentences)
            page += paragraph("  - ", sentence);
    }
    return page + "\n";
}

std::string readingsSection(const Readings& readings)
{
    std::string page = heading(fmt::format("Readings at {:.0f} °C", readings.temperature.value), '-');
    const auto& brix = readings.refractometer_brix;
    page += figure("Refractometer", brix ? fmt::format("{:.1f} °Bx", *brix) : "dark");
    page += figure("Density", fmt::format("{:.4f} g/mL", readings.density.value));
    page += figure("Specific gravity 20/20", fmt::format("{:.4f}", readings.specificGravity_20_20));
    page += figure("Baumé", fmt::format("{:.1f} °Bé", readings.baume));
    page += figure("Egg", readings.egg.floats ? fmt::format("floats and shows {:.0f} mm of shell", readings.egg.exposedWidth.value)
                                              : std::string("sinks"));
    for (const Sentence& disturbance : readings.disturbances)
        page += paragraph("  - ", disturbance);
    return page + "\n";
}

std::string cautionsSection(const std::vector<Caution>& cautions)
{
    std::string page = heading("Cautions", '-');
    for (const Caution& caution : cautions) {
        const std::string_view mark = caution.severity == Severity::Danger    ? "  Danger:  "
                                      : caution.severity == Severity::Warning ? "  Warning: "
                                                                              : "  Note:    ";
        page += paragraph(mark, caution.sentence);
    }
    return page;
}

}  // namespace

std::string reportText(const Recipe& recipe, const Analysis& analysis)
{
    std::string page = heading(recipe.title.empty() ? "Untitled recipe" : atMost(pageWidth, printable(recipe.title)), '=') + "\n";
    page += rowsSection(recipe, analysis);
    page += compositionSection(analysis);
    if (analysis.texture.process == Process::Unfrozen)
        page += heading("Freezing", '-') + "  Not frozen\n\n";
    else
        page += freezingSection(analysis) + textureSection(analysis.texture);
    if (analysis.readings)
        page += readingsSection(*analysis.readings);
    if (!analysis.cautions.empty())
        page += cautionsSection(analysis.cautions);
    return page;
}

}  // namespace firn
