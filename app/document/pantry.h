// The catalogue that the program carries together with the person's own ingredients, which live in a file of theirs.
#pragma once

#include "ingredients/catalogue.h"
#include "units/sentence.h"

#include <QByteArray>
#include <QObject>
#include <QString>
#include <optional>

namespace firn::app {

/// Where own ingredients are kept: under XDG_DATA_HOME.
QString ownIngredientsFile();

class Pantry : public QObject {
    Q_OBJECT

public:
    /// Reads the person's own ingredients. Where their file cannot be read, the built-in catalogue works without them, see trouble().
    explicit Pantry(const Catalogue& builtIn, QString ownFile = ownIngredientsFile(), QObject* parent = nullptr);

    /// Own ingredients come first, so that they win a name; one with the id of a built-in one stands in its place. The reference stays
    /// good, the ingredients in it last until the next change.
    const Catalogue& catalogue() const { return m_catalogue; }

    const std::vector<Ingredient>& own() const { return m_own; }
    bool isOwn(const std::string& id) const;

    /// The own ingredient that has this one's id or name; nullptr if none has.
    const Ingredient* ownLike(const Ingredient& ingredient) const;

    /// Why the own ingredients could not be read at the start, and what becomes of their file.
    const std::optional<Sentence>& trouble() const { return m_trouble; }

    /// Adds an ingredient, or replaces the own one with its id. Without an id it gets one made of its name. Returns the id. On failure
    /// nothing changes, here or on disk.
    Result<std::string> keep(Ingredient ingredient);

    /// The same for all of them, or for none.
    Result<std::vector<std::string>> keepAll(std::vector<Ingredient> ingredients);

    /// Does nothing where no own ingredient has this id.
    Result<void> remove(const std::string& id);

    /// Takes some away and keeps others in one stroke, as undoing an import does.
    Result<std::vector<std::string>> exchange(const std::vector<std::string>& gone, std::vector<Ingredient> kept);

signals:
    void changed();

private:
    Result<std::vector<Ingredient>> ownOnDisk() const;
    Result<std::vector<Ingredient>> ownToStartFrom();
    std::string freeIdFor(const std::string& name, const std::vector<Ingredient>& own) const;
    void put(std::vector<Ingredient> own);

    Catalogue m_builtIn;
    QString m_file;
    std::vector<Ingredient> m_own;
    std::optional<Sentence> m_trouble;
    Catalogue m_catalogue;
};

}  // namespace firn::app
