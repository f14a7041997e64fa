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

}  // namespace

QString recoveryFolder() { return stateFolder() + QStringLiteral("/firn/recovery"); }

Recovery::Recovery(Document& document, const QString& folder)
    : m_document(document)
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
    connect(&document.undoStack(), &QUndoStack::cleanChanged, this, &Recovery::follow);
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state != Qt::ApplicationActive)
            writeNow();
    });
}

Recovery::~Recovery() { remove(); }

void Recovery::follow()
{
    if (!m_document.isModified())
        remove();
    else if (!m_soon.isActive())
        m_soon.start();
}

void Recovery::remove()
{
    m_soon.stop();
    m_written.clear();
    QFile::remove(m_file);
}

void Recovery::writeNow()
{
    m_soon.stop();
    if (!m_document.isModified())
        return;
    const QByteArray contents = envelope(m_document.unsaved());
    if (contents == m_written)
        return;
    const auto written = writeFile(m_file, contents);
    if (written)
        m_written = contents;
    else if (!m_hasFailed)
        emit failed(written.error());
    m_hasFailed = !written;
}

Result<UnsavedRecipe> LeftBehind::recipe() const
{
    const auto contents = contentsOf(fileSystemPath(file));
    if (!contents)
        return failure(contents.error());
    const QJsonObject fields = QJsonDocument::fromJson(QByteArray::fromStdString(*contents)).object();
    if (fields[formatKey].toString() != formatName || fields[versionKey].toInt() != formatVersion)
        return failure(phrase("{0} holds an unsaved recipe that this Firn cannot read. It stays where it is.", file.toStdString()));
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
