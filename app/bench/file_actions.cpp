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

FileActions::FileActions(Document& document, Questions& questions, MessageBar& messages, QWidget& window, TakeTyping takeTyping)
    : QObject(&window)
    , m_document(document)
    , m_questions(questions)
    , m_messages(messages)
    , m_window(window)
    , m_takeTyping(std::move(takeTyping))
{
}

void FileActions::fill(QMenu& menu)
{
    menu.addAction(tr("&New"), QKeySequence::New, this, &FileActions::startNew);
    menu.addAction(tr("&Open…"), QKeySequence::Open, this, &FileActions::open);
    QMenu* recent = menu.addMenu(tr("Open &recent"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(*recent); });
    fillSamples(*menu.addMenu(tr("Open a sa&mple")));
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
    std::vector<MessageBar::Choice> choices{{tr("Throw it away"), next([](const LeftBehind& chosen) { chosen.discard(); })}};
    if (recipe)
        choices.insert(choices.begin(), {tr("Take it up"), next([this](const LeftBehind& chosen) { takeUp(chosen); })});
    m_messages.say(recipe
                       ? tr("“%1” was not saved when Firn stopped at %2. It is kept as it was then.")
                             .arg(title.isEmpty() ? tr("Untitled") : title, QLocale().toString(unsaved.time, QLocale::ShortFormat))
                       : translated(recipe.error()),
        choices);
}

void FileActions::takeUp(const LeftBehind& unsaved)
{
    auto recipe = unsaved.recipe();
    if (!recipe || !mayLeave())
        return;
    m_document.takeUp(std::move(*recipe));
    emit tookUp();
    unsaved.discard();
}

void FileActions::openFile(const QString& path)
{
    if (!mayLeave())
        return;
    if (const auto opened = m_document.open(path); !opened) {
        m_messages.say(translated(opened.error()));
        return;
    }
    m_messages.dismiss();
    rememberRecentFile(QFileInfo(path).absoluteFilePath());
}

bool FileActions::mayLeave()
{
    const bool isAllTaken = m_takeTyping().isEmpty();
    if (isAllTaken && !m_document.isModified())
        return true;
    switch (m_questions.unsavedChanges(&m_window, m_document.displayName())) {
    case Questions::Unsaved::Save:
        return save();
    case Questions::Unsaved::Discard:
        return true;
    case Questions::Unsaved::Cancel:
        break;
    }
    return false;
}

bool FileActions::save()
{
    if (!takesTyping())
        return false;
    const QString path = m_document.path();
    if (path.isEmpty())
        return saveAs();
    if (!m_document.hasChangedOnDisk())
        return saveTo(path);
    m_messages.say(
        tr("%1 was changed by another program since it was opened here. Save over it, or keep both?").arg(nativePath(path)),
        {{tr("Save anyway"), [this, path] { saveTo(path); }}, {tr("Save as…"), [this] { saveAs(); }}});
    return false;
}

bool FileActions::saveAs()
{
    if (!takesTyping())
        return false;
    const FolderToSaveIn folder(QFileInfo(suggestedPath()).path());
    const bool isNew = m_document.path().isEmpty();
    const QString suggestion = isNew ? QDir(folder.path()).filePath(QFileInfo(suggestedPath()).fileName()) : suggestedPath();
    const QString chosen = m_questions.fileToSave(&m_window, suggestion);
    if (chosen.isEmpty())
        return false;
    const QString path = withKnownEnding(chosen);
    if (holdsWholeRecipe(path))
        return saveTo(path);
    saveCopy(path);
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
    const QString path = m_questions.fileToOpen(&m_window, tr("Add a recipe as ingredient"), QFileInfo(suggestedPath()).path());
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
        menu.addAction(tr("No recipes yet"))->setEnabled(false);
}

void FileActions::fillSamples(QMenu& menu)
{
    for (const Recipe& sample : builtInSamples())
        menu.addAction(menuText(QString::fromStdString(sample.title)), this, [this, sample] {
            if (mayLeave())
                m_document.startWith(sample);
        });
}

/// A text that cannot be read is not left out of the file unasked.
bool FileActions::takesTyping()
{
    m_refusal = m_takeTyping();
    if (!m_refusal.isEmpty())
        m_messages.say(m_refusal);
    return m_refusal.isEmpty();
}

void FileActions::forgetRefusal()
{
    if (!m_refusal.isEmpty() && m_messages.sentence() == m_refusal)
        m_messages.dismiss();
    m_refusal.clear();
}

bool FileActions::saveTo(const QString& path)
{
    if (const auto saved = m_document.saveAs(path); !saved) {
        m_messages.say(translated(saved.error()), {{tr("Save as…"), [this] { saveAs(); }}});
        return false;
    }
    m_messages.dismiss();
    rememberRecentFile(m_document.path());
    return true;
}

void FileActions::saveCopy(const QString& path)
{
    if (const auto written = writeFile(path, contentsFor(m_document.recipe(), path)); !written)
        m_messages.say(translated(written.error()));
    else
        m_messages.note(
            tr("The rows were written to %1. Such a file holds no temperatures, process or notes, so the recipe itself still "
               "waits to be saved.")
                .arg(nativePath(path)));
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
