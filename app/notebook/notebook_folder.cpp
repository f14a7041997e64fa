#include "notebook/notebook_folder.h"

#include "document/notebook_place.h"
#include "document/pantry.h"

#include <QSet>

#include <tuple>
#include <utility>

namespace firn::app {

namespace {

constexpr int flurry_ms = 200;
constexpr int beat_ms = 4000;
constexpr int telling_ms = 200;
constexpr qsizetype filesOfAJob = 100;
constexpr qsizetype fewFiles = 20;  // whose figures are not waited for

// What runs first: looking, then titles, then figures.
constexpr int lookingFirst = 2;
constexpr int titlesNext = 1;
constexpr int figuresLast = 0;

}  // namespace

NotebookFolder::NotebookFolder(const Pantry& pantry, QObject* parent)
    : QObject(parent)
    , m_pantry(pantry)
    , m_isCalledOff(std::make_shared<std::atomic<bool>>(false))
{
    for (QTimer* timer : {&m_soon, &m_telling})
        timer->setSingleShot(true);
    m_soon.setInterval(flurry_ms);
    m_beat.setInterval(beat_ms);
    m_telling.setInterval(telling_ms);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(&m_soon, &QTimer::timeout, this, &NotebookFolder::look);
    connect(&m_beat, &QTimer::timeout, this, [this] {
        if (!m_isStopped && !isReading())
            look();
    });
    connect(&m_telling, &QTimer::timeout, this, &NotebookFolder::changed);
    connect(&pantry, &Pantry::changed, this, [this] {
        m_catalogue.reset();
        if (!m_path.isEmpty())
            open(m_path);
    });
}

NotebookFolder::~NotebookFolder()
{
    callOff();
    m_pool.waitForDone();
}

void NotebookFolder::open(const QString& path)
{
    callOff();
    const bool isSame = path == m_path;
    m_path = path;
    m_isThere = true;
    m_stamps.clear();
    if (!isSame) {
        m_cards.clear();
        m_places.clear();
        tell();
    }
    look();
}

const RecipeCard* NotebookFolder::cardOf(const QString& file) const
{
    const auto found = m_places.find(file.toStdString());
    return found == m_places.end() ? nullptr : &m_cards[found->second];
}

/// What still runs comes to nothing.
void NotebookFolder::callOff()
{
    *m_isCalledOff = true;
    m_isCalledOff = std::make_shared<std::atomic<bool>>(false);
    m_pool.clear();
    m_isLooking = m_looksAgain = m_isStopped = false;
    m_unread = m_unanalysed = 0;
}

void NotebookFolder::stop()
{
    callOff();
    m_isStopped = true;
    // Only what was read counts as known, so that the next look goes on from here.
    m_stamps.removeIf([this](const auto& entry) {
        const RecipeCard* card = cardOf(entry.key());
        return !card || (!card->figures && !card->fault);
    });
    tell();
}

void NotebookFolder::look()
{
    if (m_path.isEmpty())
        return;
    m_isStopped = false;
    if (m_isLooking) {
        m_looksAgain = true;
        return;
    }
    m_isLooking = true;
    const auto job = [this, folder = m_path, isCalledOff = m_isCalledOff] {
        FolderLook look = lookThrough(folder, *isCalledOff);
        QMetaObject::invokeMethod(
            this,
            [this, isCalledOff, look = std::move(look)] {
                if (!*isCalledOff)
                    takeLook(look);
            },
            Qt::QueuedConnection);
    };
    m_pool.start(job, lookingFirst);
}

void NotebookFolder::keepLooking(bool isWanted)
{
    if (isWanted)
        m_beat.start();
    else
        m_beat.stop();
}

void NotebookFolder::readAnew(const QString& file)
{
    if (m_stamps.remove(file))
        look();
}

bool NotebookFolder::mark(const QString& file, const Recipe& recipe)
{
    const auto found = m_places.find(file.toStdString());
    if (found == m_places.end() || m_cards[found->second].fault)
        return false;
    RecipeCard& card = m_cards[found->second];
    const auto marks = [](const auto& marked) { return std::tie(marked.tags, marked.isFavourite, marked.isArchived); };
    if (marks(card) == marks(recipe))
        return false;
    setTags(card, recipe.tags);
    card.isFavourite = recipe.isFavourite;
    card.isArchived = recipe.isArchived;
    return true;
}

void NotebookFolder::takeLook(const FolderLook& look)
{
    m_isLooking = false;
    const bool wasThere = std::exchange(m_isThere, look.isThere);
    if (m_isThere)
        rememberNotebookIsThere(m_path);
    watch(look.folders);
    const std::size_t before = m_cards.size();
    forgetFiles(look.files);
    QList<QString> changed;
    for (auto file = look.files.begin(); file != look.files.end(); ++file)
        if (const auto known = m_stamps.constFind(file.key()); known == m_stamps.cend() || *known != *file)
            changed.append(file.key());
    m_stamps = look.files;
    read(changed);
    if (wasThere != m_isThere || before != m_cards.size() || !changed.isEmpty() || look.files.isEmpty())
        tell();
    if (std::exchange(m_looksAgain, false))
        this->look();
}

void NotebookFolder::watch(const QStringList& folders)
{
    const QStringList watched = m_watcher.directories();
    const QSet<QString> wanted(folders.begin(), folders.end());
    const QSet<QString> present(watched.begin(), watched.end());
    if (const auto gone = present - wanted; !gone.isEmpty())
        m_watcher.removePaths(gone.values());
    if (const auto added = wanted - present; !added.isEmpty())
        m_watcher.addPaths(added.values());
}

void NotebookFolder::forgetFiles(const QHash<QString, FileStamp>& present)
{
    for (std::size_t place = m_cards.size(); place-- > 0;)
        if (!present.contains(QString::fromStdString(m_cards[place].file)))
            forget(place);
}

void NotebookFolder::forget(std::size_t place)
{
    m_places.erase(m_cards[place].file);
    if (place + 1 < m_cards.size()) {
        m_cards[place] = std::move(m_cards.back());
        m_places[m_cards[place].file] = place;
    }
    m_cards.pop_back();
}

void NotebookFolder::read(const QList<QString>& files)
{
    if (!m_catalogue)
        m_catalogue = std::make_shared<const Catalogue>(m_pantry.catalogue());
    m_unread += int(files.size());
    for (qsizetype first = 0; first < files.size(); first += filesOfAJob)
        startReading(files.mid(first, filesOfAJob), files.size() <= fewFiles);
}

void NotebookFolder::startReading(const QList<QString>& files, bool isFigured)
{
    std::vector<std::pair<QString, FileStamp>> wanted;
    for (const QString& file : files)
        wanted.emplace_back(file, m_stamps.value(file));
    const auto job = [this, isFigured, wanted = std::move(wanted), catalogue = m_catalogue, isCalledOff = m_isCalledOff] {
        auto readFiles = std::make_shared<std::vector<ReadFile>>();
        for (const auto& [file, stamp] : wanted) {
            if (*isCalledOff)
                return;
            ReadFile& read = readFiles->emplace_back(readFile(file, stamp));
            if (isFigured)
                addFigures(read, *catalogue);
        }
        QMetaObject::invokeMethod(
            this,
            [this, readFiles, isCalledOff] {
                if (*isCalledOff)
                    return;
                m_unread -= int(readFiles->size());
                for (const ReadFile& read : *readFiles)
                    take(read.file, read.stamp, read.card);
                std::erase_if(*readFiles, [](const ReadFile& read) { return !read.recipe; });
                startAnalysing(std::move(*readFiles), isCalledOff);
            },
            Qt::QueuedConnection);
    };
    m_pool.start(job, titlesNext);
}

void NotebookFolder::startAnalysing(std::vector<ReadFile> files, const CalledOff& isCalledOff)
{
    if (files.empty())
        return;
    m_unanalysed += int(files.size());
    auto shared = std::make_shared<std::vector<ReadFile>>(std::move(files));
    const auto job = [this, shared, catalogue = m_catalogue, isCalledOff] {
        for (ReadFile& read : *shared) {
            if (*isCalledOff)
                return;
            addFigures(read, *catalogue);
        }
        QMetaObject::invokeMethod(
            this,
            [this, shared, isCalledOff] {
                if (*isCalledOff)
                    return;
                m_unanalysed -= int(shared->size());
                for (ReadFile& read : *shared)
                    take(read.file, read.stamp, std::move(read.card));
            },
            Qt::QueuedConnection);
    };
    m_pool.start(job, figuresLast);
}

void NotebookFolder::take(const QString& file, const FileStamp& stamp, RecipeCard card)
{
    // Meanwhile it may have gone or changed.
    if (const auto known = m_stamps.constFind(file); known == m_stamps.cend() || *known != stamp)
        return;
    const auto [found, isNew] = m_places.try_emplace(card.file, m_cards.size());
    if (isNew)
        m_cards.push_back(std::move(card));
    else
        m_cards[found->second] = std::move(card);
    tell();
}

void NotebookFolder::tell()
{
    if (!m_telling.isActive())
        m_telling.start();
}

}  // namespace firn::app
