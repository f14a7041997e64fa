// Random sequences of typing, saving, undoing, closing, killing and starting on a disk that fails on purpose, against a plain model: no typed row is
// ever lost without a question that named its recipe. FIRN_SAVING_SEQUENCES and FIRN_SAVING_SEED make longer and other runs.
#include "bench.h"
#include "failing_disk.h"

#include "bench/file_actions.h"
#include "bench/message_bar.h"
#include "document/edits.h"
#include "document/link_edits.h"
#include "document/recipe_file.h"
#include "exchange/recipe_json.h"

#include <QApplication>
#include <QDir>
#include <QMessageBox>
#include <QPushButton>
#include <random>
#include <set>
#include <sstream>

namespace firn::app {
namespace {

constexpr int usualSequences = 300;
constexpr int deedsOfASequence = 25;

using Rows = std::set<std::string>;
using Mood = FailingDisk::Mood;

Rows rowsOf(const Recipe& recipe)
{
    Rows rows;
    for (const Row& row : recipe.components.front().rows)
        rows.insert(row.ingredient);
    return rows;
}

bool holds(const Rows& all, const Rows& wanted) { return std::ranges::includes(all, wanted); }

Rows common(const Rows& some, const Rows& others)
{
    Rows result;
    std::ranges::set_intersection(some, others, std::inserter(result, result.end()));
    return result;
}

std::string text(const Rows& rows)
{
    std::string all;
    for (const std::string& row : rows)
        all += row + ", ";
    return all;
}

/// What a person knows of the open recipe: its rows after each step, and which step they are at.
struct Model {
    std::vector<Rows> steps{Rows()};
    std::size_t at = 0;

    const Rows& now() const { return steps[at]; }
    void put(Rows rows)
    {
        steps.resize(at + 1);
        steps.push_back(std::move(rows));
        ++at;
    }
    void undo() { at -= at > 0; }
    void redo() { at += at + 1 < steps.size(); }
    void restart(Rows rows)
    {
        steps = {std::move(rows)};
        at = 0;
    }
};

/// One run of the program, from start to close or kill.
struct Run {
    Run(const std::shared_ptr<FailingDisk>& disk, const QString& recoveries)
        : work(disk)
        , messages(new MessageBar(&window))
        , document(shippedCatalogue())
        , recovery(document, recoveries, work)
        , files(document, work, answers, *messages, window, [] { return QString(); })
    {
        window.setProperty("mayAsk", true);  // the dialog of a disk that hangs, which this test cancels
        QObject::connect(&recovery, &Recovery::failed, &window, [this] { isRecoveryDoubtful = true; });
        QObject::connect(&recovery, &Recovery::written, &window, [this] {
            isRecoveryDoubtful = false;
            files.forgetRecovered();
        });
        QObject::connect(&files, &FileActions::recovered, &recovery, &Recovery::writeNow);
        QObject::connect(&files.saving(), &FileSaving::failed, &recovery, &Recovery::writeNow);
    }

    FileWork work;
    Answers answers;
    QWidget window;
    MessageBar* messages;
    Document document;
    Recovery recovery;
    FileActions files;
    bool isRecoveryDoubtful = false;
};

/// Cancels the dialog that comes up when a disk hangs.
class Impatient : public QObject {
public:
    bool eventFilter(QObject* object, QEvent* event) override
    {
        if (event->type() == QEvent::Show && object->objectName() == QLatin1String("fileWait"))
            QMetaObject::invokeMethod(object, "reject", Qt::QueuedConnection);
        return false;
    }
};

class Sequence {
public:
    explicit Sequence(unsigned seed)
        : m_random(seed)
        , m_disk(std::make_shared<FailingDisk>())
    {
        for (const char* name : {"here", "there"}) {
            m_folders << m_folder.filePath(QLatin1String(name));
            QDir().mkpath(m_folders.last());
        }
        m_recoveries = m_folder.filePath(QStringLiteral("state"));
        m_run = std::make_unique<Run>(m_disk, m_recoveries);
    }
    ~Sequence() { m_disk->release(); }

