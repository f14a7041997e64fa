#include "catalogue/catalogue_window.h"

#include "bench/main_window.h"
#include "bench/message_bar.h"
#include "catalogue/catalogue_delegate.h"
#include "catalogue/catalogue_filters.h"
#include "catalogue/import_preview.h"
#include "catalogue/ingredient_details.h"
#include "catalogue/ingredient_form.h"
#include "document/places.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "ingredients/own_ingredient.h"

#include <QApplication>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <algorithm>

namespace firn::app {

namespace {

const QString geometryKey = QStringLiteral("catalogue/geometry");
constexpr QSize usualSize{1120, 680};
constexpr int charactersOfList = 46;
const QList<int> usualShares_px{370, 750};

}  // namespace

CatalogueWindow::CatalogueWindow(Pantry& pantry, Questions& questions)
    : m_pantry(pantry)
    , m_questions(questions)
    , m_model(new CatalogueModel(pantry, this))
    , m_messages(new MessageBar)
    , m_filters(new CatalogueFilters)
    , m_list(new QListView)
    , m_details(new IngredientDetails)
    , m_detailsArea(new QScrollArea)
    , m_form(new IngredientForm)
    , m_import(new ImportPreview(pantry))
    , m_pages(new QStackedWidget)
    , m_right(new QStackedWidget)
    , m_left(lookingPart())
{
    setObjectName(QStringLiteral("catalogue"));
    setWindowTitle(tr("Catalogue – Firn"));
    // The program ends with its last recipe.
    setAttribute(Qt::WA_QuitOnClose, false);

    m_right->addWidget(readingPart());
    m_right->addWidget(m_form);
    auto* browsing = new QSplitter;
    browsing->setChildrenCollapsible(false);
    browsing->addWidget(m_left);
    browsing->addWidget(m_right);
    browsing->setStretchFactor(1, 1);
    browsing->setSizes(usualShares_px);
    m_pages->addWidget(browsing);
    m_pages->addWidget(m_import);
    m_pages->setContentsMargins(groupSpace, closeSpace, groupSpace, closeSpace);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_pages, 1);
    layout->addWidget(m_messages);

    connect(m_filters, &CatalogueFilters::changed, this, &CatalogueWindow::look);
    connect(&pantry, &Pantry::changed, this, &CatalogueWindow::followPantry);
    connect(m_form, &IngredientForm::keepWanted, this, &CatalogueWindow::keepForm);
    connect(m_form, &IngredientForm::leaveWanted, this, &CatalogueWindow::leaveForm);
    connect(m_import, &ImportPreview::keepWanted, this, &CatalogueWindow::keepImported);
    connect(m_import, &ImportPreview::leaveWanted, this, [this] { showPage(m_pages->widget(0)); });
    followPantry();
    look();
    resize(usualSize);
    restoreGeometry(state().value(geometryKey).toByteArray());
    if (pantry.trouble())
        m_messages->say(translated(*pantry.trouble()));
}

QWidget* CatalogueWindow::lookingPart()
{
    m_list->setObjectName(QStringLiteral("found"));
    m_list->setAccessibleName(tr("Ingredients"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new CatalogueDelegate(m_list));
    m_list->setUniformItemSizes(true);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->installEventFilter(this);
    m_filters->search()->installEventFilter(this);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &CatalogueWindow::choose);
    connect(m_list, &QListView::doubleClicked, this, &CatalogueWindow::putInRecipe);

    auto* part = new QWidget;
    part->setMinimumWidth(fontMetrics().averageCharWidth() * charactersOfList);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(closeSpace);
    buttons->addWidget(addButton("new", tr("&New ingredient"), &CatalogueWindow::startNew));
    buttons->addWidget(addButton("import", tr("&Import…"), &CatalogueWindow::import));
    buttons->addStretch();
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, closeSpace, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_filters);
    layout->addWidget(m_list, 1);
    layout->addLayout(buttons);
    return part;
}

QWidget* CatalogueWindow::readingPart()
{
    auto* part = new QWidget;
    m_detailsArea->setWidget(m_details);
    m_detailsArea->setWidgetResizable(true);
    m_detailsArea->setFrameShape(QFrame::NoFrame);
    m_detailsArea->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_put = addButton("put", tr("&Put in recipe"), &CatalogueWindow::putInRecipe);
    m_edit = addButton("edit", tr("&Edit"), &CatalogueWindow::editOwn);
    m_copy = addButton("editCopy", tr("Edit a &copy"), &CatalogueWindow::editCopy);
    m_delete = addButton("delete", tr("&Delete"), &CatalogueWindow::remove);
    m_put->setToolTip(tr("Enter"));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(closeSpace);
    for (QPushButton* button : {m_put, m_edit, m_copy, m_delete})
        buttons->addWidget(button);
    buttons->addStretch();
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(closeSpace, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_detailsArea, 1);
    layout->addLayout(buttons);
    return part;
}

