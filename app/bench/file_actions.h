// Opening and saving as the person does it: from the menu, with its questions and its refusals.
#pragma once

#include "document/recovery.h"

#include <QObject>
#include <functional>

class QMenu;
class QWidget;

namespace firn::app {

class MessageBar;
class Questions;

class FileActions : public QObject {
    Q_OBJECT

public:
    /// Takes what is being typed into the recipe. Returns a sentence about what cannot be read, or an empty one.
    using TakeTyping = std::function<QString()>;

    FileActions(Document& document, Questions& questions, MessageBar& messages, QWidget& window, TakeTyping takeTyping);

    void fill(QMenu& menu);

    /// Lays out a sample at the very first start, and later the recipe that was open last.
    void greet();

    /// Offers the recipes that a crash left unsaved, one after the other.
    void offer(std::vector<LeftBehind> leftBehind);

    /// Opens a file in place of the recipe on the bench, after asking about changes that are not saved.
    void openFile(const QString& path);

    /// Whether the recipe on the bench may go: it is saved, or the person does not want it.
    bool mayLeave();

    /// False if the recipe is still not kept in a file.
    bool save();
    bool saveAs();

    /// Asks for a recipe that becomes an ingredient of the component in view.
    void linkRecipe();

    /// Takes back what was said about unreadable text, once there is none.
    void forgetRefusal();

signals:
    /// A recipe that a crash had left behind is on the bench.
    void tookUp();
    /// An empty recipe is on the bench.
    void startedNew();

private:
    void takeUp(const LeftBehind& unsaved);
    void startNew();
    void open();
    void fillRecent(QMenu& menu);
    void fillSamples(QMenu& menu);
    bool takesTyping();
    bool saveTo(const QString& path);
    void saveCopy(const QString& path);
    QString suggestedPath() const;

    Document& m_document;
    Questions& m_questions;
    MessageBar& m_messages;
    QWidget& m_window;
    TakeTyping m_takeTyping;
    QString m_refusal;
};

}  // namespace firn::app