    /// Empty, or what went wrong and how it came to that.
    std::string run()
    {
        for (int deed = 0; deed < deedsOfASequence && m_wrong.empty(); ++deed) {
            if (chance(8))
                m_disk->dieAfter(below(4));
            doOne(below(24));
            if (m_disk->isDead() && m_wrong.empty())
                kill();
        }
        if (m_wrong.empty()) {
            m_disk->release();
            kill();
        }
        return m_wrong.empty() ? std::string() : m_wrong + "\n" + m_story.str();
    }

private:
    int below(int end) { return int(m_random() % unsigned(end)); }
    bool chance(int oneIn) { return below(oneIn) == 0; }
    QString anyFolder() { return m_folders[below(2)]; }
    QString anyFile() { return anyFolder() + (chance(2) ? QStringLiteral("/granita.firn") : QStringLiteral("/sorbet.firn")); }
    Document& document() { return m_run->document; }
    void tell(const std::string& what) { m_story << what << '\n'; }
    void expect(bool isFine, const std::string& claim)
    {
        // The answer of a program that is being killed reaches nobody.
        if (!isFine && !m_disk->isDead() && m_wrong.empty())
            m_wrong = claim;
    }

    Rows rowsIn(const QString& path)
    {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            return {};
        const auto recipe = recipeFromJson(file.readAll().toStdString());
        if (!recipe && !m_foreign.contains(path))
            m_wrong = "a torn file: " + path.toStdString();
        return recipe ? rowsOf(*recipe) : Rows();
    }

    void answer()
    {
        constexpr std::array answers{Questions::Unsaved::Save, Questions::Unsaved::Discard, Questions::Unsaved::Cancel};
        m_run->answers.unsaved = answers[std::size_t(below(3))];
        m_run->answers.toSave = chance(6) ? QString() : anyFile();
        m_run->answers.asked.clear();
    }

    /// After a recipe went: it is on the disk as it was, or a question named it.
    void checkGone(const Rows& before, const QString& path, const QString& name)
    {
        const QString asked = m_run->answers.asked;
        const bool isDiscarded = !asked.isEmpty() && m_run->answers.unsaved == Questions::Unsaved::Discard;
        tell("  it went, " + (asked.isEmpty() ? "unasked" : "asked: " + asked.toStdString()));
        if (isDiscarded)
            expect(asked.contains(name), "the question does not name the recipe");
        else if (!before.empty())
            expect(rowsIn(path) == before, "rows are not in the file of a recipe that went without a question");
    }

    bool leaves()
    {
        answer();
        const Rows before = m_model.now();
        const QString name = document().displayName();
        if (!m_run->files.mayLeave())
            return false;
        checkGone(before, document().path(), name);
        return true;
    }

