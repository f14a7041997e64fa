#include "document/recovery.h"

#include "document/places.h"
#include "document/recipe_file.h"
#include "exchange/recipe_json.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>
#include <utility>

namespace firn::app {

namespace {

constexpr int soon_ms = 2000;
const QString ending = QStringLiteral(".firn-recovery");
const QString lockEnding = QStringLiteral(".lock");
const QString formatName = QStringLiteral("firn-recovery");
constexpr int formatVersion = 1;

const QString formatKey = QStringLiteral("format");
const QString versionKey = QStringLiteral("version");
const QString fileKey = QStringLiteral("file");
const QString fingerprintKey = QStringLiteral("file_sha256");
const QString recipeKey = QStringLiteral("recipe");

/// A lock lasts as long as the process that holds it.
void holdForLife(QLockFile& lock) { lock.setStaleLockTime(0); }

QByteArray envelope(const UnsavedRecipe& unsaved)
{
    // The recipe's own text, because another writer of JSON would round its numbers.
    return QJsonDocument(QJsonObject{{formatKey, formatName}, {versionKey, formatVersion}, {fileKey, unsaved.path},
                             {fingerprintKey, QString::fromLatin1(unsaved.fileFingerprint.toHex())},
                             {recipeKey, QString::fromStdString(recipeToJson(unsaved.recipe))}})
        .toJson();
}

Sentence warning(FileProblem problem, const QString& file)
{
    if (problem == FileProblem::NoSpace)
        return phrase(
            "The recovery copy could not be written because the disk is full. Free some space, and save the recipe meanwhile.");
    return phrase("The recovery copy could not be written to {0}. Check that folder, and save the recipe meanwhile.",
        QFileInfo(file).path().toStdString());
}

}  // namespace

QString recoveryFolder() { return stateFolder() + QStringLiteral("/firn/recovery"); }

Recovery::Recovery(Document& document, const QString& folder, FileWork& files)
    : m_document(document)
    , m_files(files)
    , m_file(folder + u'/' + QUuid::createUuid().toString(QUuid::WithoutBraces) + ending)
    , m_lock(m_file + lockEnding)
{
    QDir().mkpath(folder);
    holdForLife(m_lock);
    m_lock.tryLock(0);
    m_soon.setSingleShot(true);
    m_soon.setInterval(soon_ms);
    connect(&m_soon, &QTimer::timeout, this, &Recovery::writeNow);
    connect(&document, &Document::changed, this, &Recovery::follow);
    connect(&document, &Document::unsavedChanged, this, &Recovery::follow);
    connect(&document, &Document::pathChanged, this, [this] {
        if (!m_document.isModified())
            remove();
    });
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state != Qt::ApplicationActive)
            writeNow();
    });
}

Recovery::~Recovery()
{
    remove();
    m_files.waitForDone(m_file);
}

void Recovery::follow()
{
    // What undoing took back can be redone, so the copy stays until the recipe is saved or replaced.
    if (!m_document.isModified())
        m_soon.stop();
    else if (!m_soon.isActive())
        m_soon.start();
}

void Recovery::remove()
{
    m_soon.stop();
    m_writesAgain = false;
    if (m_written.isEmpty() && !m_isWriting)
        return;
    m_written.clear();
    m_isUnwanted = m_isWriting;
    m_files.run(
        m_file, this,
        [file = m_file](const Disk& disk) {
            disk.remove(file);
            return true;
        },
        [](bool) {});
}

void Recovery::writeNow()
{
    m_soon.stop();
    if (!m_document.isModified())
        return;
    if (m_isWriting) {
        m_writesAgain = true;
        return;
    }
    const QByteArray contents = envelope(m_document.unsaved());
    if (contents == m_written)
        return;
    m_isWriting = true;
    m_files.run(
        m_file, this, [file = m_file, contents](const Disk& disk) { return disk.write(file, contents); },
        [this, contents](const FileResult<void>& outcome) { take(contents, outcome); });
}

void Recovery::take(const QByteArray& contents, const FileResult<void>& outcome)
{
    m_isWriting = false;
    if (!outcome && !m_hasFailed)
        emit failed(warning(outcome.error().problem, m_file));
    m_hasFailed = !outcome;
    if (!std::exchange(m_isUnwanted, false) && outcome) {
        m_written = contents;
        emit written();
    }
    if (std::exchange(m_writesAgain, false))
        writeNow();
}

void Recovery::finishWriting()
{
    // What changed meanwhile is written after it.
    while (m_files.waitForDone(m_file) && m_isWriting)
        continue;
}

Result<UnsavedRecipe> LeftBehind::recipe() const
{
    const auto contents = contentsOf(fileSystemPath(file));
    if (!contents)
        return failure(contents.error());
    const QJsonObject fields = QJsonDocument::fromJson(QByteArray::fromStdString(*contents)).object();
    if (fields[formatKey].toString() != formatName || fields[versionKey].toInt() != formatVersion)
        return failure(phrase("{0} is damaged or from a newer version of Firn, so its unsaved recipe cannot be recovered. The file "
                              "has been left in place.",
            file.toStdString()));
    auto recipe = recipeFromJson(fields[recipeKey].toString().toStdString());
    if (!recipe)
        return failure(recipe.error());
    return UnsavedRecipe{
        std::move(*recipe), fields[fileKey].toString(), QByteArray::fromHex(fields[fingerprintKey].toString().toLatin1())};
}

void LeftBehind::discard() const { QFile::remove(file); }

std::vector<LeftBehind> leftBehind(const QString& folder)
{
    std::vector<LeftBehind> found;
    for (const QFileInfo& file : QDir(folder).entryInfoList({u'*' + ending}, QDir::Files, QDir::Time)) {
        auto lock = std::make_unique<QLockFile>(file.filePath() + lockEnding);
        holdForLife(*lock);
        if (lock->tryLock(0))
            found.push_back({file.filePath(), std::move(lock), file.lastModified()});
    }
    return found;
}

}  // namespace firn::app
