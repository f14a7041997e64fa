#include "document/built_in.h"

#include "exchange/catalogue_json.h"
#include "exchange/recipe_json.h"

#include <QDir>
#include <QFile>

// Q_INIT_RESOURCE does not compile inside a namespace.
static void loadResources() { Q_INIT_RESOURCE(firn); }

namespace firn::app {

namespace {

const QString samplesFolder = QStringLiteral(":/samples/");

std::string resource(const QString& path)
{
    loadResources();
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

}  // namespace

Result<Catalogue> builtInCatalogue() { return catalogueFromJson(resource(QStringLiteral(":/catalogue.json"))); }

std::vector<Recipe> builtInSamples()
{
    loadResources();
    std::vector<Recipe> samples;
    for (const QString& file : QDir(samplesFolder).entryList({QStringLiteral("*.firn")}, QDir::Files, QDir::Name))
        if (auto recipe = recipeFromJson(resource(samplesFolder + file)))
            samples.push_back(std::move(*recipe));
    return samples;
}

Recipe greetingSample()
{
    return recipeFromJson(resource(samplesFolder + QStringLiteral("rhubarb-hibiscus-granita.firn"))).value_or(Recipe{});
}

}  // namespace firn::app
