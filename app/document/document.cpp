#include "document/document.h"

#include "document/recipe_file.h"
#include "exchange/linked_recipes.h"
#include "recipe/own_ingredients.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <algorithm>

namespace firn::app {

namespace {

QByteArray fingerprint(const QByteArray& contents) { return QCryptographicHash::hash(contents, QCryptographicHash::Sha256); }

std::filesystem::path folderOf(const QString& file) { return fileSystemPath(file).parent_path(); }

}  // namespace

Document::Document(const Catalogue& catalogue, QObject* parent)
    : QObject(parent)
    , m_catalogue(catalogue)
{
    reanalyse();
}

Document::~Document()
{
    // The history empties itself at the end, when those who watch it may be half gone.
    m_undoStack.blockSignals(true);
}

void Document::setReadAt(Celsius temperature)
{
    if (temperature == m_readAt)
        return;
    m_readAt = temperature;
    reanalyse();
}

void Document::setInstruments(const Instruments& instruments)
{
    if (instruments == m_instruments)
        return;
    m_instruments = instruments;
    reanalyse();
}

void Document::showTyping(const std::function<bool()>& edit)
{
    Recipe shown = m_recipe;
    const bool wasTyping = forgetTyping();
    m_isShowingTyping = true;
    const bool isRead = edit();
    m_isShowingTyping = false;
    if (!wasTyping || isTyping())
        return;
    if (isRead) {
        reanalyse();
    } else {
        m_beforeTyping = std::move(m_recipe);
        m_recipe = std::move(shown);
    }
}

void Document::takeBackTyping()
{
    if (forgetTyping())
        reanalyse();
}

/// Leaves the analysis as it is, for an edit that follows. False if nothing was being typed.
bool Document::forgetTyping()
{
    if (!m_beforeTyping)
        return false;
    m_recipe = std::move(*m_beforeTyping);
    m_beforeTyping.reset();
    return true;
}

void Document::showComponent(std::size_t component)
{
    if (component == m_component)
        return;
    m_component = component;
    m_stepsDone.reset();
    reanalyse();
}

void Document::showStepsDone(std::optional<std::size_t> stepsDone)
{
    if (stepsDone == m_stepsDone)
        return;
    m_stepsDone = stepsDone;
    reanalyse();
}

void Document::followCatalogue(std::vector<Ingredient> own)
{
    m_own = std::move(own);
    reanalyse();
}

QString Document::displayName() const
{
    if (!m_path.isEmpty())
        return QFileInfo(m_path).fileName();
    return m_recipe.title.empty() ? tr("Untitled") : QString::fromStdString(m_recipe.title);
}

void Document::startWith(Recipe recipe) { replace(std::move(recipe), {}, {}); }

UnsavedRecipe Document::unsaved() const { return {m_beforeTyping.value_or(m_recipe), m_path, fingerprint(m_contentsOnDisk)}; }

void Document::takeUp(UnsavedRecipe unsaved)
{
    const auto onDisk = contentsOf(fileSystemPath(unsaved.path));
    const QByteArray contents = onDisk ? QByteArray::fromStdString(*onDisk) : QByteArray();
    replace(std::move(unsaved.recipe), unsaved.path, fingerprint(contents) == unsaved.fileFingerprint ? contents : QByteArray());
    m_undoStack.resetClean();
}

Result<void> Document::open(const QString& path)
{
    auto contents = contentsOf(fileSystemPath(path));
    if (!contents)
        return failure(contents.error());
    auto recipe = recipeFromContents(*contents, fileSystemPath(path));
    if (!recipe)
        return failure(recipe.error());
    // Saving over a text or CSV file would drop what that kind cannot hold, so only Firn's own kind is kept as the recipe's place.
    const QString absolute = QFileInfo(path).absoluteFilePath();
    replace(withAbsoluteLinks(folderOf(absolute), std::move(*recipe)), holdsWholeRecipe(absolute) ? absolute : QString(),
        QByteArray::fromStdString(*contents));
    return {};
}

Result<void> Document::saveAs(const QString& path)
{
    takeBackTyping();
    const QString absolute = QFileInfo(path).absoluteFilePath();
    if (const auto chain = chainOfLinks(fileSystemPath(absolute), m_recipe, folderOf(absolute)); !chain.empty())
        return failure(phrase("A recipe cannot be part of itself: this one links to {0}. Save it in another file.", chain));
    const Recipe travelling = withOwnIngredients(m_recipe, m_catalogue, m_own);
    const QByteArray contents = contentsFor(withLinksFrom(folderOf(absolute), withoutUnusedLinks(travelling)), path);
    if (auto written = writeFile(path, contents); !written)
        return written;
    m_recipe.ingredients = travelling.ingredients;
    m_path = absolute;
    m_contentsOnDisk = contents;
    m_undoStack.setClean();
    emit pathChanged();
    return {};
}

bool Document::hasChangedOnDisk() const
{
    if (m_path.isEmpty() || !QFileInfo::exists(m_path))
        return false;
    const auto contents = contentsOf(fileSystemPath(m_path));
    return !contents || m_contentsOnDisk != QByteArrayView(contents->data(), qsizetype(contents->size()));
}

void Document::replace(Recipe recipe, const QString& path, const QByteArray& contents)
{
    m_undoStack.clear();
    m_beforeTyping.reset();
    m_recipe = std::move(recipe);
    m_path = path;
    m_contentsOnDisk = contents;
    m_analysis = {};
    m_component = 0;
    m_stepsDone.reset();
    emit replaced();
    emit pathChanged();
    reanalyse();
}

void Document::reanalyse()
{
    m_component = std::min(m_component, m_recipe.components.size() - 1);
    Conditions conditions = conditionsOf(m_recipe, m_component);
    conditions.readAt = m_readAt;
    conditions.instruments = m_instruments;
    if (m_stepsDone >= m_recipe.components[m_component].steps.size())
        m_stepsDone.reset();
    m_analysis = analyse(m_recipe, m_catalogue, conditions, m_component, m_stepsDone);
    emit changed(m_analysis);
}

}  // namespace firn::app