    void doOne(int deed)
    {
        Run& run = *m_run;
        switch (deed) {
        case 0:
        case 1:
        case 2:
        case 3: {
            Rows rows = m_model.now();
            const std::string row = "row " + std::to_string(++m_lastRow);
            tell("type " + row);
            insertRows(document(), {0, rows.size()}, {Row{row, {1.0, Unit::Gram}, {}, {}}});
            rows.insert(row);
            m_model.put(std::move(rows));
            break;
        }
        case 4:
        case 5:
            tell("undo");
            document().undoStack().undo();
            m_model.undo();
            break;
        case 6:
            tell("redo");
            document().undoStack().redo();
            m_model.redo();
            break;
        case 7:
        case 8:
        case 9: {
            answer();
            tell("save");
            noteSaved(run.files.save());
            break;
        }
        case 10:
        case 11:
            answer();
            tell("save as " + run.answers.toSave.toStdString());
            noteSaved(run.files.saveAs());
            break;
        case 12:
        case 13:
        case 14:
            tell("a moment passes");
            aMoment();
            break;
        case 15: {
            const QString folder = chance(6) ? m_recoveries : anyFolder();
            const Mood mood = Mood(below(6));
            tell("disk of " + folder.toStdString() + " gets mood " + std::to_string(int(mood)));
            m_disk->setMood(folder, mood);
            break;
        }
        case 16:
            for (const QString& folder : {m_folders[0], m_folders[1], m_recoveries})
                m_disk->setMood(folder, Mood::Fine);
            tell("disks are fine");
            break;
        case 17: {
            const QString folder = anyFolder();
            tell("folder gone: " + folder.toStdString());
            QDir(folder).removeRecursively();
            if (document().path().startsWith(folder))
                m_promised.clear();  // until Firn has had a moment to see it
            break;
        }
        case 18: {
            const QString file = anyFile();
            tell("others write " + file.toStdString());
            QFile out(file);
            if (out.open(QIODevice::WriteOnly)) {
                out.write(chance(3) ? QByteArray("nothing of ours") : contentsFor(Recipe(), file));
                m_foreign.insert(file);
            }
            if (document().path() == file)
                m_promised.clear();
            break;
        }
        case 19:
            tell("the window is looked at");
            run.files.saving().look();
            settle();
            break;
        case 20:
            pressAButton();
            break;
        case 21:
            tell("close");
            if (leaves() && !m_disk->isDead())
                restart(false);
            break;
        case 22:
            openAnother();
            break;
        default:
            if (chance(2)) {
                tell("a disk hangs");
                run.files.saving().wait().setMoment(1);
                m_disk->hold(anyFolder());
            } else {
                tell("a disk hangs no more");
                m_disk->release();
                settle();
            }
        }
        expect(rowsOf(document().recipe()) == m_model.now(), "the open recipe is not what the person made of it");
    }

    void settle()
    {
        for (const QString& folder : m_folders)
            m_run->work.waitForDone(folder + u'/', std::chrono::milliseconds(50));
        QApplication::processEvents();
    }

    void noteSaved(bool isSaved)
    {
        if (!isSaved)
            return;
        tell("  saved in " + document().path().toStdString());
        m_foreign.remove(document().path());
        expect(rowsIn(document().path()) == m_model.now(), "the file does not hold what was saved");
        expect(!document().isModified(), "what was just saved counts as unsaved");
        m_promised = m_model.now();
    }

    /// In which Firn sees what has become of the file, and an unsaved recipe gets its copy.
    void aMoment()
    {
        m_run->files.saving().look();
        settle();
        m_run->recovery.writeNow();
        m_run->recovery.finishWriting();
        if (!m_run->isRecoveryDoubtful && document().isModified())
            m_promised = m_model.now();
    }

    void pressAButton()
    {
        const QList<QPushButton*> buttons = m_run->messages->findChildren<QPushButton*>();
        QList<QPushButton*> shown;
        for (QPushButton* button : buttons)
            if (!button->isHidden())
                shown << button;
        if (shown.isEmpty() || m_run->messages->isHidden())
            return;
        QPushButton* button = shown[below(int(shown.size()))];
        const QString verb = button->text();
        tell("press " + verb.toStdString() + " of: " + m_run->messages->sentence().toStdString());
        answer();
        button->click();
        settle();
        if (verb == QLatin1String("Reload")) {
            // The person knows, and can undo it.
            if (const Rows rows = rowsOf(document().recipe()); rows != m_model.now())
                m_model.put(rows);
            else if (document().undoStack().index() != int(m_model.at))
                m_model.put(rows);
            m_promised = common(m_promised, m_model.now());
        }
    }

    void openAnother()
    {
        const QString file = anyFile();
        tell("open " + file.toStdString());
        answer();
        const Rows before = m_model.now();
        const QString name = document().displayName();
        const QString path = document().path();
        int replaced = 0;
        const auto connection = QObject::connect(&document(), &Document::replaced, [&replaced] { ++replaced; });
        m_run->files.openFile(file);
        QObject::disconnect(connection);
        if (replaced == 0)
            return;
        // Saved on the way out, it may have got a file of its own.
        checkGone(before, path.isEmpty() ? m_run->answers.toSave : path, name);
        m_model.restart(rowsOf(document().recipe()));
        m_promised = m_model.now();
    }