QPushButton* CatalogueWindow::addButton(const char* name, const QString& verb, void (CatalogueWindow::*act)())
{
    auto* button = new QPushButton(verb);
    button->setObjectName(QLatin1String(name));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

void CatalogueWindow::openFor(MainWindow& kitchen)
{
    if (m_kitchen != &kitchen) {
        m_kitchen = &kitchen;
        // When this signal comes the window is no MainWindow any more: its address is all that may be looked at.
        connect(&kitchen, &QObject::destroyed, this, [this, gone = &kitchen] {
            if (m_kitchen == gone)
                m_kitchen = nullptr;
            showChosen();
        });
    }
    showChosen();
    show();
    raise();
    activateWindow();
    if (m_left->isEnabled()) {
        m_filters->search()->setFocus();
        m_filters->search()->selectAll();
    }
}

void CatalogueWindow::look()
{
    m_model->setFilter(m_filters->filter());
    m_filters->showCount(m_model->rowCount(), int(m_pantry.catalogue().all().size()));
    // The best match is chosen at once, so that Enter takes it.
    m_list->setCurrentIndex(m_model->index(0));
    m_list->scrollToTop();
    showChosen();
}

void CatalogueWindow::followPantry()
{
    const auto groups = groupsOf(m_pantry.catalogue());
    m_filters->offerGroups(groups);
    m_form->offerGroups(groups);
    m_model->setFilter(m_filters->filter());
    m_filters->showCount(m_model->rowCount(), int(m_pantry.catalogue().all().size()));
    const QModelIndex before = m_model->indexOf(m_chosenId);
    m_list->setCurrentIndex(before.isValid() ? before : m_model->index(0));
    showChosen();
}

void CatalogueWindow::choose(const QModelIndex& index)
{
    m_chosenId = index.data(CatalogueModel::IdRole).toString().toStdString();
    showChosen();
    m_detailsArea->verticalScrollBar()->setValue(0);
}

void CatalogueWindow::chooseId(const std::string& id)
{
    if (!m_model->indexOf(id).isValid())
        m_filters->clear();
    const QModelIndex index = m_model->indexOf(id);
    m_list->setCurrentIndex(index);
    m_list->scrollTo(index);
}

const Ingredient* CatalogueWindow::chosen() const { return m_model->ingredientAt(m_list->currentIndex()); }

void CatalogueWindow::showChosen()
{
    const Ingredient* ingredient = chosen();
    const bool isOwn = ingredient && m_pantry.isOwn(ingredient->id);
    m_details->show(
        ingredient, isOwn, tr("Nothing in the catalogue fits. Take a filter away, or describe it yourself as a new ingredient."));
    m_put->setVisible(ingredient);
    m_put->setEnabled(m_kitchen);
    m_copy->setVisible(ingredient);
    m_edit->setVisible(isOwn);
    m_delete->setVisible(isOwn);
}

void CatalogueWindow::showPage(QWidget* page)
{
    m_pages->setCurrentWidget(page);
    if (page != m_import)
        m_filters->search()->setFocus();
}

void CatalogueWindow::closeEvent(QCloseEvent* event)
{
    state().setValue(geometryKey, saveGeometry());
    if (m_right->currentWidget() != m_form || !m_form->isChanged()) {
        closeForm();
        event->accept();
        // The last recipe may have been closed while an ingredient was still being typed.
        const QWidgetList windows = QApplication::topLevelWidgets();
        if (std::ranges::none_of(
                windows, [](const QWidget* each) { return qobject_cast<const MainWindow*>(each) && each->isVisible(); }))
            QApplication::quit();
        return;
    }
    event->ignore();
    const auto keepAndClose = [this] {
        if (keepForm())
            close();
    };
    const auto discardAndClose = [this] {
        closeForm();
        close();
    };
    m_messages->say(tr("The ingredient that you are typing is not kept yet."),
        {{tr("Keep and close"), keepAndClose}, {tr("Discard and close"), discardAndClose}});
}

void CatalogueWindow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Escape)
        QWidget::keyPressEvent(event);
    else if (m_pages->currentWidget() == m_import)
        showPage(m_pages->widget(0));
    else if (m_right->currentWidget() == m_form)
        leaveForm();
    else
        close();
}

/// Typing goes to the search and arrows to the list, whichever of them has the focus.
bool CatalogueWindow::eventFilter(QObject* object, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(object, event);
    auto* key = static_cast<QKeyEvent*>(event);
    const bool isOfList =
        key->key() == Qt::Key_Up || key->key() == Qt::Key_Down || key->key() == Qt::Key_PageUp || key->key() == Qt::Key_PageDown;
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        putInRecipe();
        return true;
    }
    if (object == m_filters->search() && isOfList) {
        QApplication::sendEvent(m_list, event);
        return true;
    }
    const bool isTyping = !key->text().isEmpty() && key->text().front().isPrint();
    if (object == m_list && (isTyping || key->key() == Qt::Key_Backspace)) {
        m_filters->search()->setFocus();
        QApplication::sendEvent(m_filters->search(), event);
        return true;
    }
    return QWidget::eventFilter(object, event);
}

}  // namespace firn::app
