#include "explain/explain.h"

#include "derivation/one_form.h"
#include "explain/figures.h"
#include "units/text.h"

namespace firn {

ExplainedAnalysis analyseWithWorkings(const Recipe& recipe, const Catalogue& catalogue, const Conditions& conditions,
    std::optional<std::size_t> component, std::optional<std::size_t> stepsDone)
{
    ExplainedAnalysis result;
    result.analysis = analyse(recipe, catalogue, conditions, component, stepsDone, &result.workings);
    return result;
}

std::optional<Sentence> reasonNotToTeach(const Analysis& analysis)
{
    for (const auto& rows : analysis.components) {
        for (const RowAnalysis& row : rows) {
            if (!row.unknownName.empty())
                return phrase(
                    "“{0}” is not known and would be ignored. Choose it from the list first.", shortened(row.unknownName));
        }
    }
    return std::nullopt;
}

Result<Derivation> explain(const std::string& figure, const Workings& workings)
{
    if (const Working* working = workings.find(figure))
        return Derivation{figure, inDigitsThatCompute(working->steps())};
    if (isFigure(figure))
        return failure(phrase("This recipe has no {0}: {1}", figure, english(reasonForNone(figure))));
    return failure(phrase("No figure “{0}”. Did you mean {1}?", figure, listOf(figuresNear(figure, workings))));
}

Result<Derivation> explain(const std::string& figure, const Recipe& recipe, const Catalogue& catalogue,
    const Conditions& conditions, std::optional<std::size_t> component)
{
    return explain(figure, analyseWithWorkings(recipe, catalogue, conditions, component).workings);
}

}  // namespace firn
