// The open recipe: its rows, how they came about, what they amount to, and the file that keeps them.
#pragma once

#include "analysis/analysis.h"
#include "document/gesture.h"
#include "document/recipe_saving.h"

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <functional>

namespace firn::app {

/// A recipe with edits that no file has, as it can be recovered after a crash.
struct UnsavedRecipe {
    Recipe recipe;
    QString path;                // of the file that it was opened from or saved to; empty if there is none
    QByteArray fileFingerprint;  // of what the file held then
};

/// What has become of the recipe's file since it was last read or saved here.
enum class OnDisk { AsKnown, Changed, FileGone, FolderGone, Unreadable };

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

    /// Whether these very bytes are not on the disk, as far as is known: there are edits, they are still being written, or the file has gone or
    /// was changed.
    bool isModified() const { return !m_undoStack.isClean() || isBeingSaved() || m_onDisk != OnDisk::AsKnown; }

    bool isBeingSaved() const { return m_pendingSave.has_value(); }
    OnDisk onDisk() const { return m_onDisk; }

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

    /// Opens a recipe that is in no file yet.
    void startWith(Recipe recipe);

    UnsavedRecipe unsaved() const;
    /// Continues a recipe with its edits, still unsaved. If its file has changed since, saving will say so.
    void recover(UnsavedRecipe unsaved);

    void show(OpenedRecipe opened);

    /// Opens a file of any kind that Firn reads, at once. On failure the open recipe stays as it is.
    Result<void> open(const QString& path);

    /// Saves to this file from now on, at once. On failure the file and the recipe stay as they are.
    Result<void> saveAs(const QString& path);

    /// The same in two steps, with the writing in between by saveRecipe() on another thread. Until then, and after a failure, the recipe counts
    /// as unsaved. Its own file is not written over if somebody else has changed it, any other one is.
    RecipeToSave beginSaving(const QString& path);
    /// Whether the outcome is that of the latest attempt, and of the recipe that is still open.
    bool finishSaving(const RecipeToSave& wanted, const SaveOutcome& outcome);

    /// Takes note of what was found at the recipe's place.
    void see(const QString& path, const FoundOnDisk& found);

    /// The recipe as another program has left it in the file, as a step that can be undone.
    Result<void> reload(const QByteArray& contents);

    /// These bytes of another program may be written over; until then the recipe is unsaved.
    void mayReplace(const QByteArray& contents);

signals:
    void changed(const firn::Analysis& analysis);
    void replaced();        // another recipe is open; comes before changed()
    void pathChanged();     // the path, or the name for a title bar
    void onDiskChanged();   // what has become of the file
    void unsavedChanged();  // isModified() may have changed

private:
    template <class Place>
    friend class ChangeValue;
    template <class Place>
    friend void change(Document& document, const QString& name, const Place& place, typename Place::Value after, Gesture gesture);

    const Recipe& withoutTyping() const { return m_beforeTyping ? *m_beforeTyping : m_recipe; }
    bool forgetTyping();
    void replace(Recipe recipe, const QString& path, const QByteArray& fingerprint);
    void setOnDisk(OnDisk onDisk);
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
    QByteArray m_fingerprint;  // of what the file held when it was last read or saved
    OnDisk m_onDisk = OnDisk::AsKnown;
    std::uint64_t m_lastSave = 0;
    std::optional<std::uint64_t> m_pendingSave;
};

}  // namespace firn::app
