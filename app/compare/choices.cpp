#include "compare/choices.h"

#include "document/document.h"
#include "document/recipe_file.h"
#include "recipe/versions.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Choices)
};

}  // namespace

OpenedFile openedFile(const QString& path, const Recipe& recipe)
{
    return {path, benchCandidate(recipe, QFileInfo(path).fileName().toStdString())};
}

Result<OpenedFile> openedFile(const QString& path)
{
    const QString absolute = QFileInfo(path).absoluteFilePath();
    const auto contents = contentsOf(fileSystemPath(absolute));
    if (!contents)
        return failure(contents.error());
    const auto recipe = recipeFromContents(*contents, fileSystemPath(absolute));
    if (!recipe)
        return failure(recipe.error());
    return openedFile(absolute, *recipe);
}

Choices::Choices(const Document& document)
    : m_document(document)
{
}

std::vector<Choice> Choices::all() const
{
    std::vector<Choice> all{{Choice::Bench}};
    for (const firn::Version& version : m_document.recipe().versions)
        all.push_back({Choice::Version, QString::fromStdString(version.id)});
    for (const OpenedFile& file : m_files)
        all.push_back({Choice::File, file.path});
    return all;
}

const OpenedFile* Choices::opened(const QString& path) const
{
    const auto found = std::ranges::find(m_files, path, &OpenedFile::path);
    return found == m_files.end() ? nullptr : &*found;
}

QString Choices::nameOf(const Choice& choice) const
{
    if (choice.kind == Choice::Bench)
        return Words::tr("On the bench");
    if (choice.kind == Choice::Version) {
        const firn::Version* version = versionNamed(m_document.recipe(), choice.key.toStdString());
        if (!version)
            return {};
        return version->name.empty() ? Words::tr("Version %1").arg(choice.key) : QString::fromStdString(version->name);
    }
    const OpenedFile* file = opened(choice.key);
    return file ? QFileInfo(file->path).fileName() : QString();
}

bool Choices::has(const Choice& choice) const
{
    return choice.kind == Choice::Bench
           || (choice.kind == Choice::Version && versionNamed(m_document.recipe(), choice.key.toStdString()))
           || (choice.kind == Choice::File && opened(choice.key));
}

Places Choices::sensible(const QStringList& versions) const
{
    std::vector<Choice> chosen;
    for (const QString& id : versions)
        if (const Choice choice{Choice::Version, id}; has(choice))
            chosen.push_back(choice);
    const Recipe& recipe = m_document.recipe();
    if (chosen.empty() && versionNamed(recipe, recipe.basedOn))
        chosen.push_back({Choice::Version, QString::fromStdString(recipe.basedOn)});
    else if (chosen.empty() && !recipe.versions.empty())
        chosen.push_back({Choice::Version, QString::fromStdString(recipe.versions.back().id)});
    if (chosen.size() < fewestCompared)
        chosen.push_back({Choice::Bench});
    Places places;
    std::copy_n(chosen.begin(), std::min(chosen.size(), places.size()), places.begin());
    return places;
}

Choice Choices::add(OpenedFile file)
{
    const Choice choice{Choice::File, file.path};
    const auto before = std::ranges::find(m_files, file.path, &OpenedFile::path);
    if (before != m_files.end())
        *before = std::move(file);
    else
        m_files.push_back(std::move(file));
    return choice;
}

std::vector<Candidate> Choices::candidatesOf(const Places& places) const
{
    std::vector<Candidate> candidates;
    for (const Choice& choice : places)
        if (choice.kind != Choice::Nothing)
            if (auto candidate = candidateOf(choice))
                candidates.push_back(std::move(*candidate));
    return candidates;
}

Result<Candidate> Choices::candidateOf(const Choice& choice) const
{
    if (choice.kind == Choice::File)
        if (const OpenedFile* file = opened(choice.key))
            return file->candidate;
    if (choice.kind == Choice::Version) {
        auto candidate = versionCandidate(m_document.recipe(), choice.key.toStdString());
        if (candidate)
            candidate->name = nameOf(choice).toStdString();
        return candidate;
    }
    return benchCandidate(m_document.recipe(), nameOf(choice).toStdString());
}

}  // namespace firn::app
