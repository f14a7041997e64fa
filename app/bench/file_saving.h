// Saving the open recipe to its file, and what is said when that fails or when the file changes behind Firn's back.
#pragma once

#include "bench/file_wait.h"
#include "bench/message_bar.h"
#include "document/file_watch.h"

namespace firn::app {

class FileSaving : public QObject {
    Q_OBJECT

public:
    /// Takes what is being typed into the recipe. Returns a sentence about what cannot be read, or an empty one.
    using TakeTyping = std::function<QString()>;

    FileSaving(Document& document, FileWork& files, MessageBar& messages, QWidget& window, TakeTyping takeTyping);

    /// A text that cannot be read is not left out of the file unasked.
    bool takesTyping();
    /// Takes back what was said about unreadable text, once there is none.
    void forgetRefusal();

    /// False if the recipe is still not in this file; why is said then.
    bool saveTo(const QString& path) { return save(path, Folder::AsItIs); }
    /// The same to the recipe's own file, also if somebody else has changed it as was said last.
    bool saveOverTheirs();

    /// The rows alone, to a kind of file that cannot hold more.
    void exportTo(const QString& path);

    /// Waits for a save that was cancelled only to the eye. False if the person cancels again.
    bool finishes();

    /// Whether there is nothing to save, after a look at the disk.
    bool isAllOnDisk();

    /// Begins to look whether the file is still as it was read or saved.
    void look() { m_watch.look(); }

    /// Whether it stands in the window that the recipe could not be saved, or what has become of its file.
    bool hasSaidTrouble() const { return !m_said.isEmpty() && m_messages.sentence() == m_said; }

    /// The question before the recipe goes.
    QString questionBeforeLeaving(bool isAllRead) const;

    FileWait& wait() { return m_wait; }

signals:
    void saved(const QString& path);
    void failed();  // the recipe is still not saved
    void saveElsewhereWanted();
    void compareWanted(const QString& path, const firn::Recipe& onDisk);

private:
    enum class Folder { AsItIs, MadeAgain };

    bool save(const QString& path, Folder folder);
    bool finish(const RecipeToSave& wanted, const SaveOutcome& outcome);
    void noticed(const QString& path, const FoundOnDisk& found);
    void sayChanged(const QByteArray& theirs, bool isSaving);
    void sayNotSaved(const RecipeToSave& wanted, const FileFailure& why);
    MessageBar::Choice saveElsewhere();
    MessageBar::Choice makeTheFolder(const QString& path);
    MessageBar::Choice tryAgain(const QString& verb, const QString& path);
    void say(const QString& sentence, const std::vector<MessageBar::Choice>& choices);

    Document& m_document;
    FileWork& m_files;
    MessageBar& m_messages;
    TakeTyping m_takeTyping;
    FileWait m_wait;
    FileWatch m_watch;
    QString m_refusal;
    FoundOnDisk m_found;  // what was said last about the file
    OnDisk m_saidOnDisk = OnDisk::AsKnown;
    QString m_said;
};

}  // namespace firn::app
