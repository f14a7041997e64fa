// Opening and saving as the person does it: from the menu, with its questions and its refusals.
#pragma once

#include "bench/file_saving.h"
#include "document/recovery.h"

#include <QObject>

class QMenu;
class QWidget;

namespace firn::app {

class MessageBar;
class Questions;

class FileActions : public QObject {
    Q_OBJECT

public:
    FileActions(Document& document, FileWork& files, Questions& questions, MessageBar& messages, QWidget& window,
        FileSaving::TakeTyping takeTyping);
    /// What was recovered is saved or not wanted by then.
    ~FileActions() override;

    void fill(QMenu& menu);

    /// Lays out a sample at the very first start, and later the recipe that was open last.
    void greet();

    /// Offers the recipes that a crash left unsaved, one after the other.
    void offer(std::vector<LeftBehind> leftBehind);

    /// Opens a file in place of the open recipe, after asking about changes that are not saved.
    void openFile(const QString& path);

    /// Whether the open recipe may go: it is on the disk, or the person does not want it.
    bool mayLeave();

    /// False if the recipe is still not saved; why is said then.
    bool save();
    bool saveAs();

    /// Asks for a recipe that becomes an ingredient of the component in view.
    void linkRecipe();

    /// What a crash had left behind goes, now that the recovered recipe has a recovery copy of its own.
    void forgetRecovered();

    FileSaving& saving() { return *m_saving; }

signals:
    /// A recipe that a crash had left behind is open.
    void recovered();
    /// An empty recipe is open.
    void startedNew();

private:
    void recover(LeftBehind unsaved);
    void discard(const LeftBehind& unsaved);
    void show(const QString& path, const FileResult<OpenedRecipe>& opened);
    void startNew();
    void open();
    void fillRecent(QMenu& menu);
    void fillSamples(QMenu& menu);
    QString suggestedPath() const;

    Document& m_document;
    FileWork& m_files;
    Questions& m_questions;
    MessageBar& m_messages;
    QWidget& m_window;
    FileSaving::TakeTyping m_takeTyping;
    FileSaving* m_saving;
    std::vector<LeftBehind> m_recovered;
};

}  // namespace firn::app
