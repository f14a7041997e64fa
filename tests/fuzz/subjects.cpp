#include "subjects.h"

#include <array>

namespace firn {

std::span<const FuzzSubject> fuzzSubjects()
{
    static constexpr std::array subjects{
        FuzzSubject{"text", textReadsBack},
        FuzzSubject{"json", jsonReadsBack},
        FuzzSubject{"jsonld", jsonLdReadsBack},
        FuzzSubject{"csv", csvReadsBack},
        FuzzSubject{"quantity", quantityReadsBack},
        FuzzSubject{"ingredient_csv", ingredientCsvCanBeKept},
        FuzzSubject{"food_data", foodDataCanBeKept},
        FuzzSubject{"catalogue", catalogueReadsBack},
        FuzzSubject{"query", queryFindsSomeOfAll},
        FuzzSubject{"answer", answerIsJudged},
        FuzzSubject{"temperature", temperatureIsRead},
        FuzzSubject{"name", nameIsLookedUp},
        FuzzSubject{"use", recipeCanBeUsed},
    };
    return subjects;
}

}  // namespace firn
