#include "bench/file_saving.h"

#include "document/recipe_file.h"
#include "gauges/wording.h"

#include <QDir>
#include <QFileInfo>
#include <memory>

namespace firn::app {

namespace {

QString nativePath(const QString& path) { return QDir::toNativeSeparators(path); }
QString nameOf(const QString& path) { return QFileInfo(path).fileName(); }
QString folderOf(const QString& path) { return QFileInfo(path).path(); }

}  // namespace

FileSaving::FileSaving(Document& document, FileWork& files, MessageBar& messages, QWidget& window, TakeTyping takeTyping)
    : QObject(&window)
    , m_document(document)
    , m_files(files)
    , m_messages(messages)
    , m_takeTyping(std::move(takeTyping))
    , m_wait(window)
    , m_watch(document, files)
{
    connect(&m_watch, &FileWatch::found, this, &FileSaving::noticed);
    connect(&document, &Document::replaced, this, [this] { m_saidOnDisk = OnDisk::AsKnown; });
}

bool FileSaving::takesTyping()
{
    m_refusal = m_takeTyping();
    if (!m_refusal.isEmpty())
        m_messages.say(m_refusal);
    return m_refusal.isEmpty();
}

void FileSaving::forgetRefusal()
{
    if (!m_refusal.isEmpty() && m_messages.sentence() == m_refusal)
        m_messages.dismiss();
    m_refusal.clear();
}

bool FileSaving::saveOverTheirs()
{
    if (m_document.onDisk() == OnDisk::Changed)
        m_document.mayReplace(m_found.contents);
    return saveTo(m_document.path());
}

bool FileSaving::save(const QString& path, Folder folder)
{
    if (m_wait.isWaiting() || !takesTyping())
        return false;
    // One after the other, so that each knows what the one before has left in the file.
    if (path == m_document.path() && !finishes())
        return false;
    const RecipeToSave wanted = m_document.beginSaving(path);
    const auto isSaved = std::make_shared<std::optional<bool>>();
    m_files.run(
        path, this,
        [wanted, folder](const Disk& disk) -> SaveOutcome {
            if (folder == Folder::MadeAgain)
                if (auto made = disk.makeFolder(folderOf(wanted.path)); !made)
                    return NotWritten{made.error()};
            return saveRecipe(disk, wanted);
        },
        [this, wanted, isSaved](const SaveOutcome& outcome) {
            *isSaved = finish(wanted, outcome);
            m_wait.wake();
        });
    if (m_wait.until([isSaved] { return isSaved->has_value(); }, tr("Saving “%1”…").arg(nameOf(path))))
        return **isSaved;
    m_messages.note(tr("“%1” is still being saved. Firn will tell you how it went.").arg(nameOf(path)));
    return false;
}

bool FileSaving::finish(const RecipeToSave& wanted, const SaveOutcome& outcome)
{
    if (!m_document.finishSaving(wanted, outcome))
        return false;
    if (std::holds_alternative<Written>(outcome)) {
        m_saidOnDisk = OnDisk::AsKnown;
        if (m_wait.isWaiting())
            m_messages.dismiss();
        else
            m_messages.note(tr("“%1” is saved.").arg(nameOf(wanted.path)));
        emit saved(m_document.path());
        return true;
    }
    if (const auto* changed = std::get_if<ChangedByOthers>(&outcome))
        sayChanged(changed->contents, true);
    else
        sayNotSaved(wanted, std::get<NotWritten>(outcome).why);
    emit failed();
    m_watch.look();
    return false;
}

void FileSaving::exportTo(const QString& path)
{
    const auto outcome = std::make_shared<std::optional<FileResult<void>>>();
    m_files.run(
        path, this, [path, recipe = m_document.recipe()](const Disk& disk) { return disk.write(path, contentsFor(recipe, path)); },
        [this, outcome](const FileResult<void>& written) {
            *outcome = written;
            m_wait.wake();
        });
    if (!m_wait.until([outcome] { return outcome->has_value(); }, tr("Exporting “%1”…").arg(nameOf(path))))
        return;
    if (const FileResult<void>& written = **outcome; !written)
        m_messages.say(translated(written.error().sentence), {saveElsewhere()});
    else if (m_document.isModified() || m_document.path().isEmpty())
        m_messages.note(
            tr("Ingredients exported to %1. This format cannot store temperatures, freezing method or notes; save as .firn "
               "to keep the whole recipe.")
                .arg(nativePath(path)));
    else
        m_messages.note(tr("Ingredients exported to %1. The whole recipe is saved in %2.")
                            .arg(nativePath(path), nativePath(m_document.path())));
}

bool FileSaving::finishes()
{
    return !m_document.isBeingSaved()
           || m_wait.until([this] { return !m_document.isBeingSaved(); }, tr("Saving “%1”…").arg(m_document.displayName()));
}

bool FileSaving::isAllOnDisk()
{
    if (m_document.isModified() || m_document.path().isEmpty())
        return !m_document.isModified();
    const auto isFound = std::make_shared<bool>(false);
    m_files.run(
        m_document.path(), this, [path = m_document.path()](const Disk& disk) { return lookAt(disk, path); },
        [this, isFound, path = m_document.path()](const FoundOnDisk& found) {
            m_document.see(path, found);
            noticed(path, found);
            *isFound = true;
            m_wait.wake();
        });
    const bool isDone = m_wait.until([isFound] { return *isFound; }, tr("Checking “%1”…").arg(m_document.displayName()));
    return isDone && !m_document.isModified();
}

QString FileSaving::questionBeforeLeaving(bool isAllRead) const
{
    const QString name = m_document.displayName();
    switch (m_document.onDisk()) {
    case OnDisk::Changed:
        return tr("“%1” was changed by another program. Save your version over it?").arg(name);
    case OnDisk::FileGone:
    case OnDisk::FolderGone:
        return tr("“%1” is no longer on the disk. Save it again?").arg(name);
    case OnDisk::Unreadable:
        return tr("“%1” can no longer be read from the disk. Save it again?").arg(name);
    case OnDisk::AsKnown:
        break;
    }
    return m_document.isModified() || !isAllRead ? tr("Save the changes to “%1”?").arg(name)
                                                 : tr("The disk of “%1” does not answer. Save the recipe again?").arg(name);
}

/// Says it once.
void FileSaving::noticed(const QString& path, const FoundOnDisk& found)
{
    const OnDisk now = m_document.onDisk();
    if (path != m_document.path() || (now == m_saidOnDisk && (now != OnDisk::Changed || found == m_found)))
        return;
    m_saidOnDisk = now;
    m_found = found;
    switch (now) {
    case OnDisk::AsKnown:
        if (m_messages.sentence() == m_said)
            m_messages.dismiss();
        return;
    case OnDisk::Changed:
        return sayChanged(found.contents, false);
    case OnDisk::FileGone:
        return say(tr("“%1” was deleted or moved. Save it again, or save it elsewhere.").arg(nameOf(path)),
            {tryAgain(tr("Save again"), path), saveElsewhere()});
    case OnDisk::FolderGone:
        return say(
            tr("The folder %1 no longer exists. Create it again, or save the recipe elsewhere.").arg(nativePath(folderOf(path))),
            {makeTheFolder(path), saveElsewhere()});
    case OnDisk::Unreadable:
        return say(tr("“%1” can no longer be read from the disk. Save it again, or save it elsewhere.").arg(nameOf(path)),
            {tryAgain(tr("Save again"), path), saveElsewhere()});
    }
}

void FileSaving::sayChanged(const QByteArray& theirs, bool isSaving)
{
    m_saidOnDisk = OnDisk::Changed;
    m_found = {FoundOnDisk::AFile, theirs};
    const QString path = m_document.path();
    std::vector<MessageBar::Choice> choices{{tr("Keep mine"), [this, path, theirs, isSaving] {
                                                 m_document.mayReplace(theirs);
                                                 if (isSaving)
                                                     saveTo(path);
                                             }}};
    const auto opened = recipeFrom(theirs, path);
    if (opened) {
        choices.insert(choices.begin(), {tr("Reload"), [this, theirs] {
                                             if (const auto reloaded = m_document.reload(theirs); !reloaded)
                                                 m_messages.say(translated(reloaded.error()));
                                         }});
        choices.push_back({tr("Compare"), [this, path, recipe = opened->recipe, theirs, isSaving] {
                               emit compareWanted(path, recipe);
                               sayChanged(theirs, isSaving);  // it is still to be decided
                           }});
    }
    if (isSaving || !opened)
        choices.push_back(saveElsewhere());
    say(opened ? tr("“%1” was changed by another program. Reload it, keep yours, or compare the two.").arg(nameOf(path))
               : tr("“%1” was changed by another program and is not a recipe any more. Keep yours, or save elsewhere.")
                     .arg(nameOf(path)),
        choices);
}

void FileSaving::sayNotSaved(const RecipeToSave& wanted, const FileFailure& why)
{
    m_saidOnDisk = m_document.onDisk();
    if (why.problem == FileProblem::NoFolder)
        say(translated(why.sentence), {makeTheFolder(wanted.path), saveElsewhere()});
    else
        say(translated(why.sentence), {tryAgain(tr("Try again"), wanted.path), saveElsewhere()});
}

MessageBar::Choice FileSaving::saveElsewhere()
{
    return {tr("Save elsewhere…"), [this] { emit saveElsewhereWanted(); }};
}

MessageBar::Choice FileSaving::makeTheFolder(const QString& path)
{
    return {tr("Create the folder again"), [this, path] { save(path, Folder::MadeAgain); }};
}

MessageBar::Choice FileSaving::tryAgain(const QString& verb, const QString& path)
{
    return {verb, [this, path] { saveTo(path); }};
}

void FileSaving::say(const QString& sentence, const std::vector<MessageBar::Choice>& choices)
{
    m_said = sentence;
    m_messages.say(sentence, choices);
}

}  // namespace firn::app
