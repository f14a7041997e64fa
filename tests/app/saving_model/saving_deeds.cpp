// What the person does in a sequence, what happens to the disk meanwhile, and what must be true after each.
#include "saving_sequence.h"

#include "document/edits.h"
#include "document/recipe_file.h"

#include <QApplication>
#include <QDir>
#include <QPushButton>

namespace firn::app {

namespace {

using Mood = FailingDisk::Mood;

}  // namespace

void SavingSequence::doOne(int deed)
{
    switch (deed) {
    case 0:
    case 1:
    case 2:
    case 3:
        type();
        break;
    case 4:
    case 5:
        tell("undo");
        document().undoStack().undo();
        m_steps.undo();
        break;
    case 6:
        tell("redo");
        document().undoStack().redo();
        m_steps.redo();
        break;
    case 7:
    case 8:
    case 9:
        save();
        break;
    case 10:
    case 11:
        saveAs();
        break;
    case 12:
    case 13:
    case 14:
        aMoment();
        break;
    case 15:
        changeMood();
        break;
    case 16:
        for (const QString& folder : allFolders())
            m_disk->setMood(folder, Mood::Fine);
        tell("disks are fine");
        break;
    case 17:
        loseFolder();
        break;
    case 18:
        letOthersWrite();
        break;
    case 19:
        tell("the window is looked at");
        m_run->files.saving().look();
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
        hangOrGoOn();
    }
    expect(rowsOf(document().recipe()) == m_steps.now(), "the open recipe is not what the person made of it");
}

void SavingSequence::type()
{
    Rows rows = m_steps.now();
    const std::string row = "row " + std::to_string(++m_lastRow);
    tell("type " + row);
    insertRows(document(), {0, rows.size()}, {Row{row, {1.0, Unit::Gram}, {}, {}}});
    rows.insert(row);
    m_steps.put(std::move(rows));
}

void SavingSequence::save()
{
    answer();
    tell("save");
    noteSaved(m_run->files.save());
}

void SavingSequence::saveAs()
{
    answer();
    tell("save as " + m_run->answers.toSave.toStdString());
    noteSaved(m_run->files.saveAs());
}

void SavingSequence::noteSaved(bool isSaved)
{
    if (!isSaved)
        return;
    tell("  saved in " + document().path().toStdString());
    m_foreign.remove(document().path());
    expect(rowsIn(document().path()) == m_steps.now(), "the file does not hold what was saved");
    expect(!document().isModified(), "what was just saved counts as unsaved");
    m_promised = m_steps.now();
}

/// In which Firn sees what has become of the file, and an unsaved recipe gets its copy.
void SavingSequence::aMoment()
{
    tell("a moment passes");
    m_run->files.saving().look();
    settle();
    m_run->recovery.writeNow();
    m_run->recovery.finishWriting();
    if (!m_run->isRecoveryDoubtful && document().isModified())
        m_promised = m_steps.now();
}

void SavingSequence::changeMood()
{
    const QString folder = chance(6) ? m_recoveries : anyFolder();
    const Mood mood = Mood(below(6));
    tell("disk of " + folder.toStdString() + " gets mood " + std::to_string(int(mood)));
    m_disk->setMood(folder, mood);
}

void SavingSequence::loseFolder()
{
    const QString folder = anyFolder();
    tell("folder gone: " + folder.toStdString());
    QDir(folder).removeRecursively();
    if (document().path().startsWith(folder))
        m_promised.clear();  // until Firn has had a moment to see it
}

void SavingSequence::letOthersWrite()
{
    const QString file = anyFile();
    tell("others write " + file.toStdString());
    QFile out(file);
    if (out.open(QIODevice::WriteOnly)) {
        out.write(chance(3) ? QByteArray("nothing of ours") : contentsFor(Recipe(), file));
        m_foreign.insert(file);
    }
    if (document().path() == file)
        m_promised.clear();
}

void SavingSequence::pressAButton()
{
    QList<QPushButton*> shown = m_run->messages->findChildren<QPushButton*>();
    shown.removeIf([](const QPushButton* button) { return button->isHidden(); });
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
        if (const Rows rows = rowsOf(document().recipe());
            rows != m_steps.now() || document().undoStack().index() != int(m_steps.at))
            m_steps.put(rows);
        m_promised = common(m_promised, m_steps.now());
    }
}

void SavingSequence::openAnother()
{
    const QString file = anyFile();
    tell("open " + file.toStdString());
    answer();
    const Rows before = m_steps.now();
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
    m_steps.restart(rowsOf(document().recipe()));
    m_promised = m_steps.now();
}

void SavingSequence::hangOrGoOn()
{
    if (chance(2)) {
        tell("a disk hangs");
        m_run->files.saving().wait().setMoment(1);
        m_disk->hold(anyFolder());
    } else {
        tell("a disk hangs no more");
        m_disk->release();
    }
    if (auto* stepped = dynamic_cast<SteppedWork*>(m_run->work.get()))
        stepped->goOn();
    settle();
}

void SavingSequence::answer()
{
    constexpr std::array answers{Questions::Unsaved::Save, Questions::Unsaved::Discard, Questions::Unsaved::Cancel};
    m_run->answers.unsaved = answers[std::size_t(below(3))];
    m_run->answers.toSave = chance(6) ? QString() : anyFile();
    m_run->answers.asked.clear();
}

bool SavingSequence::leaves()
{
    answer();
    const Rows before = m_steps.now();
    const QString name = document().displayName();
    if (!m_run->files.mayLeave())
        return false;
    checkGone(before, document().path(), name);
    return true;
}

/// After a recipe went: it is on the disk as it was, or a question named it.
void SavingSequence::checkGone(const Rows& before, const QString& path, const QString& name)
{
    const QString asked = m_run->answers.asked;
    const bool isDiscarded = !asked.isEmpty() && m_run->answers.unsaved == Questions::Unsaved::Discard;
    tell("  it went, " + (asked.isEmpty() ? "unasked" : "asked: " + asked.toStdString()));
    if (isDiscarded)
        expect(asked.contains(name), "the question does not name the recipe");
    else if (!before.empty())
        expect(rowsIn(path) == before, "rows are not in the file of a recipe that went without a question");
}

void SavingSequence::settle()
{
    for (const QString& folder : m_folders)
        m_run->work->waitForDone(folder + u'/', std::chrono::milliseconds(50));
    QApplication::processEvents();
}

}  // namespace firn::app
