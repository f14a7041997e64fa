#include "notebook/notebook_panel.h"

#include "bench/file_actions.h"
#include "bench/ink_label.h"
#include "document/notebook_place.h"
#include "gauges/type_and_space.h"
#include "notebook/import_report.h"
#include "notebook/notebook_filters.h"
#include "notebook/notebook_model.h"

#include <QDir>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QLocale>
#include <QMenu>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

enum Page { ListPage, EmptyPage, ReportPage };

/// Below that many, reading is over before anybody could read how far it is.
constexpr int manyFiles = 500;

}  // namespace

NotebookPanel::NotebookPanel(const Kitchen& kitchen, QWidget* parent)
    : QWidget(parent)
    , m_kitchen(kitchen)
    , m_folder(kitchen.pantry)
    , m_model(new NotebookModel(m_folder, this))
    , m_filters(new NotebookFilters)
    , m_list(new QListView)
    , m_status(new InkLabel(InkLabel::Quiet))
    , m_statusAct(new QToolButton)
    , m_hint(new InkLabel(InkLabel::Quiet))
    , m_hintAct(new QPushButton)
    , m_report(new ImportReport)
    , m_pages(new QStackedWidget)
    , m_tagRow(new QWidget)
    , m_tags(new QLineEdit)
    , m_place(new InkLabel(InkLabel::Quiet))
    , m_menu(new QMenu(this))
{
    buildMenu();
    m_pages->addWidget(listPage());
    m_pages->addWidget(emptyPage());
    m_pages->addWidget(m_report);

    m_status->setObjectName(QStringLiteral("notebookStatus"));
    m_statusAct->setObjectName(QStringLiteral("notebookStatusAct"));
    m_statusAct->setAutoRaise(true);
    auto* status = new QHBoxLayout;
    status->addWidget(m_status, 1);
    status->addWidget(m_statusAct);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(gridStep);
    layout->addWidget(m_filters);
    layout->addLayout(status);
    layout->addWidget(m_pages, 1);
    layout->addWidget(m_tagRow);
    layout->addWidget(actionRow());

    connect(m_filters, &NotebookFilters::changed, this, &NotebookPanel::followFilters);
    connect(&m_folder, &NotebookFolder::changed, this, &NotebookPanel::followFolder);
    connect(m_report, &ImportReport::closed, this, [this] {
        m_pages->setCurrentIndex(ListPage);
        showState();
        m_list->setFocus();
    });
    connect(m_statusAct, &QToolButton::clicked, this, [this] {
        if (m_importIsCalledOff)
            *m_importIsCalledOff = true;
        else if (m_folder.isStopped())
            m_folder.look();
        else
            m_folder.stop();
        showState();
    });
    connect(&kitchen.document, &Document::changed, this, &NotebookPanel::followDocument);
    connect(&kitchen.document, &Document::pathChanged, this, [this] {
        followDocument();
        if (isVisible())
            m_folder.look();
    });
    showState();
}

NotebookPanel::~NotebookPanel()
{
    if (m_importIsCalledOff)
        *m_importIsCalledOff = true;
    m_importing.waitForDone();
}

void NotebookPanel::goToSearch()
{
    m_filters->search()->setFocus(Qt::ShortcutFocusReason);
    m_filters->search()->selectAll();
}

void NotebookPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_folder.path() == notebookFolder())
        m_folder.look();
    else
        m_folder.open(notebookFolder());
    m_folder.keepLooking(true);
    showState();
}

void NotebookPanel::hideEvent(QHideEvent* event)
{
    m_folder.keepLooking(false);
    QWidget::hideEvent(event);
}

bool NotebookPanel::eventFilter(QObject* object, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return false;
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool isEnter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (object == m_tags && key == Qt::Key_Escape) {
        m_tagRow->hide();
        m_list->setFocus();
        return true;
    }
    if (object == m_filters->search() && key == Qt::Key_Escape && !m_filters->search()->text().isEmpty()) {
        m_filters->search()->clear();
        return true;
    }
    if (object == m_filters->search() && (key == Qt::Key_Down || isEnter)) {
        chooseFirst();
        m_list->setFocus();
        if (isEnter)
            openChosen();
        return true;
    }
    if (object == m_list && key == Qt::Key_Asterisk) {
        toggleFavourite();
        return true;
    }
    if (object == m_list && key == Qt::Key_NumberSign) {
        editTags();
        return true;
    }
    if (object == m_list && key == Qt::Key_F5) {
        m_folder.open(m_folder.path());
        return true;
    }
    return false;
}

