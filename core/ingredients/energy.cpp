#include "ingredients/energy.h"

namespace firn {

namespace {

/// kcal per gram; Regulation (EU) 1169/2011, annex XIV, where nothing else is said.
double factor_kcal_g(Constituent constituent)
{
    using enum Constituent;
    switch (constituent) {
    case Water:
    case Minerals:
    case Salt:
    case Erythritol:  // a value of its own there
        return 0.0;
    case Fat:
        return 9.0;
    case Protein:
    case Sucrose:
    case Glucose:
    case Fructose:
    case Galactose:
    case Lactose:
    case Maltose:
    case Trehalose:
    case Oligosaccharides:
    case Dextrins:
    case Starch:
    case Other:  // mostly carbohydrate that the source does not tell apart; counted as such by us
        return 4.0;
    case Sorbitol:
    case Xylitol:
    case Maltitol:
    case Glycerol:  // annex I: an alcohol with more than two hydroxyl groups is a polyol
        return 2.4;
    case Fibre:
    case Hydrocolloid:  // gums and pectin are fibre
        return 2.0;
    case Acid:
        return 3.0;
    case Ethanol:
        return 7.0;
    }
    return 0.0;
}

}  // namespace

double energy_kcal(const Amounts& amounts)
{
    double energy_kcal = 0.0;
    for (const ConstituentFacts& facts : allConstituents())
        energy_kcal += factor_kcal_g(facts.constituent) * amounts[facts.constituent].value;
    return energy_kcal;
}

}  // namespace firn
