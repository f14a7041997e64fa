// The open recipe: its rows, how they came about, what they amount to, and the file that keeps them.
#pragma once

#include "analysis/analysis.h"
#include "document/gesture.h"

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <functional>

namespace firn::app {

/// A recipe with edits that no file keeps, as it can be taken up again after a crash.
struct UnsavedRecipe {
    Recipe recipe;
    QString path;                // of the file that it was opened from or saved to; empty if there is none
    QByteArray fileFingerprint;  // of what the file held then (SHA-256)
};

/// Holds the recipe and analyses it anew after every edit. Edits go through edits.h and nowhere else.
class Document : public QObject {
    Q_OBJECT

public:
    /// The catalogue must outlive the document.
    explicit Document(const Catalogue& catalogue, QObject* parent = nullptr);
    ~Document() override;

    const Recipe& recipe() const { return m_recipe; }
    const Catalogue& catalogue() const { return m_catalogue; }
    const Analysis& analysis() const { return m_analysis; }
    QUndoStack& undoStack() { return m_undoStack; }
    bool isModified() const { return !m_undoStack.isClean(); }

    /// Shows what an edit would make of the recipe that is still being typed: all views follow, the history does not move, and the recipe is
    /// no more modified than before. `edit` calls functions of edits.h on the recipe from before the typing, and returns whether the text
    /// could be read; while it cannot, the last that could stays in view. The next edit, undo, or save starts from the recipe before.
    void showTyping(const std::function<bool()>& edit);
    /// Back to the recipe from before the typing.
    void takeBackTyping();
    bool isTyping() const { return m_beforeTyping.has_value(); }

    /// Tells everybody the analysis once more, since numbers are written in another way now.
    void showAgain() { emit changed(m_analysis); }

    /// The component that the analysis is about. It belongs to the view, not to the recipe.
    void showComponent(std::size_t component);
    std::size_t component() const { return m_component; }

    /// How many of the component's steps are done in what the analysis is about; none for all. It belongs to the view, too.
    void showStepsDone(std::optional<std::size_t> stepsDone);
    std::optional<std::size_t> stepsDone() const { return m_stepsDone; }

    /// The temperature at which instruments are read. It belongs to the view, not to the recipe.
    void setReadAt(Celsius temperature);

    /// Analyses anew, since the catalogue holds other ingredients now; of them these are the person's own.
    void followCatalogue(std::vector<Ingredient> own);
    const std::vector<Ingredient>& ownIngredients() const { return m_own; }

    /// The instruments that the readings are those of.
    void setInstruments(const Instruments& instruments);

    /// Where the recipe is kept; empty before the first save, and for a recipe that was read from text or CSV.
    QString path() const { return m_path; }

    /// What a title bar calls it: the file's name, else the recipe's title, else "Untitled".
    QString displayName() const;

    /// Puts a recipe on the bench that no file keeps yet.
    void startWith(Recipe recipe);

    UnsavedRecipe unsaved() const;
    /// Puts a recipe on the bench with its edits, still unsaved. If its file has changed since, saving will say so.
    void takeUp(UnsavedRecipe unsaved);

    /// Opens a file of any kind that Firn reads. On failure the recipe on the bench stays as it is.
    Result<void> open(const QString& path);

    /// Keeps the recipe in this file from now on. On failure the file and the recipe stay as they are.
    Result<void> saveAs(const QString& path);

    /// Whether another program has written the file since it was last read or saved here.
    bool hasChangedOnDisk() const;

signals:
    void changed(const firn::Analysis& analysis);
    void replaced();     // another recipe is on the bench; comes before changed()
    void pathChanged();  // the path, or the name for a title bar

private:
    template <class Place>
    friend class ChangeValue;
    template <class Place>
    friend void change(Document& document, const QString& name, const Place& place, typename Place::Value after, Gesture gesture);

    bool forgetTyping();
    void replace(Recipe recipe, const QString& path, const QByteArray& contents);
    void reanalyse();

    const Catalogue& m_catalogue;
    std::vector<Ingredient> m_own;         // of the catalogue
    Recipe m_recipe;                       // with what is being typed
    std::optional<Recipe> m_beforeTyping;  // none while nothing is
    bool m_isShowingTyping = false;
    std::size_t m_component = 0;
    std::optional<std::size_t> m_stepsDone;
    Celsius m_readAt{20.0};
    Instruments m_instruments;
    Analysis m_analysis;
    QUndoStack m_undoStack;
    QString m_path;
    QByteArray m_contentsOnDisk;
};

}  // namespace firn::app
