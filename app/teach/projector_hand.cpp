// What the teacher's hands do on a projection: keys, the mouse, and what they bring up.
#include "teach/projector_panels.h"
#include "teach/projector_pointer.h"
#include "teach/projector_type.h"
#include "teach/projector_window.h"

#include <QKeyEvent>
#include <utility>

namespace firn::app {

void ProjectorWindow::showPointer(bool isShown)
{
    m_pointer->pointAt(mapFromGlobal(QCursor::pos()));
    m_pointer->setVisible(isShown);
    m_pointer->raise();
    stirCursor();
}

/// The dot takes the place of the cursor; without it the cursor rests after a while.
void ProjectorWindow::stirCursor()
{
    setCursor(m_pointer->isVisible() ? Qt::BlankCursor : Qt::ArrowCursor);
    m_cursorRest.start();
}

void ProjectorWindow::mouseMoveEvent(QMouseEvent* event)
{
    m_pointer->pointAt(event->pos());
    stirCursor();
}

void ProjectorWindow::showKeys()
{
    closePanels();
    m_keys = new ProjectorKeys(ProjectorType(font(), size()).quiet, this);
    m_keys->show();
}

void ProjectorWindow::showList()
{
    closePanels();
    QStringList titles;
    for (const LessonTopic each : m_topics)
        titles << projectedText(titleOf(each));
    m_list = new ProjectorList(titles, isTopicMissing() ? -1 : int(page()), ProjectorType(font(), size()).quiet, this);
    connect(m_list, &ProjectorList::left, this, &ProjectorWindow::closePanels, Qt::QueuedConnection);
    connect(
        m_list, &ProjectorList::chosen, this,
        [this](int page) {
            closePanels();
            goTo(page);
        },
        Qt::QueuedConnection);
    m_list->show();
    m_list->setFocus();
}

void ProjectorWindow::say(const QString& sentence)
{
    closePanels();
    m_saying = new ProjectorSaying(sentence, ProjectorType(font(), size()).quiet, this);
    m_saying->show();
}

void ProjectorWindow::closePanels()
{
    delete std::exchange(m_saying, nullptr);
    delete std::exchange(m_keys, nullptr);
    delete std::exchange(m_list, nullptr);
    setFocus();
}

void ProjectorWindow::keyPressEvent(QKeyEvent* event)
{
    const bool wereKeysShown = m_keys;
    closePanels();
    const int key = event->key();
    switch (key) {
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space:
    case Qt::Key_PageDown:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return goOn();
    case Qt::Key_Left:
    case Qt::Key_Up:
    case Qt::Key_PageUp:
    case Qt::Key_Backspace:
        return goBack();
    case Qt::Key_Home:
        return goTo(0);
    case Qt::Key_End:
        return goTo(int(m_topics.size()) - 1);
    case Qt::Key_R:
        return revealAll();
    case Qt::Key_H:
        return hideAnswers(!m_areAnswersHidden);
    case Qt::Key_P:
        return showPointer(!m_pointer->isVisible());
    case Qt::Key_D:
        return changeShade();
    case Qt::Key_S:
        return goToNextScreen();
    case Qt::Key_L:
        return showList();
    case Qt::Key_F1:
    case Qt::Key_Question:
        if (!wereKeysShown)
            showKeys();
        return;
    case Qt::Key_Escape:
        if (!wereKeysShown)
            hide();
        return;
    default:
        if (key >= Qt::Key_1 && key <= Qt::Key_9)
            return goTo(key - Qt::Key_1);
        if (key == Qt::Key_0)
            return goTo(9);
        QWidget::keyPressEvent(event);
    }
}

}  // namespace firn::app
