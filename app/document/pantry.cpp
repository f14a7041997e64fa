#include "document/pantry.h"

#include "document/recipe_file.h"
#include "exchange/catalogue_json.h"
#include "ingredients/own_ingredient.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLockFile>
#include <QStandardPaths>
#include <algorithm>

namespace firn::app {

namespace {

bool hasId(const std::vector<Ingredient>& ingredients, const std::string& id)
{
    return std::ranges::find(ingredients, id, &Ingredient::id) != ingredients.end();
}

/// A copy beside the file, so that a person can still repair what Firn could not read.
Result<void> setAside(const QString& path)
{
    const QFileInfo file(path);
    const QString start =
        QStringLiteral("%1/%2-unreadable-%3")
            .arg(file.path(), file.completeBaseName(), QDateTime::currentDateTime().toString(QStringLiteral("yyyyMMdd-hhmmss")));
    QString copy = start + QStringLiteral(".json");
    for (int number = 2; QFileInfo::exists(copy); ++number)
        copy = QStringLiteral("%1-%2.json").arg(start).arg(number);
    if (QFile::copy(path, copy))
        return {};
    return failure(
        phrase("{0} cannot be read and could not be copied to a safe place, so nothing was written. Move it away yourself.",
            path.toStdString()));
}

}  // namespace

QString ownIngredientsFile()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/firn/ingredients.json");
}

Pantry::Pantry(const Catalogue& builtIn, QString ownFile, QObject* parent)
    : QObject(parent)
    , m_builtIn(builtIn)
    , m_file(std::move(ownFile))
{
    auto own = ownOnDisk();
    if (!own)
        m_trouble = phrase("Your own ingredients are left out, and {0} stays as it is, since it cannot be read. {1}",
            m_file.toStdString(), english(own.error()));
    put(own ? std::move(*own) : std::vector<Ingredient>());
}

bool Pantry::isOwn(const std::string& id) const { return hasId(m_own, id); }

const Ingredient* Pantry::ownLike(const Ingredient& ingredient) const
{
    const auto found = std::ranges::find_if(
        m_own, [&](const Ingredient& own) { return own.id == ingredient.id || folded(own.name) == folded(ingredient.name); });
    return found == m_own.end() ? nullptr : &*found;
}

Result<std::string> Pantry::keep(Ingredient ingredient)
{
    return exchange({}, {std::move(ingredient)}).map([](const std::vector<std::string>& ids) { return ids.front(); });
}

Result<std::vector<std::string>> Pantry::keepAll(std::vector<Ingredient> ingredients)
{
    return exchange({}, std::move(ingredients));
}

Result<void> Pantry::remove(const std::string& id)
{
    return exchange({id}, {}).map([](const auto&) {});
}

Result<std::vector<std::string>> Pantry::exchange(const std::vector<std::string>& gone, std::vector<Ingredient> kept)
{
    QDir().mkpath(QFileInfo(m_file).path());
    // Two running copies of the program must not write between each other's reading and writing. Where no lock can be made, writing
    // fails as well, with a sentence.
    constexpr int patience_ms = 2000;
    QLockFile lock(m_file + QStringLiteral(".lock"));
    if (!lock.tryLock(patience_ms) && lock.error() == QLockFile::LockFailedError)
        return failure(
            phrase("Another Firn is writing {0} just now, so nothing was changed. Try again in a moment.", m_file.toStdString()));

    auto own = ownToStartFrom();
    if (!own)
        return failure(own.error());
    std::erase_if(*own, [&](const Ingredient& ingredient) { return std::ranges::find(gone, ingredient.id) != gone.end(); });
    std::vector<std::string> ids;
    for (Ingredient& ingredient : kept) {
        if (ingredient.id.empty())
            ingredient.id = freeIdFor(ingredient.name, *own);
        ids.push_back(ingredient.id);
        const auto before = std::ranges::find(*own, ingredient.id, &Ingredient::id);
        if (before == own->end())
            own->push_back(std::move(ingredient));
        else
            *before = std::move(ingredient);
    }
    const std::string contents = catalogueToJson(*own);
    // What could not be read back is not written.
    if (const auto readBack = catalogueFromJson(contents); !readBack)
        return failure(readBack.error());
    if (!writeFile(m_file, QByteArray::fromStdString(contents)))
        return failure(
            phrase("{0} could not be written, so nothing was changed. Free some space, or check that you may write there.",
                m_file.toStdString()));
    m_trouble.reset();
    put(std::move(*own));
    emit changed();
    return ids;
}

Result<std::vector<Ingredient>> Pantry::ownOnDisk() const
{
    if (!QFileInfo::exists(m_file))
        return {};
    const auto contents = contentsOf(fileSystemPath(m_file));
    if (!contents)
        return failure(contents.error());
    return catalogueFromJson(*contents).map(
        [](const Catalogue& catalogue) { return std::vector<Ingredient>(catalogue.all().begin(), catalogue.all().end()); });
}

/// What is on disk is newer than what was read, as every change is written at once: another copy of the program may have been at it.
Result<std::vector<Ingredient>> Pantry::ownToStartFrom()
{
    if (!QFileInfo::exists(m_file))
        return m_own;
    if (auto own = ownOnDisk())
        return own;
    if (auto safe = setAside(m_file); !safe)
        return failure(safe.error());
    return m_own;
}

std::string Pantry::freeIdFor(const std::string& name, const std::vector<Ingredient>& own) const
{
    const auto isTaken = [&](const std::string& id) {
        const auto builtIn = m_builtIn.all();
        return hasId(own, id) || std::ranges::find(builtIn, id, &Ingredient::id) != builtIn.end();
    };
    return idFor(name, isTaken);
}

void Pantry::put(std::vector<Ingredient> own)
{
    m_own = std::move(own);
    std::vector<Ingredient> all = m_own;
    std::ranges::copy_if(
        m_builtIn.all(), std::back_inserter(all), [this](const Ingredient& ingredient) { return !isOwn(ingredient.id); });
    m_catalogue = Catalogue(std::move(all));
}

}  // namespace firn::app
