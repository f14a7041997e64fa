#include "bench/recipe_notices.h"

#include "bench/other_meanings.h"
#include "document/link_edits.h"
#include "exchange/linked_recipes.h"
#include "gauges/wording.h"
#include "recipe/own_ingredients.h"

#include <QDir>
#include <algorithm>

namespace firn::app {

RecipeNotices::RecipeNotices(Document& document, QWidget* parent)
    : MessageBar(parent)
    , m_document(document)
    , m_linkedFiles(document)
{
    setObjectName(QStringLiteral("recipeNotices"));
    setAccessibleName(tr("Notice"));
    connect(&document, &Document::changed, this, &RecipeNotices::show);
    connect(&document, &Document::replaced, this, [this] { m_dismissed.clear(); });
    connect(&m_linkedFiles, &LinkedFiles::differencesChanged, this, &RecipeNotices::show);
    connect(this, &MessageBar::dismissedByHand, this, &RecipeNotices::dismissForGood);
}

/// The most pressing one that was not dismissed.
void RecipeNotices::show()
{
    const std::vector<Notice> all = notices();
    QSet<QString> known;
    for (const Notice& notice : all)
        known.insert(notice.sentence);
    m_dismissed.intersect(known);  // what comes up again is said again
    const auto next = std::ranges::find_if(all, [this](const Notice& notice) { return !m_dismissed.contains(notice.sentence); });
    const QString wanted = next == all.end() ? QString() : next->sentence;
    if (wanted == sentence())
        return;
    if (wanted.isEmpty())
        dismiss();
    else
        say(next->sentence, next->choices);
}

std::vector<RecipeNotices::Notice> RecipeNotices::notices()
{
    std::vector<Notice> all;
    addStepInView(all);
    addLinkedRecipes(all);
    addOwnIngredients(all);
    addUnknownNames(all);
    return all;
}

void RecipeNotices::dismissForGood(const QString& sentence)
{
    std::vector<Notice> step;
    addStepInView(step);
    if (!step.empty() && step.front().sentence == sentence) {
        // Gauges that show a mix half way must not do so unsaid.
        m_document.showStepsDone(std::nullopt);
    } else {
        m_dismissed.insert(sentence);
        show();
    }
}

void RecipeNotices::addStepInView(std::vector<Notice>& notices) const
{
    const auto done = m_document.stepsDone();
    if (!done)
        return;
    const auto& steps = m_document.recipe().components[m_document.component()].steps;
    const QString sentence =
        *done == 0 ? tr("Gauges show the mix as weighed, before any step.")
                   : tr("Gauges show the mix after step %1 (%2).").arg(*done).arg(translatedName(keyOf(steps[*done - 1].kind)));
    notices.push_back({sentence, {{tr("Show the finished mix"), [this] { m_document.showStepsDone(std::nullopt); }}}});
}

void RecipeNotices::addLinkedRecipes(std::vector<Notice>& notices)
{
    const Recipe& recipe = m_document.recipe();
    for (const LinkedFiles::Difference& difference : m_linkedFiles.differences()) {
        if (difference.linked >= recipe.linked.size() || !isNamedInRows(recipe.linked[difference.linked], recipe))
            continue;
        if (difference.problem) {
            notices.push_back({translated(*difference.problem), {}});
            continue;
        }
        const QString name = QString::fromStdString(recipe.linked[difference.linked].name);
        if (difference.needsConsent) {
            const QString file = QString::fromStdString(recipe.linked[difference.linked].file);
            const auto read = [this, file] {
                agreeToRead(file);
                m_linkedFiles.check();
            };
            notices.push_back({tr("“%1” is linked from %2, outside this recipe's folder. Firn uses the saved copy until you let it "
                                  "read that file.")
                                   .arg(name, QDir::toNativeSeparators(file)),
                {{tr("Read it"), read}}});
            continue;
        }
        const auto takeNew = [this, difference] { takeNewRecipe(m_document, difference.linked, *difference.now); };
        notices.push_back({tr("“%1” has changed since you added it. This recipe still uses the older copy.").arg(name),
            {{tr("Update"), takeNew}}});
    }
}

/// One for each row whose name nothing in the catalogue has, with what it may mean.
void RecipeNotices::addUnknownNames(std::vector<Notice>& notices) const
{
    constexpr std::size_t mostLinks = 3;
    const auto& components = m_document.recipe().components;
    const auto& analysed = m_document.analysis().components;
    for (std::size_t i = 0; i < analysed.size() && i < components.size(); ++i) {
        for (std::size_t row = 0; row < analysed[i].size() && row < components[i].rows.size(); ++row) {
            const QString name = QString::fromStdString(analysed[i][row].unknownName);
            const auto meanings = name.isEmpty() ? std::vector<OtherMeaning>() : otherMeanings(m_document, {i, row}, mostLinks);
            if (meanings.empty())
                continue;
            Notice notice{components.size() > 1
                              ? tr("“%1”, row %2, “%3”: did you mean one of these?")
                                    .arg(QString::fromStdString(components[i].name), QString::number(row + 1), name)
                              : tr("Row %1, “%2”: did you mean one of these?").arg(QString::number(row + 1), name),
                {}};
            for (const OtherMeaning& meaning : meanings)
                notice.choices.push_back({QString(meaning.shown).replace(QLatin1Char('&'), QLatin1String("&&")),
                    [this, place = RowPlace{i, row}, chosen = meaning.name] { renameIngredient(m_document, place, chosen); }});
            notices.push_back(std::move(notice));
        }
    }
}

void RecipeNotices::addOwnIngredients(std::vector<Notice>& notices) const
{
    for (const Ingredient* changed : changedOwnIngredients(m_document.recipe(), m_document.ownIngredients())) {
        const auto takeNew = [this, now = *changed] { takeNewIngredient(m_document, now); };
        notices.push_back({tr("Your catalogue entry for “%1” differs from the one saved in this recipe. The recipe's own is used.")
                               .arg(QString::fromStdString(changed->name)),
            {{tr("Use catalogue entry"), takeNew}}});
    }
}

}  // namespace firn::app
