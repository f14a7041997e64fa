#include "compare/attribution_wording.h"
#include "exchange/comparison.h"
#include "exchange/page.h"
#include "exchange/plain_text.h"

#include <fmt/format.h>

namespace firn {

namespace {

constexpr std::size_t labelWidth = 34;
constexpr std::size_t columnWidth = 23;

std::string line(const std::string& label, const std::vector<std::string>& cells)
{
    std::string text = "  " + cell(labelWidth, printable(label));
    for (const std::string& one : cells)
        text += " " + cell(columnWidth, printable(one));
    text.erase(text.find_last_not_of(' ') + 1);
    return text + "\n";
}

std::string signedNumber(double value, int decimals)
{
    const std::string text = number(value, decimals);
    return value > 0.0 && text != number(0.0, decimals) ? "+" + text : text;
}

std::string joined(const std::vector<Sentence>& parts)
{
    std::string text;
    for (const Sentence& part : parts)
        text += (text.empty() ? "" : "; ") + english(part);
    return text;
}

std::vector<std::string> namesOf(const Comparison& comparison)
{
    std::vector<std::string> names;
    for (const ComparedSide& side : comparison.sides)
        names.push_back(side.name);
    return names;
}

std::string basisText(const Basis& basis)
{
    if (basis.per == Basis::Portion)
        return fmt::format("a portion of {} g", number(basis.portion.value, 0));
    return basis.per == Basis::Batch ? "the whole batch" : "100 g";
}

std::string cellText(const ComparedCell& cell)
{
    if (!cell.isThere)
        return cell.difference == RowDifference::LeftOut ? fmt::format("{} left out", markOf(cell.difference)) : std::string();
    const std::string mark(markOf(cell.difference));
    const Figure mass = figureOf(cell.mass);
    return fmt::format("{}{}{}, {} g", mark, mark.empty() ? "" : " ", cell.written, number(mass.value, mass.decimals));
}

std::string rowsSection(const Comparison& comparison)
{
    std::string page;
    for (const ComparedComponent& component : comparison.components) {
        page += heading(component.name.empty() ? "Ingredients" : printable(component.name), '-');
        page += line({}, namesOf(comparison));
        for (const ComparedRow& row : component.rows) {
            std::vector<std::string> cells;
            for (const ComparedCell& one : row.cells)
                cells.push_back(cellText(one));
            page += line(row.name, cells);
        }
        page += "\n";
    }
    return page
           + fmt::format("  Grams are those of {}. ▲ more, ▼ less, + added, − left out,\n  ≠ another ingredient or reading, ~ "
                         "written differently.\n\n",
               basisText(comparison.basis));
}

std::string differencesSection(const Comparison& comparison)
{
    if (comparison.differences.empty())
        return {};
    std::string page = heading("Besides the ingredients", '-');
    for (const HeaderDifference& difference : comparison.differences) {
        const std::string label(difference.label);
        page += "  " + printable(difference.part.empty() ? label : label + ", " + difference.part) + "\n";
        for (std::size_t i = 0; i < difference.values.size(); ++i)
            page += paragraph(
                "    " + cell(columnWidth, printable(comparison.sides[i].name)) + " ", phrase("{0}", joined(difference.values[i])));
    }
    return page + "\n";
}

std::string figureText(const ComparedFigure& figure, std::size_t side)
{
    if (!figure.values[side])
        return "none";
    if (figure.isFreezers[side])
        return "straight from freezer";
    std::string text = number(*figure.values[side], figure.decimals);
    if (const auto uncertainty = shownUncertainty(figure, side))
        text += " ± " + number(*uncertainty, figure.decimals);
    if (const auto change = shownChange(figure, side))
        text += fmt::format(" ({})", signedNumber(*change, figure.decimals));
    return text;
}

std::string figuresSection(const Comparison& comparison)
{
    std::string page = heading("Figures", '-') + line({}, namesOf(comparison));
    std::vector<std::string> kinds;
    for (const ComparedSide& side : comparison.sides)
        kinds.push_back(fmt::format("{}, {}", nameOf(side.analysis.texture.textureClass), nameOf(side.analysis.texture.firmness)));
    page += line("Texture", kinds);
    for (const ComparedFigure& figure : comparison.figures) {
        if (isNothing(figure))
            continue;
        std::vector<std::string> cells;
        for (std::size_t i = 0; i < figure.values.size(); ++i)
            cells.push_back(figureText(figure, i));
        const std::string label(figure.label);
        page += line(figure.unit.empty() ? label : fmt::format("{}, {}", label, figure.unit), cells);
    }
    return page + "\n";
}

std::string attributionSection(const Comparison& comparison, std::size_t index)
{
    const Attribution& attribution = comparison.attributions[index];
    const std::string &from = comparison.sides.front().name, &to = comparison.sides[index + 1].name;
    std::string page = heading(printable(fmt::format("What did it: {} → {}", from, to)), '-');
    for (const AttributedKind& kind : attributedKinds())
        page += paragraph("  ", inASentence(attribution, kind, from, to));
    if (attribution.changes.empty())
        return page + "\n";
    std::vector<std::string> labels, sums;
    for (const AttributedKind& kind : attributedKinds()) {
        const AttributedFigure& figure = attribution.*kind.figure;
        labels.push_back(fmt::format("{}, {}", kind.label, kind.unit));
        sums.push_back(figure.whyNone ? "none" : signedNumber(shownWhole(figure, kind.decimals), kind.decimals));
    }
    page += "\n" + line({}, labels);
    for (std::size_t i = 0; i < attribution.changes.size(); ++i) {
        std::vector<std::string> cells;
        for (const AttributedKind& kind : attributedKinds()) {
            const AttributedFigure& figure = attribution.*kind.figure;
            cells.push_back(figure.whyNone ? "none" : signedNumber(roundedParts(figure, kind.decimals)[i], kind.decimals));
        }
        page += line(english(attribution.changes[i].what), cells);
    }
    page += line("together", sums);
    if (attribution.isSample)
        page += paragraph(
            "  ", phrase("Parts are means over {0} orders of the changes, a sample.", Figure{double(attribution.orders), 0}));
    return page + "\n";
}

}  // namespace

std::string comparisonText(const Comparison& comparison)
{
    std::string title;
    for (const std::string& name : namesOf(comparison))
        title += (title.empty() ? "" : " | ") + name;
    std::string page = heading(atMost(pageWidth, printable(title)), '=') + "\n";
    for (const Sentence& sentence : comparison.fairness)
        page += paragraph("  - ", sentence);
    page += comparison.fairness.empty() ? "" : "\n";
    page += rowsSection(comparison);
    page += differencesSection(comparison);
    page += figuresSection(comparison);
    for (std::size_t i = 0; i < comparison.attributions.size(); ++i)
        page += attributionSection(comparison, i);
    return page;
}

}  // namespace firn
