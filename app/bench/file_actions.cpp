#include "bench/file_actions.h"

#include "bench/message_bar.h"
#include "bench/questions.h"
#include "document/built_in.h"
#include "document/file_name.h"
#include "document/link_edits.h"
#include "document/linked_files.h"
#include "document/notebook_place.h"
#include "document/places.h"
#include "document/recipe_file.h"
#include "exchange/linked_recipes.h"
#include "gauges/wording.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QStandardPaths>
#include <memory>

namespace firn::app {

namespace {

const QString hasStartedKey = QStringLiteral("hasStarted");

/// Text that stands in a menu as it is: there, & makes a shortcut of the next letter.
QString menuText(QString text) { return text.replace(QLatin1Char('&'), QLatin1String("&&")); }

QString nativePath(const QString& path) { return QDir::toNativeSeparators(path); }

/// A path whose ending names a kind of file that Firn reads again.
QString withKnownEnding(const QString& path)
{
    const QString ending = QFileInfo(path).suffix().toLower();
    const bool isKnown = holdsWholeRecipe(path) || ending == QLatin1String("txt") || ending == QLatin1String("csv");
    return isKnown ? path : path + QStringLiteral(".firn");
}

}  // namespace

FileActions::FileActions(Document& document, FileWork& files, Questions& questions, MessageBar& messages, QWidget& window,
    FileSaving::TakeTyping takeTyping)
    : QObject(&window)
    , m_document(document)
    , m_files(files)
    , m_questions(questions)
    , m_messages(messages)
    , m_window(window)
    , m_takeTyping(takeTyping)
    , m_saving(new FileSaving(document, files, messages, window, std::move(takeTyping)))
{
    connect(m_saving, &FileSaving::saved, this, [this](const QString& path) {
        rememberRecentFile(path);
        forgetRecovered();
    });
    connect(m_saving, &FileSaving::saveElsewhereWanted, this, &FileActions::saveAs);
}

FileActions::~FileActions() { forgetRecovered(); }

void FileActions::fill(QMenu& menu)
{
    menu.addAction(tr("&New"), QKeySequence::New, this, &FileActions::startNew);
    menu.addAction(tr("&Open…"), QKeySequence::Open, this, &FileActions::open);
    QMenu* recent = menu.addMenu(tr("Open &recent"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(*recent); });
    fillSamples(*menu.addMenu(tr("Open an exa&mple")));
    menu.addSeparator();
    menu.addAction(tr("&Save"), QKeySequence::Save, this, &FileActions::save);
    menu.addAction(tr("Save &as…"), QKeySequence(tr("Ctrl+Shift+S")), this, &FileActions::saveAs);
    menu.addSeparator();
    menu.addAction(tr("&Close"), QKeySequence::Close, &m_window, &QWidget::close);
    menu.addAction(tr("&Quit"), QKeySequence::Quit, qApp, &QApplication::closeAllWindows);
}

void FileActions::greet()
{
    QSettings remembered = state();
    if (!remembered.value(hasStartedKey).toBool()) {
        remembered.setValue(hasStartedKey, true);
        m_document.startWith(greetingSample());
    } else if (const QStringList files = recentFiles(); !files.isEmpty()) {
        openFile(files.front());
    }
}

void FileActions::offer(std::vector<LeftBehind> leftBehind)
{
    if (leftBehind.empty())
        return;
    const auto waiting = std::make_shared<std::vector<LeftBehind>>(std::move(leftBehind));
    const auto next = [this, waiting](auto act) {
        return [this, waiting, act] {
            act(waiting->front());
            waiting->erase(waiting->begin());
            offer(std::move(*waiting));
        };
    };
    const LeftBehind& unsaved = waiting->front();
    const auto recipe = unsaved.recipe();
    const QString title = recipe ? QString::fromStdString(recipe->recipe.title) : QString();
    std::vector<MessageBar::Choice> choices{{tr("Discard"), next([this](LeftBehind& chosen) { discard(chosen); })}};
    if (recipe)
        choices.insert(choices.begin(), {tr("Recover"), next([this](LeftBehind& chosen) { recover(std::move(chosen)); })});
    m_messages.say(recipe
                       ? tr("“%1” had unsaved changes when Firn closed unexpectedly at %2. Recover them?")
                             .arg(title.isEmpty() ? tr("Untitled") : title, QLocale().toString(unsaved.time, QLocale::ShortFormat))
                       : translated(recipe.error()),
        choices);
}

void FileActions::recover(LeftBehind unsaved)
{
    auto recipe = unsaved.recipe();
    if (!recipe || !mayLeave())
        return;
    m_document.recover(std::move(*recipe));
    m_recovered.push_back(std::move(unsaved));
    emit recovered();
}

void FileActions::forgetRecovered()
{
    for (const LeftBehind& unsaved : m_recovered)
        discard(unsaved);
    m_recovered.clear();
}

void FileActions::discard(const LeftBehind& unsaved)
{
    m_files.run(
        unsaved.file, this,
        [file = unsaved.file](const Disk& disk) {
            disk.remove(file);
            return true;
        },
        [](bool) {});
}

void FileActions::openFile(const QString& path)
{
    if (!mayLeave())
        return;
    const auto opened = std::make_shared<std::optional<FileResult<OpenedRecipe>>>();
    m_files.run(
        path, this, [path](const Disk& disk) { return openRecipe(disk, path); },
        [this, opened](const FileResult<OpenedRecipe>& result) {
            *opened = result;
            m_saving->wait().wake();
        });
    if (m_saving->wait().until([opened] { return opened->has_value(); }, tr("Opening “%1”…").arg(QFileInfo(path).fileName())))
        show(path, **opened);
}

void FileActions::show(const QString& path, const FileResult<OpenedRecipe>& opened)
{
    const QString absolute = QFileInfo(path).absoluteFilePath();
    if (opened) {
        m_messages.dismiss();
        m_document.show(*opened);
        rememberRecentFile(absolute);
        return;
    }
    m_messages.say(translated(opened.error().sentence));
    if (opened.error().problem == FileProblem::NoFile || opened.error().problem == FileProblem::NoFolder)
        forgetRecentFile(absolute);
}

bool FileActions::mayLeave()
{
    if (m_saving->wait().isWaiting() || !m_saving->finishes())
        return false;
    const bool isAllTaken = m_takeTyping().isEmpty();
    if (isAllTaken && m_saving->isAllOnDisk())
        return true;
    switch (m_questions.unsavedChanges(&m_window, m_saving->questionBeforeLeaving(isAllTaken))) {
    case Questions::Unsaved::Save:
        return m_document.onDisk() == OnDisk::Changed ? m_saving->saveOverTheirs() : save();
    case Questions::Unsaved::Discard:
        return true;
    case Questions::Unsaved::Cancel:
        break;
    }
    return false;
}

bool FileActions::save() { return m_document.path().isEmpty() ? saveAs() : m_saving->saveTo(m_document.path()); }

bool FileActions::saveAs()
{
    if (m_saving->wait().isWaiting() || !m_saving->takesTyping())
        return false;
    const FolderToSaveIn folder(QFileInfo(suggestedPath()).path());
    const bool isNew = m_document.path().isEmpty();
    const QString suggestion = isNew ? QDir(folder.path()).filePath(QFileInfo(suggestedPath()).fileName()) : suggestedPath();
    const QString chosen = m_questions.fileToSave(&m_window, suggestion);
    if (chosen.isEmpty())
        return false;
    const QString path = withKnownEnding(chosen);
    if (holdsWholeRecipe(path))
        return m_saving->saveTo(path);
    m_saving->exportTo(path);
    return false;
}

void FileActions::startNew()
{
    if (mayLeave()) {
        m_messages.dismiss();
        m_document.startWith({});
        emit startedNew();
    }
}

void FileActions::open()
{
    const QString path = m_questions.fileToOpen(&m_window, tr("Open a recipe"), QFileInfo(suggestedPath()).path());
    if (!path.isEmpty())
        openFile(path);
}

void FileActions::linkRecipe()
{
    if (!m_saving->takesTyping())
        return;
    const QString path = m_questions.fileToOpen(&m_window, tr("Use a recipe as an ingredient"), QFileInfo(suggestedPath()).path());
    if (path.isEmpty())
        return;
    auto linked = takenIn(fileSystemPath(path), fileSystemPath(m_document.path()));
    if (!linked) {
        m_messages.say(translated(linked.error()));
        return;
    }
    m_messages.dismiss();
    agreeToRead(QString::fromStdString(linked->file));
    firn::app::linkRecipe(m_document, m_document.component(), std::move(*linked));
}

void FileActions::fillRecent(QMenu& menu)
{
    menu.clear();
    for (const QString& path : recentFiles())
        menu.addAction(menuText(nativePath(path)), this, [this, path] { openFile(path); });
    if (menu.isEmpty())
        menu.addAction(tr("No recent recipes"))->setEnabled(false);
}

void FileActions::fillSamples(QMenu& menu)
{
    for (const Recipe& sample : builtInSamples())
        menu.addAction(menuText(QString::fromStdString(sample.title)), this, [this, sample] {
            if (mayLeave())
                m_document.startWith(sample);
        });
}

QString FileActions::suggestedPath() const
{
    if (!m_document.path().isEmpty())
        return m_document.path();
    const QStringList recent = recentFiles();
    const QString folder =
        recent.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : QFileInfo(recent.front()).path();
    return QDir(folder).filePath(fileNameFrom(m_document.displayName()) + QStringLiteral(".firn"));
}

}  // namespace firn::app