/// Lists anew with the same recipe chosen, and in the same place of the window, as before.
void NotebookPanel::relist(const std::function<void()>& list)
{
    const QString file = m_list->currentIndex().data(NotebookModel::FileRole).toString();
    const int scrolled = m_list->verticalScrollBar()->value();
    list();
    if (const QModelIndex again = m_model->indexOf(file); again.isValid())
        m_list->setCurrentIndex(again);
    m_list->verticalScrollBar()->setValue(scrolled);
    const bool isArchive = m_filters->filter().shelf == Shelf::Archived;
    m_filters->showCount(m_model->rowCount(), int(std::ranges::count(m_folder.cards(), isArchive, &RecipeCard::isArchived)));
    showState();
    enableActions();
}

void NotebookPanel::followFilters()
{
    relist([this] {
        m_model->setFilter(m_filters->filter());
        m_model->setOrder(m_filters->order());
    });
}

void NotebookPanel::followFolder()
{
    followDocument();
    relist([this] { m_model->readAnew(); });
    m_filters->offerTags(tagsIn(m_folder.cards()));
}

/// What the notebook shows of the recipe on the bench are its marks as they are there, saved or not.
void NotebookPanel::followDocument()
{
    const QString file = m_kitchen.document.path();
    if (file != m_openFile) {
        m_folder.readAnew(m_openFile);
        m_openFile = file;
        m_model->setOpenFile(file);
    }
    if (m_folder.mark(file, m_kitchen.document.recipe()))
        m_folder.tell();
}

void NotebookPanel::showState()
{
    const int all = m_folder.fileCount();
    const int unread = m_folder.unread();
    const QLocale locale;
    QString status;
    QString act;
    if (m_importIsCalledOff) {
        status = *m_importIsCalledOff ? tr("Stopping…") : tr("Importing the recipes…");
        act = tr("Stop");
    } else if (m_folder.isStopped()) {
        status = tr("Not all recipes were read.");
        act = tr("Continue");
    } else if (unread > 0 && all >= manyFiles) {
        status = tr("Reading: %1 of %2").arg(locale.toString(all - unread), locale.toString(all));
        act = tr("Stop");
    }
    m_status->setText(status);
    m_statusAct->setText(act);
    m_statusAct->setVisible(!act.isEmpty());

    const QString place = QDir::toNativeSeparators(m_folder.path());
    m_place->setToolTip(place);
    m_place->setText(m_place->fontMetrics().elidedText(QDir(m_folder.path()).dirName(), Qt::ElideMiddle, m_place->width()));
    if (m_pages->currentIndex() != ReportPage) {
        m_pages->setCurrentIndex(m_model->rowCount() > 0 ? ListPage : EmptyPage);
        showEmptyState();
    }
}

void NotebookPanel::showEmptyState()
{
    const bool isMissing =
        !m_folder.isThere() && (m_folder.path() != usualNotebookFolder() || wasNotebookThere(m_folder.path()));
    if (isMissing) {
        m_hint->setText(tr("The folder %1 is gone. Reconnect its drive or restore the folder, and the recipes will reappear.")
                            .arg(QDir::toNativeSeparators(m_folder.path())));
        m_hintAct->setText(tr("Choose another folder…"));
    } else if (m_folder.cards().empty() && m_folder.isReading()) {
        m_hint->setText(tr("Reading the recipes…"));
    } else if (m_folder.cards().empty()) {
        m_hint->setText(tr("No recipes yet. Save one, or import a folder of recipes."));
        m_hintAct->setText(tr("Import a folder…"));
    } else {
        m_hint->setText(m_filters->isUnderstood() ? tr("No recipes match.") : QString());
        m_hintAct->setText(tr("Show all"));
    }
    m_hintAct->setVisible(isMissing || !m_folder.cards().empty() || !m_folder.isReading());
}

void NotebookPanel::chooseFirst()
{
    if (!m_list->currentIndex().isValid() && m_model->rowCount() > 0)
        m_list->setCurrentIndex(m_model->index(0));
}

}  // namespace firn::app
