#include "bench/recipe_notices.h"

#include "document/link_edits.h"
#include "gauges/wording.h"
#include "recipe/own_ingredients.h"

namespace firn::app {

RecipeNotices::RecipeNotices(Document& document, QWidget* parent)
    : MessageBar(parent)
    , m_document(document)
    , m_linkedFiles(document)
{
    setObjectName(QStringLiteral("recipeNotices"));
    setAccessibleName(tr("Notice about the recipe"));
    connect(&document, &Document::changed, this, &RecipeNotices::show);
    connect(&m_linkedFiles, &LinkedFiles::differencesChanged, this, &RecipeNotices::show);
}

/// A sentence that was dismissed stays away until another one has had to be said.
void RecipeNotices::show()
{
    auto notice = stepInView();
    if (!notice)
        notice = linkedRecipe();
    if (!notice)
        notice = ownIngredient();
    if (!notice) {
        m_shown.clear();
        dismiss();
    } else if (notice->sentence != m_shown) {
        m_shown = notice->sentence;
        say(notice->sentence, notice->choices);
    }
}

std::optional<RecipeNotices::Notice> RecipeNotices::stepInView() const
{
    const auto done = m_document.stepsDone();
    if (!done)
        return std::nullopt;
    const auto& steps = m_document.recipe().components[m_document.component()].steps;
    const QString sentence =
        *done == 0 ? tr("The gauges show the mix as it is weighed out, before any step.")
                   : tr("The gauges show the mix after step %1, %2.").arg(*done).arg(translatedName(keyOf(steps[*done - 1].kind)));
    return Notice{sentence, {{tr("Show the finished mix"), [this] { m_document.showStepsDone(std::nullopt); }}}};
}

std::optional<RecipeNotices::Notice> RecipeNotices::linkedRecipe() const
{
    if (m_linkedFiles.differences().empty())
        return std::nullopt;
    const LinkedFiles::Difference& difference = m_linkedFiles.differences().front();
    if (difference.linked >= m_document.recipe().linked.size())
        return std::nullopt;
    if (difference.problem)
        return Notice{translated(*difference.problem), {}};
    const QString name = QString::fromStdString(m_document.recipe().linked[difference.linked].name);
    const auto takeNew = [this, difference] { takeNewRecipe(m_document, difference.linked, *difference.now); };
    return Notice{tr("The recipe “%1” has changed since it was taken in; it counts here as it was.").arg(name),
        {{tr("Take the new one"), takeNew}}};
}

std::optional<RecipeNotices::Notice> RecipeNotices::ownIngredient() const
{
    const auto changed = changedOwnIngredients(m_document.recipe(), m_document.ownIngredients());
    if (changed.empty())
        return std::nullopt;
    const auto takeNew = [this, now = *changed.front()] { takeNewIngredient(m_document, now); };
    return Notice{tr("“%1” is something else in your catalogue than in this recipe; it counts as the recipe has it.")
                      .arg(QString::fromStdString(changed.front()->name)),
        {{tr("Take the catalogue's"), takeNew}}};
}

}  // namespace firn::app
