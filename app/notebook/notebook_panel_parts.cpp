// The parts of the notebook's panel: list, what stands in its place while it is empty, and the row below.
#include "bench/ink_label.h"
#include "gauges/type_and_space.h"
#include "notebook/notebook_delegate.h"
#include "notebook/notebook_filters.h"
#include "notebook/notebook_model.h"
#include "notebook/notebook_panel.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace firn::app {

QWidget* NotebookPanel::listPage()
{
    m_list->setObjectName(QStringLiteral("notebookList"));
    m_list->setAccessibleName(tr("Recipes of the notebook"));
    m_list->setModel(m_model);
    auto* delegate = new NotebookDelegate(m_list);
    m_list->setItemDelegate(delegate);
    m_list->setUniformItemSizes(true);
    m_list->setMouseTracking(true);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->installEventFilter(this);
    m_filters->search()->installEventFilter(this);
    connect(m_list, &QListView::activated, this, &NotebookPanel::openChosen);
    connect(m_list, &QWidget::customContextMenuRequested, this, [this](const QPoint& where) {
        if (m_list->currentIndex().isValid())
            m_menu->popup(m_list->viewport()->mapToGlobal(where));
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &NotebookPanel::enableActions);
    connect(delegate, &NotebookDelegate::starClicked, this, [this](const QModelIndex& index) {
        m_list->setCurrentIndex(index);
        toggleFavourite();
    });
    return m_list;
}

QWidget* NotebookPanel::emptyPage()
{
    m_hint->setObjectName(QStringLiteral("notebookHint"));
    m_hintAct->setObjectName(QStringLiteral("notebookHintAct"));
    m_hintAct->setAutoDefault(false);
    connect(m_hintAct, &QPushButton::clicked, this, [this] {
        if (!m_folder.isThere())
            chooseFolder();
        else if (m_folder.cards().empty())
            import();
        else
            m_filters->clear();
    });
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, closeSpace, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_hint);
    layout->addWidget(m_hintAct, 0, Qt::AlignLeft);
    layout->addStretch();
    return page;
}

QWidget* NotebookPanel::actionRow()
{
    auto* tagLabel = new QLabel(tr("&Tags"));
    tagLabel->setBuddy(m_tags);
    m_tags->setObjectName(QStringLiteral("notebookTags"));
    m_tags->setAccessibleName(tr("Tags, parted by commas"));
    m_tags->setPlaceholderText(tr("spring menu, no dairy"));
    m_tags->setAcceptDrops(false);
    m_tags->installEventFilter(this);
    connect(m_tags, &QLineEdit::returnPressed, this, &NotebookPanel::keepTags);
    auto* tagLayout = new QHBoxLayout(m_tagRow);
    tagLayout->setContentsMargins(0, 0, 0, 0);
    tagLayout->addWidget(tagLabel);
    tagLayout->addWidget(m_tags, 1);
    m_tagRow->hide();

    auto* row = new QWidget;
    auto* open = new QPushButton(tr("Open"));
    open->setObjectName(QStringLiteral("notebookOpen"));
    open->setAutoDefault(false);
    open->setToolTip(tr("Enter"));
    open->setEnabled(false);
    connect(open, &QPushButton::clicked, this, &NotebookPanel::openChosen);
    connect(m_open, &QAction::enabledChanged, open, &QWidget::setEnabled);
    auto* more = new QToolButton;
    more->setObjectName(QStringLiteral("notebookMore"));
    more->setText(tr("More"));
    more->setAccessibleName(tr("More about the notebook"));
    more->setPopupMode(QToolButton::InstantPopup);
    more->setMenu(m_menu);
    m_place->setObjectName(QStringLiteral("notebookPlace"));
    m_place->setWordWrap(false);
    m_place->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(open);
    layout->addWidget(more);
    layout->addWidget(m_place, 1);
    return row;
}

}  // namespace firn::app
