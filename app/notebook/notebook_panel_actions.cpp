// What a person does with a recipe of the notebook, or with the notebook.
#include "bench/file_actions.h"
#include "bench/message_bar.h"
#include "bench/questions.h"
#include "document/file_work.h"
#include "document/mark_edits.h"
#include "document/notebook_place.h"
#include "gauges/wording.h"
#include "notebook/file_change.h"
#include "notebook/import_report.h"
#include "notebook/notebook_filters.h"
#include "notebook/notebook_model.h"
#include "notebook/notebook_panel.h"

#include <QAction>
#include <QDesktopServices>
#include <QFileInfo>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QStackedWidget>
#include <QUrl>

namespace firn::app {

void NotebookPanel::buildMenu()
{
    m_open = m_menu->addAction(tr("&Open"), this, &NotebookPanel::openChosen);
    m_favourite = m_menu->addAction(tr("&Favourite") + QStringLiteral("\t*"), this, &NotebookPanel::toggleFavourite);
    m_favourite->setCheckable(true);
    m_editTags = m_menu->addAction(tr("&Tags…") + QStringLiteral("\t#"), this, &NotebookPanel::editTags);
    m_archive = m_menu->addAction(tr("&Archived"), this, &NotebookPanel::toggleArchived);
    m_archive->setCheckable(true);
    m_showInFolder = m_menu->addAction(tr("&Show in its folder"), this, &NotebookPanel::showInFolder);
    m_menu->addSeparator();
    m_menu->addAction(tr("&Import a folder…"), this, &NotebookPanel::import);
    m_menu->addAction(tr("&Choose the notebook's folder…"), this, &NotebookPanel::chooseFolder);
    m_menu->addAction(tr("&Refresh") + QStringLiteral("\tF5"), this, [this] { m_folder.open(m_folder.path()); });
    connect(m_menu, &QMenu::aboutToShow, this, &NotebookPanel::enableActions);
    enableActions();
}

void NotebookPanel::enableActions()
{
    const RecipeCard* card = chosen();
    const bool isReadable = card && !card->fault;
    for (QAction* action : {m_open, m_showInFolder})
        action->setEnabled(card);
    for (QAction* action : {m_favourite, m_editTags, m_archive})
        action->setEnabled(isReadable);
    m_favourite->setChecked(card && card->isFavourite);
    m_archive->setChecked(card && card->isArchived);
}

const RecipeCard* NotebookPanel::chosen() const { return m_model->cardAt(m_list->currentIndex()); }

bool NotebookPanel::isOnBench(const RecipeCard& card) const
{
    const QString open = m_kitchen.document.path();
    return !open.isEmpty()
           && QFileInfo(open).canonicalFilePath() == QFileInfo(QString::fromStdString(card.file)).canonicalFilePath();
}

void NotebookPanel::openChosen()
{
    if (const RecipeCard* card = chosen(); card && !isOnBench(*card))
        m_kitchen.files.openFile(QString::fromStdString(card->file));
}

void NotebookPanel::changeChosen(const std::function<void(Document&)>& onBench, const std::function<void(Recipe&)>& inFile)
{
    const RecipeCard* card = chosen();
    if (!card || card->fault)
        return;
    if (isOnBench(*card)) {
        onBench(m_kitchen.document);
        return;
    }
    const QString file = QString::fromStdString(card->file);
    sharedFileWork().run(
        file, this, [file, inFile](const Disk&) { return changeInFile(file, inFile); },
        [this, file](const Result<void>& changed) {
            if (!changed)
                m_kitchen.messages.say(translated(changed.error()));
            m_folder.readAnew(file);
        });
}

void NotebookPanel::toggleFavourite()
{
    const RecipeCard* card = chosen();
    const bool isWanted = card && !card->isFavourite;
    changeChosen([isWanted](Document& document) { changeFavourite(document, isWanted); },
        [isWanted](Recipe& recipe) { recipe.isFavourite = isWanted; });
}

void NotebookPanel::toggleArchived()
{
    const RecipeCard* card = chosen();
    const bool isWanted = card && !card->isArchived;
    changeChosen([isWanted](Document& document) { changeArchived(document, isWanted); },
        [isWanted](Recipe& recipe) { recipe.isArchived = isWanted; });
}

void NotebookPanel::editTags()
{
    const RecipeCard* card = chosen();
    if (!card || card->fault)
        return;
    QStringList tags;
    for (const std::string& tag : card->tags)
        tags << QString::fromStdString(tag);
    m_tags->setText(tags.join(QStringLiteral(", ")));
    m_tags->setProperty("file", QString::fromStdString(card->file));
    m_tagRow->show();
    m_tags->setFocus();
    m_tags->end(false);
}

/// Another recipe may have been chosen while the tags were typed: they belong to the one that they were opened for.
void NotebookPanel::keepTags()
{
    const QModelIndex place = m_model->indexOf(m_tags->property("file").toString());
    m_tagRow->hide();
    m_list->setFocus();
    if (!place.isValid())
        return;
    m_list->setCurrentIndex(place);
    const std::vector<std::string> tags = tagsFrom(m_tags->text().toStdString());
    changeChosen([tags](Document& document) { changeTags(document, tags); }, [tags](Recipe& recipe) { recipe.tags = tags; });
}

void NotebookPanel::showInFolder()
{
    if (const RecipeCard* card = chosen())
        QDesktopServices::openUrl(QUrl::fromLocalFile(QFileInfo(QString::fromStdString(card->file)).path()));
}

void NotebookPanel::chooseFolder()
{
    const QString folder = m_kitchen.questions.folderToOpen(this, tr("Choose the notebook's folder"), m_folder.path());
    if (folder.isEmpty())
        return;
    chooseNotebookFolder(folder);
    m_pages->setCurrentIndex(0);
    m_folder.open(notebookFolder());
}

void NotebookPanel::import()
{
    if (m_importIsCalledOff)
        return;
    const QString from = m_kitchen.questions.folderToOpen(this, tr("Import a folder of recipes"), m_folder.path());
    if (from.isEmpty())
        return;
    m_importIsCalledOff = std::make_shared<std::atomic<bool>>(false);
    m_importing.start([this, from, notebook = m_folder.path(), isCalledOff = m_importIsCalledOff] {
        auto outcome = importFolder(from, notebook, *isCalledOff);
        QMetaObject::invokeMethod(
            this, [this, outcome = std::move(outcome)] { takeImport(outcome); }, Qt::QueuedConnection);
    });
    showState();
}

void NotebookPanel::takeImport(const Result<ImportOutcome>& outcome)
{
    m_importIsCalledOff.reset();
    m_folder.look();
    if (!outcome) {
        m_kitchen.messages.say(translated(outcome.error()));
        showState();
        return;
    }
    m_report->show(*outcome);
    m_pages->setCurrentWidget(m_report);
    showState();
}

}  // namespace firn::app