    /// The program dies. Whatever the person was promised is there again at the next start, in one piece.
    void kill()
    {
        tell("killed");
        m_disk->dieAfter(0);
        m_disk->release();
        const Rows wanted = common(m_promised, m_model.now());
        const QString path = document().path();
        restart(true);
        if (wanted.empty() || !m_wrong.empty())
            return;
        bool isThere = holds(rowsIn(path), wanted);
        for (const Rows& rows : m_offered)
            isThere = isThere || holds(rows, wanted);
        if (isThere)
            return;
        m_wrong = "rows are neither in the file nor offered after a kill\n  wanted: " + text(wanted)
                  + "\n  in the file: " + text(rowsIn(path));
        for (const Rows& rows : m_offered)
            m_wrong += "\n  offered: " + text(rows);
    }

    void restart(bool wasKilled)
    {
        m_disk->release();
        m_run.reset();
        wasKilled = wasKilled || m_disk->isDead();  // on its way out
        m_disk = [this] {
            auto disk = std::make_shared<FailingDisk>();
            for (const QString& folder : {m_folders[0], m_folders[1], m_recoveries})
                disk->setMood(folder, m_disk->moodOf(folder));
            return disk;
        }();
        for (const QString& folder : m_folders)
            QDir().mkpath(folder);
        m_run = std::make_unique<Run>(m_disk, m_recoveries);
        m_model.restart({});
        m_promised.clear();
        m_offered.clear();
        std::vector<LeftBehind> left = leftBehind(m_recoveries);
        for (const LeftBehind& one : left) {
            const auto unsaved = one.recipe();
            if (unsaved)
                m_offered.push_back(rowsOf(unsaved->recipe));
            else
                m_wrong = "a torn recovery copy";
        }
        if (!wasKilled && left.size() > m_others)
            m_wrong = "something is offered after an orderly end";
        m_others = left.empty() ? 0 : left.size() - 1;
        if (!m_wrong.empty() || left.empty())
            return;
        tell("start, offered: " + std::to_string(left.size()));
        // The person recovers the first one; the others stay where they are.
        answer();
        left.resize(1);
        const Rows rows = m_offered.front();
        m_run->files.offer(std::move(left));
        for (QPushButton* button : m_run->messages->findChildren<QPushButton*>())
            if (button->text() == QLatin1String("Recover") && !button->isHidden())
                return button->click(), settle(), recoveredAs(rows);
        m_wrong = "what was left behind is not offered";
    }
    void recoveredAs(const Rows& rows)
    {
        m_run->recovery.finishWriting();
        m_model.restart(rowsOf(document().recipe()));
        expect(m_model.now() == rows, "another recipe was recovered");
        expect(document().isModified() || rowsIn(document().path()) == rows, "a recovered recipe counts as saved");
        m_promised = m_model.now();
    }

    std::minstd_rand m_random;
    QTemporaryDir m_folder;
    QStringList m_folders;
    QString m_recoveries;
    std::shared_ptr<FailingDisk> m_disk;
    std::unique_ptr<Run> m_run;
    Model m_model;
    Rows m_promised;  // what must be there again after a kill
    std::vector<Rows> m_offered;
    std::size_t m_others = 0;  // left behind and not recovered yet
    QSet<QString> m_foreign;   // files that others wrote
    int m_lastRow = 0;
    std::ostringstream m_story;
    std::string m_wrong;
};

int numberFrom(const char* variable, int usual)
{
    bool isNumber = false;
    const int number = qEnvironmentVariableIntValue(variable, &isNumber);
    return isNumber ? number : usual;
}

TEST(SavingModel, NoTypedRowIsLostWithoutAQuestionThatNamedIt)
{
    Impatient impatient;
    qApp->installEventFilter(&impatient);
    const int sequences = numberFrom("FIRN_SAVING_SEQUENCES", usualSequences);
    const int first = numberFrom("FIRN_SAVING_SEED", 1);
    for (int seed = first; seed < first + sequences; ++seed) {
        const std::string wrong = Sequence(unsigned(seed)).run();
        ASSERT_EQ(wrong, "") << "seed " << seed;
    }
    qApp->removeEventFilter(&impatient);
}

}  // namespace
}  // namespace firn::app
