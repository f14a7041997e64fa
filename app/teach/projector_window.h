// A lesson on the open recipe, full screen: one idea a page, revealed step by step. Reckons only while it is open.
#pragma once

#include "document/document.h"
#include "explain/lesson.h"
#include "teach/projector_layout.h"

#include <QTimer>
#include <QWidget>
#include <algorithm>

class QAction;

namespace firn::app {

class ProjectedView;
class ProjectorKeys;
class ProjectorList;
class ProjectorPicture;
class ProjectorPointer;
class ProjectorSaying;

class ProjectorWindow : public QWidget {
    Q_OBJECT

public:
    /// The document must outlive the window.
    explicit ProjectorWindow(const Document& document, QWidget* parent = nullptr);

    /// For a menu: comes up on a second screen if there is one, else on that of the window.
    QAction* openAction() { return m_open; }

    const std::vector<LessonTopic>& topics() const { return m_topics; }
    /// The one that was gone to, even while the recipe has not got the stuff for it; none while the recipe is empty.
    LessonTopic topic() const { return m_topics.front() == LessonTopic::Nothing ? LessonTopic::Nothing : m_topic; }
    bool isTopicMissing() const { return pageAfter() == page(); }
    int part() const { return m_part; }
    int partCount() const { return int(m_parts.size()); }
    /// How many steps of the part are shown.
    int step() const { return m_step; }
    int lastStep() const { return m_parts[std::size_t(m_part)].lastStep; }
    bool areAnswersHidden() const { return m_areAnswersHidden; }

public slots:
    void open();
    void goOn();
    void goBack();
    /// To the beginning of a page, counted from 0.
    void goTo(int page);
    void revealAll();
    void hideAnswers(bool areHidden);
    void changeShade();
    void goToNextScreen();

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// Where the topic is in the lesson, or would be; and the page after it.
    std::size_t page() const { return std::size_t(std::ranges::lower_bound(m_topics, topic()) - m_topics.begin()); }
    std::size_t pageAfter() const { return std::size_t(std::ranges::upper_bound(m_topics, topic()) - m_topics.begin()); }
    void evaluate();
    HiddenAnswers answers() const;
    void layOutPage();
    void showPart();
    void showStep();
    void showNumber();
    void showKeys();
    void showList();
    void say(const QString& sentence);
    void closePanels();
    void showPointer(bool isShown);
    void stirCursor();

    const Document& m_document;
    QAction* m_open;
    ProjectorPicture* m_picture = nullptr;  // made when it is first shown
    ProjectorPointer* m_pointer;
    ProjectorKeys* m_keys = nullptr;
    ProjectorList* m_list = nullptr;
    ProjectorSaying* m_saying = nullptr;
    QTimer m_cursorRest;
    ExplainedAnalysis m_explained;
    std::vector<LessonTopic> m_topics{LessonTopic::Nothing};
    LessonPage m_lesson;  // the page that is shown
    std::vector<ProjectedPart> m_parts{ProjectedPart{}};
    std::vector<ProjectedView*> m_views;         // of the part that is shown
    LessonTopic m_topic = LessonTopic::Nothing;  // the first one there is
    int m_part = 0;
    int m_step = 0;
    bool m_areAnswersHidden = false;
    HiddenAnswers m_answers;  // to hide, of all pages; none while they are shown
};

}  // namespace firn::app
