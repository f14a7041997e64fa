#include "teach/projector_window.h"

#include "bench/appearance.h"
#include "gauges/palette.h"
#include "gauges/temperature_unit.h"
#include "teach/figure_wording.h"
#include "teach/missing_topic.h"
#include "teach/projected_view.h"
#include "teach/projector_panels.h"
#include "teach/projector_picture.h"
#include "teach/projector_pointer.h"
#include "texture/trade_bands.h"
#include "units/number.h"

#include <QAction>
#include <QGuiApplication>
#include <QScreen>
#include <QShowEvent>
#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <utility>

namespace firn::app {

namespace {

constexpr int cursorRests_ms = 3000;

}  // namespace

ProjectorWindow::ProjectorWindow(const Document& document, QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_document(document)
    , m_open(new QAction(tr("&Project for a class"), this))
    , m_pointer(new ProjectorPointer(this))
{
    setWindowTitle(tr("Lesson"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAutoFillBackground(true);
    m_open->setShortcut(tr("Ctrl+Shift+P"));
    connect(m_open, &QAction::triggered, this, &ProjectorWindow::open);
    m_cursorRest.setSingleShot(true);
    m_cursorRest.setInterval(cursorRests_ms);
    connect(&m_cursorRest, &QTimer::timeout, this, [this] { setCursor(Qt::BlankCursor); });
    connect(&m_document, &Document::changed, this, [this] {
        if (isVisible())
            evaluate();
    });
}

void ProjectorWindow::open()
{
    if (!isVisible()) {
        const QList<QScreen*> screens = QGuiApplication::screens();
        QScreen* const here = parentWidget() ? parentWidget()->screen() : screens.front();
        const auto other = std::ranges::find_if(screens, [here](const QScreen* each) { return each != here; });
        setGeometry((other == screens.end() ? here : *other)->geometry());
        m_step = 0;
        m_part = 0;
        m_topic = LessonTopic::Nothing;
        showFullScreen();
    }
    raise();
    activateWindow();
    setFocus();
}

void ProjectorWindow::goToNextScreen()
{
    const QList<QScreen*> screens = QGuiApplication::screens();
    const qsizetype next = (screens.indexOf(screen()) + 1) % screens.size();
    if (screens[next] == screen())
        return say(tr("There is only one screen."));
    showNormal();
    setGeometry(screens[next]->geometry());
    showFullScreen();
}

void ProjectorWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (event->spontaneous())
        return;
    if (!m_picture)
        m_picture = new ProjectorPicture(this);
    evaluate();
    stirCursor();
}

void ProjectorWindow::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    if (!event->spontaneous()) {
        closePanels();
        m_explained = {};
        m_topics = {LessonTopic::Nothing};
        m_topic = LessonTopic::Nothing;
    }
}

void ProjectorWindow::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    closePanels();
    if (m_picture && isVisible())
        layOutPage();
}

void ProjectorWindow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (m_picture && isVisible() && (event->type() == QEvent::FontChange || event->type() == QEvent::LocaleChange))
        layOutPage();
}

/// Under the very conditions that the figures of the bench were reckoned with. Stays at the same topic, gone or not, so that it is there
/// again as soon as what was taken out is back.
void ProjectorWindow::evaluate()
{
    m_explained = analyseWithWorkings(m_document.recipe(), m_document.catalogue(), m_document.analysis().conditions,
        m_document.component(), m_document.stepsDone());
    const LessonTopic shown = topic();
    const bool wasMissing = isTopicMissing();
    m_topics = lessonTopics(m_explained.analysis);
    if (m_topic == LessonTopic::Nothing)
        m_topic = m_topics.front();
    if (topic() != shown || isTopicMissing() != wasMissing)
        m_part = m_step = 0;
    m_answers = answers();
    layOutPage();
}

/// Of all pages, since what one of them finds is put in on another.
HiddenAnswers ProjectorWindow::answers() const
{
    HiddenAnswers answers;
    if (!m_areAnswersHidden)
        return answers;
    for (const LessonTopic each : m_topics) {
        for (const WorkingStep& found : lessonPage(each, m_explained).steps)
            answers.add(found.result);
    }
    const Conditions& conditions = m_explained.analysis.conditions;
    for (const Celsius given : {conditions.serveAt, conditions.freezerAt})
        for (const double shown : {given.value, roundedTo(0, numberIn(shownTemperatureUnit(), given))})
            answers.addGiven(shown);
    const TextureClass kind = m_explained.analysis.texture.textureClass;
    for (const TradeBand& band : tradeBands()) {
        const bool isNamed =
            band.textureClass == kind || band.textureClass == TextureClass::Granita || band.textureClass == TextureClass::Sorbet;
        for (const MassFraction given : {band.low, band.high}) {
            if (isNamed)
                answers.addGiven(percent(given));
        }
    }
    return answers;
}

