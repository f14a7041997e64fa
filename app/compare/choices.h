// What can be compared: the bench, the versions in its file, and other files.
#pragma once

#include "compare/candidate.h"

#include <QStringList>
#include <array>
#include <optional>
#include <vector>

namespace firn::app {

class Document;

struct Choice {
    enum Kind { Nothing, Bench, Version, File };

    Kind kind = Nothing;
    QString key = {};  // a version's id, or a file's path
    friend bool operator==(const Choice&, const Choice&) = default;
};

/// What is compared, the first one with all others. Places may be free.
using Places = std::array<Choice, mostCompared>;

/// A recipe from another file, as it was when it was opened.
struct OpenedFile {
    QString path;
    Candidate candidate;
};

/// A recipe that was read from a file.
OpenedFile openedFile(const QString& path, const Recipe& recipe);
/// Reads one, on whatever thread.
Result<OpenedFile> openedFile(const QString& path);

/// All that there is to choose from, the bench first.
class Choices {
public:
    explicit Choices(const Document& document);

    std::vector<Choice> all() const;
    QString nameOf(const Choice& choice) const;
    bool has(const Choice& choice) const;

    /// The versions with these ids, a single one beside the bench. Without any, the bench beside the version that it comes from.
    Places sensible(const QStringList& versions) const;

    /// Takes the recipe of a file, in place of what was read from it before.
    Choice add(OpenedFile file);


    /// Of the places that are taken.
    std::vector<Candidate> candidatesOf(const Places& places) const;

private:
    Result<Candidate> candidateOf(const Choice& choice) const;
    const OpenedFile* opened(const QString& path) const;

    const Document& m_document;
    std::vector<OpenedFile> m_files;
};

}  // namespace firn::app
