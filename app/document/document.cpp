#include "document/document.h"

#include "document/change_value.h"
#include "document/link_edits.h"
#include "document/typed_edit.h"
#include "document/whole_recipe.h"

#include <QFileInfo>
#include <algorithm>

namespace firn::app {

Document::Document(const Catalogue& catalogue, QObject* parent)
    : QObject(parent)
    , m_catalogue(catalogue)
{
    connect(&m_undoStack, &QUndoStack::cleanChanged, this, &Document::unsavedChanged);
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
    forgetTypedEdit(*this);
    if (!m_beforeTyping)
        return false;
    m_recipe = std::move(*m_beforeTyping);
    m_beforeTyping.reset();
    return true;
}

void Document::showComponent(std::size_t component)
{
    finishTyping(*this);
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

UnsavedRecipe Document::unsaved() const { return {withoutTyping(), m_path, m_fingerprint}; }

void Document::recover(UnsavedRecipe unsaved)
{
    replace(std::move(unsaved.recipe), unsaved.path, unsaved.fileFingerprint);
    m_undoStack.resetClean();
}

void Document::show(OpenedRecipe opened) { replace(std::move(opened.recipe), opened.path, opened.fingerprint); }

Result<void> Document::open(const QString& path)
{
    auto opened = openRecipe(Disk(), path);
    if (!opened)
        return failure(opened.error().sentence);
    show(std::move(*opened));
    return {};
}

Result<void> Document::saveAs(const QString& path)
{
    RecipeToSave wanted = beginSaving(path);
    wanted.knownFingerprint.clear();
    const SaveOutcome outcome = saveRecipe(Disk(), wanted);
    finishSaving(wanted, outcome);
    if (const auto* notWritten = std::get_if<NotWritten>(&outcome))
        return failure(notWritten->why.sentence);
    return {};
}

RecipeToSave Document::beginSaving(const QString& path)
{
    takeBackTyping();
    const QString absolute = QFileInfo(path).absoluteFilePath();
    storeOwnIngredients(*this);
    m_pendingSave = ++m_lastSave;
    emit unsavedChanged();
    return {m_recipe, absolute, absolute == m_path ? m_fingerprint : QByteArray(), m_lastSave};
}

bool Document::finishSaving(const RecipeToSave& wanted, const SaveOutcome& outcome)
{
    if (m_pendingSave != wanted.number)
        return false;
    m_pendingSave.reset();
    if (const auto* written = std::get_if<Written>(&outcome)) {
        m_path = wanted.path;
        m_fingerprint = written->fingerprint;
        // The file lacks what was typed while it was being written, and no longer holds what it held before.
        if (withoutTyping() == wanted.recipe)
            m_undoStack.setClean();
        else
            m_undoStack.resetClean();
        setOnDisk(OnDisk::AsKnown);
        emit pathChanged();
    } else if (wanted.path == m_path) {
        const auto* notWritten = std::get_if<NotWritten>(&outcome);
        if (!notWritten)
            setOnDisk(OnDisk::Changed);
        else if (notWritten->why.problem == FileProblem::NoFolder)
            setOnDisk(OnDisk::FolderGone);
    }
    emit unsavedChanged();
    return true;
}

void Document::see(const QString& path, const FoundOnDisk& found)
{
    if (path != m_path || m_path.isEmpty() || isBeingSaved())
        return;
    switch (found.state) {
    case FoundOnDisk::NoFile:
        return setOnDisk(OnDisk::FileGone);
    case FoundOnDisk::NoFolder:
        return setOnDisk(OnDisk::FolderGone);
    case FoundOnDisk::Unreadable:
        return setOnDisk(OnDisk::Unreadable);
    case FoundOnDisk::AFile:
        break;
    }
    if (const QByteArray fingerprint = fingerprintOf(found.contents); fingerprint != m_fingerprint) {
        if (found.contents != contentsToSave(withoutTyping(), m_path))
            return setOnDisk(OnDisk::Changed);
        // Saved shortly before a crash, or by another program that has it from here.
        m_fingerprint = fingerprint;
        m_undoStack.setClean();
    }
    setOnDisk(OnDisk::AsKnown);
}

Result<void> Document::reload(const QByteArray& contents)
{
    auto opened = recipeFrom(contents, m_path);
    if (!opened)
        return failure(opened.error());
    change(*this, tr("Reload"), WholeRecipe{}, std::move(opened->recipe));
    m_fingerprint = opened->fingerprint;
    m_undoStack.setClean();
    setOnDisk(OnDisk::AsKnown);
    return {};
}

void Document::mayReplace(const QByteArray& contents)
{
    m_fingerprint = fingerprintOf(contents);
    m_undoStack.resetClean();
    setOnDisk(OnDisk::AsKnown);
}

void Document::setOnDisk(OnDisk onDisk)
{
    if (onDisk == m_onDisk)
        return;
    m_onDisk = onDisk;
    emit onDiskChanged();
    emit unsavedChanged();
}

void Document::replace(Recipe recipe, const QString& path, const QByteArray& fingerprint)
{
    forgetTypedEdit(*this);
    m_undoStack.clear();
    m_beforeTyping.reset();
    m_recipe = std::move(recipe);
    m_path = path;
    m_fingerprint = fingerprint;
    m_onDisk = OnDisk::AsKnown;
    m_pendingSave.reset();
    m_analysis = {};
    m_component = 0;
    m_stepsDone.reset();
    emit replaced();
    emit pathChanged();
    emit unsavedChanged();
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