void ProjectorWindow::layOutPage()
{
    QFont quiet = ProjectorType(font(), size()).quiet;
    if (m_picture->font().pixelSize() != quiet.pixelSize())
        m_picture->setFont(quiet);
    m_lesson = isTopicMissing() ? missingTopicPage(topic(), m_explained.analysis) : lessonPage(topic(), m_explained);
    m_picture->show(m_lesson, m_explained.analysis, m_areAnswersHidden);
    m_parts = projectedParts(m_lesson, size(), font(), m_picture->needOf(m_lesson.picture), m_answers);
    m_part = std::clamp(m_part, 0, partCount() - 1);
    m_step = std::clamp(m_step, 0, lastStep());
    showPart();
}

void ProjectorWindow::showPart()
{
    for (ProjectedView* view : m_views)
        delete view;
    m_views.clear();
    m_picture->hide();
    for (const ProjectedItem& item : m_parts[std::size_t(m_part)].items) {
        if (item.kind != ProjectedKind::Picture) {
            m_views.push_back(new ProjectedView(item, this));
            continue;
        }
        m_picture->setGeometry(item.place);
    }
    showNumber();
    showStep();
    for (QWidget* over : std::initializer_list<QWidget*>{m_pointer, m_keys, m_list, m_saying}) {
        if (over)
            over->raise();
    }
}

void ProjectorWindow::showStep()
{
    for (ProjectedView* view : m_views)
        view->setVisible(view->shownFrom() <= m_step);
    for (const ProjectedItem& item : m_parts[std::size_t(m_part)].items) {
        if (item.kind == ProjectedKind::Picture)
            m_picture->setVisible(item.shownFrom <= m_step);
    }
}

/// At the bottom right, quietly; on the first page with the key that tells the others.
void ProjectorWindow::showNumber()
{
    if (isTopicMissing())
        return;
    const ProjectorType type(font(), size());
    const QString number = tr("topic %1 of %2").arg(page() + 1).arg(m_topics.size());
    const QString text = page() == 0 && m_part == 0 ? tr("F1 shows the keys · %1").arg(number) : number;
    FormulaBox box = textLines(text, type.quiet, width(), Lettering::Quiet, {}).front();
    const QSize size(int(std::ceil(box.width)), int(std::ceil(box.height())));
    const QPoint bottomRight(qRound(width() - type.margin), qRound(height() - 0.5 * type.margin));
    const QRect place(bottomRight - QPoint(size.width(), size.height()), size);
    m_views.push_back(new ProjectedView({ProjectedKind::Number, place, std::move(box), text, 0}, this));
}

void ProjectorWindow::goOn()
{
    if (m_step < lastStep()) {
        ++m_step;
        showStep();
    } else if (m_part + 1 < partCount()) {
        ++m_part;
        m_step = 0;
        showPart();
    } else {
        goTo(int(pageAfter()));
    }
}

/// To the step before, or to the page before with all of it shown.
void ProjectorWindow::goBack()
{
    if (m_step > 0) {
        --m_step;
        showStep();
        return;
    }
    if (m_part > 0) {
        --m_part;
    } else if (page() > 0) {
        m_topic = m_topics[page() - 1];
        layOutPage();
        m_part = partCount() - 1;
    } else {
        return;
    }
    m_step = lastStep();
    showPart();
}

void ProjectorWindow::goTo(int page)
{
    if (page < 0 || std::size_t(page) >= m_topics.size())
        return;
    m_topic = m_topics[std::size_t(page)];
    m_part = m_step = 0;
    layOutPage();
}

void ProjectorWindow::revealAll()
{
    m_step = lastStep();
    showStep();
}

void ProjectorWindow::hideAnswers(bool areHidden)
{
    m_areAnswersHidden = areHidden;
    m_answers = answers();
    layOutPage();
}

void ProjectorWindow::changeShade()
{
    const bool isDark = palette().color(QPalette::Window).lightness() < palette().color(QPalette::WindowText).lightness();
    setPalette(framePalette(!isDark));
}

}  // namespace firn::app
