#include "saving_sequence.h"

#include "exchange/recipe_json.h"

#include <QDir>
#include <QLayout>
#include <QPushButton>

namespace firn::app {

namespace {

constexpr int deedsOfASequence = 25;

/// The rows are names that no catalogue has, and this one is the quickest to search in vain.
const Catalogue& noCatalogue()
{
    static const Catalogue none;
    return none;
}

}  // namespace

Run::Run(std::unique_ptr<FileWork> fileWork, const QString& recoveries)
    : work(std::move(fileWork))
    , messages(new MessageBar(&window))
    , document(noCatalogue())
    , recovery(document, recoveries, *work)
    , files(document, *work, answers, *messages, window, [] { return QString(); })
{
    window.setProperty("mayAsk", true);     // the dialog of a disk that hangs, which this test cancels
    messages->layout()->setEnabled(false);  // nobody sees where its words would stand
    QObject::connect(&recovery, &Recovery::failed, &window, [this] { isRecoveryDoubtful = true; });
    QObject::connect(&recovery, &Recovery::written, &window, [this] {
        isRecoveryDoubtful = false;
        files.forgetRecovered();
    });
    QObject::connect(&files, &FileActions::recovered, &recovery, &Recovery::writeNow);
    QObject::connect(&files.saving(), &FileSaving::failed, &recovery, &Recovery::writeNow);
}

SavingSequence::SavingSequence(unsigned seed, Workers workers)
    : m_random(seed)
    , m_workers(workers)
    , m_disk(std::make_shared<FailingDisk>())
{
    for (const char* name : {"here", "there"}) {
        m_folders << m_folder.filePath(QLatin1String(name));
        QDir().mkpath(m_folders.last());
    }
    m_recoveries = m_folder.filePath(QStringLiteral("state"));
    m_run = newRun();
}

SavingSequence::~SavingSequence() { m_disk->release(); }

std::unique_ptr<Run> SavingSequence::newRun()
{
    auto work =
        m_workers == Workers::Threads ? std::make_unique<FileWork>(m_disk) : std::make_unique<SteppedWork>(m_disk, m_random);
    return std::make_unique<Run>(std::move(work), m_recoveries);
}

std::string SavingSequence::run()
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

void SavingSequence::expect(bool isFine, const std::string& claim)
{
    // The answer of a program that is being killed reaches nobody.
    if (!isFine && !m_disk->isDead() && m_wrong.empty())
        m_wrong = claim;
}

Rows SavingSequence::rowsIn(const QString& path)
{
    QFile file(path);
    if (path.isEmpty() || !file.open(QIODevice::ReadOnly))
        return {};
    const auto recipe = recipeFromJson(file.readAll().toStdString());
    if (!recipe && !m_foreign.contains(path))
        m_wrong = "a torn file: " + path.toStdString();
    return recipe ? rowsOf(*recipe) : Rows();
}

/// The program dies. Whatever the person was promised is there again at the next start, in one piece.
void SavingSequence::kill()
{
    tell("killed");
    m_disk->dieAfter(0);
    m_disk->release();
    const Rows wanted = common(m_promised, m_steps.now());
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

void SavingSequence::restart(bool wasKilled)
{
    m_disk->release();
    m_run.reset();
    wasKilled = wasKilled || m_disk->isDead();  // on its way out
    auto disk = std::make_shared<FailingDisk>();
    for (const QString& folder : allFolders())
        disk->setMood(folder, m_disk->moodOf(folder));
    m_disk = std::move(disk);
    for (const QString& folder : m_folders)
        QDir().mkpath(folder);
    m_run = newRun();
    m_steps.restart({});
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
    if (m_wrong.empty() && !left.empty())
        recoverTheFirst(std::move(left));
}

/// The others stay where they are.
void SavingSequence::recoverTheFirst(std::vector<LeftBehind> left)
{
    tell("start, offered: " + std::to_string(left.size()));
    answer();
    left.resize(1);
    m_run->files.offer(std::move(left));
    const auto buttons = m_run->messages->findChildren<QPushButton*>();
    const auto recover = std::ranges::find_if(
        buttons, [](const QPushButton* button) { return button->text() == QLatin1String("Recover") && !button->isHidden(); });
    if (recover == buttons.end()) {
        m_wrong = "what was left behind is not offered";
        return;
    }
    (*recover)->click();
    settle();
    m_run->recovery.finishWriting();
    m_steps.restart(rowsOf(document().recipe()));
    expect(m_steps.now() == m_offered.front(), "another recipe was recovered");
    expect(document().isModified() || rowsIn(document().path()) == m_offered.front(), "a recovered recipe counts as saved");
    m_promised = m_steps.now();
}

}  // namespace firn::app
