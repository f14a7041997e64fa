// What can be done in the catalogue.
#include "bench/main_window.h"
#include "bench/message_bar.h"
#include "bench/questions.h"
#include "catalogue/catalogue_filters.h"
#include "catalogue/catalogue_window.h"
#include "catalogue/import_preview.h"
#include "catalogue/ingredient_form.h"
#include "catalogue/ingredient_wording.h"
#include "document/file_work.h"
#include "document/places.h"
#include "document/recipe_file.h"
#include "exchange/ingredient_files.h"
#include "gauges/wording.h"
#include "ingredients/own_ingredient.h"

#include <QComboBox>
#include <QFileInfo>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QStandardPaths>
#include <algorithm>

namespace firn::app {

void CatalogueWindow::putInRecipe()
{
    const Ingredient* ingredient = chosen();
    if (!ingredient || !m_kitchen || !m_kitchen->isVisible())
        return;
    const auto name = callName(*ingredient, m_pantry.catalogue());
    if (!name) {
        m_messages->say(
            tr("Recipes that say “%1” take your own ingredient of that name. Give that one another name to use this one.")
                .arg(fromCore(ingredient->name)));
        return;
    }
    m_kitchen->putInRecipe(*name);
    m_messages->note(tr("“%1” is in %2. Its amount is still to be typed there.")
                         .arg(fromCore(ingredient->name), m_kitchen->document().displayName()));
    m_filters->search()->selectAll();
}

void CatalogueWindow::startNew()
{
    Ingredient blank;
    // What was searched in vain is what the person wants to describe.
    if (!chosen())
        blank.name = m_filters->search()->text().simplified().toStdString();
    blank.group = m_filters->filter().group;
    openForm(blank, tr("New ingredient"));
}

void CatalogueWindow::editCopy()
{
    const Ingredient* original = chosen();
    if (!original)
        return;
    Ingredient copy = *original;
    copy.id.clear();
    copy.name = tr("%1 (copy)").arg(fromCore(original->name)).toStdString();
    // The other names stay with the original: recipes that use them keep meaning it.
    copy.synonyms.clear();
    copy.defaultFor.clear();
    copy.source = tr("After “%1”: %2").arg(fromCore(original->name), fromCore(original->source)).toStdString();
    openForm(copy, tr("A copy of %1").arg(fromCore(original->name)), true);
}

void CatalogueWindow::editOwn()
{
    if (const Ingredient* own = chosen(); own && m_pantry.isOwn(own->id))
        openForm(*own, fromCore(own->name));
}

void CatalogueWindow::remove()
{
    if (!chosen() || !m_pantry.isOwn(chosen()->id))
        return;
    const Ingredient gone = *chosen();
    if (const auto removed = m_pantry.remove(gone.id); !removed) {
        m_messages->say(translated(removed.error()));
        return;
    }
    const auto putBack = [this, gone] {
        if (const auto kept = m_pantry.keep(gone); !kept)
            m_messages->say(translated(kept.error()));
        else
            chooseId(*kept);
    };
    m_messages->note(tr("“%1” was deleted.").arg(fromCore(gone.name)), {{tr("Undo"), putBack}});
}

void CatalogueWindow::openForm(const Ingredient& ingredient, const QString& title, bool isTyped)
{
    m_messages->dismiss();
    m_formTitle = title;
    m_left->setEnabled(false);
    m_right->setCurrentWidget(m_form);
    m_form->edit(ingredient, title, isTyped);
}

bool CatalogueWindow::keepForm()
{
    if (!m_form->check())
        return false;
    const Ingredient typed = m_form->ingredient();
    if (const auto fault = faultOfName(typed, m_pantry.catalogue())) {
        m_form->sayNameFault(translated(*fault));
        return false;
    }
    const auto kept = m_pantry.keep(typed);
    if (!kept) {
        m_form->sayProblem(translated(kept.error()));
        return false;
    }
    closeForm();
    chooseId(*kept);
    m_messages->note(tr("“%1” is kept.").arg(fromCore(typed.name)));
    return true;
}

void CatalogueWindow::leaveForm()
{
    const bool isLost = m_form->isChanged();
    const Ingredient typed = m_form->ingredient();
    closeForm();
    if (isLost)
        m_messages->note(tr("What you typed was not kept."),
            {{tr("Go on typing"), [this, typed, title = m_formTitle] { openForm(typed, title, true); }}});
}

void CatalogueWindow::closeForm()
{
    m_left->setEnabled(true);
    m_right->setCurrentIndex(0);
    showChosen();
    m_filters->search()->setFocus();
}

void CatalogueWindow::import()
{
    const QStringList recent = recentFiles();
    const QString folder =
        recent.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : QFileInfo(recent.front()).path();
    const QString path = m_questions.ingredientsToImport(this, folder);
    if (path.isEmpty())
        return;
    m_messages->dismiss();
    const auto read = [path](const Disk&) {
        const auto contents = contentsOf(fileSystemPath(path));
        return contents ? ingredientsFromContents(*contents, fileSystemPath(path)) : failure(contents.error());
    };
    sharedFileWork().run(path, this, read, [this, path](Result<std::vector<ImportedIngredient>> imported) {
        if (!imported) {
            m_messages->say(translated(imported.error()));
            return;
        }
        showPage(m_import);
        m_import->show(QFileInfo(path).fileName(), std::move(*imported));
    });
}

void CatalogueWindow::keepImported()
{
    const std::vector<Ingredient> chosen = m_import->chosen();
    for (const Ingredient& ingredient : chosen) {
        const auto fault = faultOfName(ingredient, m_pantry.catalogue());
        if (fault && !m_pantry.ownLike(ingredient)) {
            m_messages->say(translated(*fault));
            return;
        }
    }
    std::vector<Ingredient> replaced;
    for (const Ingredient& own : m_pantry.own())
        if (std::ranges::find(chosen, own.id, &Ingredient::id) != chosen.end())
            replaced.push_back(own);
    const auto kept = m_pantry.keepAll(chosen);
    if (!kept) {
        m_messages->say(translated(kept.error()));
        return;
    }
    showPage(m_pages->widget(0));
    chooseId(kept->front());
    const auto undo = [this, ids = *kept, replaced] {
        if (const auto undone = m_pantry.exchange(ids, replaced); !undone)
            m_messages->say(translated(undone.error()));
    };
    m_messages->note(
        kept->size() == 1 ? tr("One ingredient was kept.") : tr("%n ingredients were kept.", nullptr, int(kept->size())),
        {{tr("Undo"), undo}});
}

}  // namespace firn::app
