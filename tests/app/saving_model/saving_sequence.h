// A random sequence of typing, saving, undoing, closing, killing and starting on a disk that fails on purpose, checked against what a person knows.
#pragma once

#include "../bench.h"
#include "../failing_disk.h"
#include "person.h"
#include "stepped_work.h"

#include "bench/file_actions.h"
#include "bench/message_bar.h"

#include <QSet>
#include <memory>
#include <sstream>

namespace firn::app {

/// Who does the work on files: threads, as in the program, or the test itself in an order drawn from the seed.
enum class Workers { Threads, Stepped };

/// One run of the program, from start to close or kill.
struct Run {
    Run(std::unique_ptr<FileWork> work, const QString& recoveries);

    std::unique_ptr<FileWork> work;
    Answers answers;
    QWidget window;
    MessageBar* messages;
    Document document;
    Recovery recovery;
    FileActions files;
    bool isRecoveryDoubtful = false;
};

class SavingSequence {
public:
    SavingSequence(unsigned seed, Workers workers);
    ~SavingSequence();

    /// Empty, or what went wrong and how it came to that.
    std::string run();

private:
    int below(int end) { return int(m_random() % unsigned(end)); }
    bool chance(int oneIn) { return below(oneIn) == 0; }
    QString anyFolder() { return m_folders[below(2)]; }
    QString anyFile() { return anyFolder() + (chance(2) ? QStringLiteral("/granita.firn") : QStringLiteral("/sorbet.firn")); }
    QStringList allFolders() const { return m_folders + QStringList{m_recoveries}; }
    Document& document() { return m_run->document; }
    void tell(const std::string& what) { m_story << what << '\n'; }
    void expect(bool isFine, const std::string& claim);
    Rows rowsIn(const QString& path);

    // What the person does, and what happens to the disk.
    void doOne(int deed);
    void type();
    void save();
    void saveAs();
    void aMoment();
    void changeMood();
    void loseFolder();
    void letOthersWrite();
    void pressAButton();
    void openAnother();
    void hangOrGoOn();
    void answer();
    bool leaves();
    void settle();

    void noteSaved(bool isSaved);
    void checkGone(const Rows& before, const QString& path, const QString& name);

    // How a run ends, and the next begins.
    std::unique_ptr<Run> newRun();
    void kill();
    void restart(bool wasKilled);
    void recoverTheFirst(std::vector<LeftBehind> left);

    std::minstd_rand m_random;
    Workers m_workers;
    QTemporaryDir m_folder;
    QStringList m_folders;
    QString m_recoveries;
    std::shared_ptr<FailingDisk> m_disk;
    std::unique_ptr<Run> m_run;
    Steps m_steps;
    Rows m_promised;  // what must be there again after a kill
    std::vector<Rows> m_offered;
    std::size_t m_others = 0;  // left behind and not recovered yet
    QSet<QString> m_foreign;   // files that others wrote
    int m_lastRow = 0;
    std::ostringstream m_story;
    std::string m_wrong;
};

}  // namespace firn::app
