#include "cli/arguments.h"
#include "cli/command_line.h"
#include "cli/recipe_argument.h"
#include "document/built_in.h"
#include "document/typed_sizes.h"
#include "exchange/comparison.h"

#include <QFileInfo>
#include <algorithm>

namespace firn::app {

namespace {

const QString description =
    QStringLiteral("Compares two to four recipes or versions: rows, figures, texture, and what made the difference.\n"
                   "The first is what the others are compared with. Each is taken as it says itself unless an option\n"
                   "says otherwise.\n")
    + recipeOperandHelp;

/// Two versions may be called alike, as two recipes may.
void tellApart(std::vector<Candidate>& candidates, const QStringList& operands)
{
    std::vector<std::string> names;
    for (const Candidate& candidate : candidates)
        names.push_back(candidate.name);
    for (std::size_t i = 0; i < candidates.size(); ++i)
        if (std::ranges::count(names, names[i]) > 1)
            candidates[i].name = QFileInfo(operands[qsizetype(i)]).fileName().toStdString();
}

Result<Basis> basisIn(const Arguments& arguments)
{
    const QString portion = QStringLiteral("portion"), basis = QStringLiteral("basis");
    const QString per = arguments.has(basis) ? arguments.text(basis) : arguments.has(portion) ? portion : QStringLiteral("100g");
    if (per == QLatin1String("100g") && !arguments.has(portion))
        return Basis{Basis::HundredGrams, {}};
    if (per == QLatin1String("batch") && !arguments.has(portion))
        return Basis{Basis::Batch, {}};
    if (per == QLatin1String("batch") || per == QLatin1String("100g"))
        return failure(phrase("--portion goes with --basis portion only. Leave one of them out."));
    if (per != portion)
        return failure(phrase("“{0}” is not a basis. Choose 100g, batch or portion.", per.toStdString()));
    if (!arguments.has(portion))
        return failure(phrase("Say how much a portion weighs, such as --portion 80."));
    const auto mass = massFromText(arguments.text(portion).toStdString());
    if (!mass)
        return failure(phrase("--portion: {0}", english(mass.error())));
    return Basis{Basis::Portion, *mass};
}

Result<std::string> comparisonIn(const Arguments& arguments)
{
    const QStringList operands = arguments.operands();
    if (operands.size() < qsizetype(fewestCompared) || operands.size() > qsizetype(mostCompared))
        return failure(phrase("Name two to four recipes to compare. Run firn compare --help for how."));
    ComparingWishes wishes;
    const auto basis = basisIn(arguments);
    if (!basis)
        return failure(basis.error());
    wishes.basis = *basis;
    for (const auto& [option, wish] :
        {std::pair(QStringLiteral("serve-at"), &wishes.serveAt), std::pair(QStringLiteral("freezer-at"), &wishes.freezerAt)}) {
        const auto temperature = arguments.temperature(option);
        if (!temperature)
            return failure(temperature.error());
        *wish = *temperature;
    }
    const auto catalogue = builtInCatalogue();
    if (!catalogue)
        return failure(catalogue.error());
    std::vector<Candidate> candidates;
    for (const QString& operand : operands) {
        auto candidate = candidateIn(operand);
        if (!candidate)
            return failure(candidate.error());
        candidates.push_back(std::move(*candidate));
    }
    tellApart(candidates, operands);
    const auto comparison = compare(candidates, *catalogue, wishes);
    if (!comparison)
        return failure(comparison.error());
    return arguments.has(QStringLiteral("json")) ? comparisonJson(*comparison) : comparisonText(*comparison);
}

}  // namespace

int compareCommand(const QStringList& words)
{
    const QString degrees = QStringLiteral("C");
    Arguments arguments(
        QStringLiteral("compare FILE[@VERSION] FILE[@VERSION]... [--json] [--basis BASIS] [--portion G] [--serve-at T] "
                       "[--freezer-at T]"),
        description,
        {
            {QStringLiteral("json"), QStringLiteral("Prints JSON.")},
            {QStringLiteral("basis"), QStringLiteral("Masses per 100g, batch or portion; 100g."), QStringLiteral("BASIS")},
            {QStringLiteral("portion"), QStringLiteral("A portion weighs so many grams."), QStringLiteral("G")},
            {QStringLiteral("serve-at"), QStringLiteral("All served at so many degrees Celsius; as each says, or -12."), degrees},
            {QStringLiteral("freezer-at"), QStringLiteral("The freezer's temperature for all; as each says, or -18."), degrees},
        });
    return answer(arguments, words, comparisonIn);
}

}  // namespace firn::app
