#include "versions/versions_panel.h"

#include "bench/fields.h"
#include "bench/ink_label.h"
#include "bench/row_clipboard.h"
#include "bench/undo_shortcut.h"
#include "document/places.h"
#include "document/version_edits.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "recipe/blind_sheet.h"
#include "versions/version_delegate.h"
#include "versions/version_model.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QTreeView>
#include <algorithm>

namespace firn::app {

namespace {

/// By the path of a recipe: what was typed as name and note of a version and not kept, over a crash too.
const QString typedKey = QStringLiteral("versions/typed");

constexpr double target_px = 26.0;
constexpr int fewestToCompare = 2;
constexpr int mostToCompare = 4;

/// Those of the component in view where the version has one of its name, else of the whole version.
std::vector<Row> rowsToCopy(const Recipe& version, const std::string& component)
{
    std::vector<Row> rows;
    const auto same = std::ranges::find(version.components, component, &Component::name);
    if (same != version.components.end())
        return same->rows;
    for (const Component& each : version.components)
        rows.insert(rows.end(), each.rows.begin(), each.rows.end());
    return rows;
}

/// Without a letter for Alt: that would work from behind another panel too, where nobody sees what it does.
QPushButton* button(const QString& name, const QString& text, const QString& tip)
{
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    made->setToolTip(tip);
    return made;
}

QLineEdit* line(const QString& name, const QString& hint)
{
    auto* made = new QLineEdit;
    made->setObjectName(name);
    made->setAccessibleName(hint);
    made->setPlaceholderText(hint);
    made->setAcceptDrops(false);
    leaveUndoToWindow(*made);
    return made;
}

}  // namespace

VersionsPanel::VersionsPanel(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_model(new VersionModel(document, this))
    , m_name(line(QStringLiteral("versionName"), tr("Name of this version")))
    , m_note(line(QStringLiteral("versionNote"), tr("What is new in it, or why you keep it")))
    , m_keep(button(QStringLiteral("keepVersion"), tr("Keep this version"), tr("Keeps the recipe as it is now, to come back to")))
    , m_hint(new InkLabel(InkLabel::Quiet, this))
    , m_list(new QTreeView)
    , m_goBack(button(QStringLiteral("goBack"), tr("Go back to it"), tr("Puts it on the bench; what is there is kept first")))
    , m_copy(button(QStringLiteral("copyVersion"), tr("Copy its rows"), tr("To paste into the recipe, or anywhere else")))
    , m_compare(button(QStringLiteral("compareVersions"), tr("Compare"), tr("Holds two to four chosen versions beside each other")))
    , m_delete(button(QStringLiteral("deleteVersion"), tr("Delete"), tr("With its readings and tastings; undo brings it back")))
{
    setObjectName(QStringLiteral("versionsPanel"));
    buildList();
    m_hint->setText(tr("Keep this version before you try something else: you can come back to it at any time."));
    auto* keeping = new QHBoxLayout;
    keeping->setSpacing(closeSpace);
    keeping->addWidget(m_name, 1);
    keeping->addWidget(m_note, 2);
    keeping->addWidget(m_keep);
    auto* history = new QHBoxLayout;
    history->setSpacing(closeSpace);
    history->addWidget(m_list, 1);
    history->addWidget(buttons(), 0, Qt::AlignTop);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(gridStep);
    layout->addLayout(keeping);
    layout->addWidget(m_hint);
    layout->addLayout(history, 1);
    for (QLineEdit* field : {m_name, m_note}) {
        connect(field, &QLineEdit::returnPressed, this, &VersionsPanel::keep);
        connect(field, &QLineEdit::textEdited, this, &VersionsPanel::rememberTyping);
    }
    connect(m_keep, &QPushButton::clicked, this, &VersionsPanel::keep);
    connect(&document, &Document::changed, this, &VersionsPanel::follow);
    connect(&document, &Document::replaced, this, &VersionsPanel::recallTyping);
    fitToFont();
    calm(*m_list);
    follow();
}

void VersionsPanel::buildList()
{
    m_list->setObjectName(QStringLiteral("versionList"));
    m_list->setAccessibleName(tr("Versions"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new VersionDelegate(m_list));
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_list->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed);
    m_list->setTabKeyNavigation(false);
    m_list->header()->setSectionsMovable(false);
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(VersionModel::NoteColumn, QHeaderView::Stretch);
    m_list->setMinimumHeight(3 * lineHeight(font()));
    connect(m_list->selectionModel(), &QItemSelectionModel::selectionChanged, this, &VersionsPanel::enable);
    const auto onKey = [this](Qt::Key key, auto act) {
        connect(new QShortcut(key, m_list, nullptr, nullptr, Qt::WidgetShortcut), &QShortcut::activated, this, act);
    };
    onKey(Qt::Key_Delete, &VersionsPanel::remove);
    onKey(Qt::Key_Return, &VersionsPanel::goBack);
}

QWidget* VersionsPanel::buttons()
{
    auto* column = new QWidget;
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(gridStep);
    for (QPushButton* each : {m_goBack, m_copy, m_compare, m_delete})
        layout->addWidget(each);
    connect(m_goBack, &QPushButton::clicked, this, &VersionsPanel::goBack);
    connect(m_copy, &QPushButton::clicked, this, &VersionsPanel::copyRows);
    connect(m_delete, &QPushButton::clicked, this, &VersionsPanel::remove);
    connect(m_compare, &QPushButton::clicked, this, [this] { emit compareWanted(chosen()); });
    return column;
}

void VersionsPanel::askForName()
{
    m_name->setFocus(Qt::ShortcutFocusReason);
    m_name->selectAll();
}

QStringList VersionsPanel::chosen() const
{
    QModelIndexList lines = m_list->selectionModel()->selectedRows();
    std::ranges::sort(lines, {}, &QModelIndex::row);
    QStringList ids;
    for (const QModelIndex& index : std::as_const(lines))
        ids.append(QString::fromStdString(m_model->versionAt(index.row()).id));
    return ids;
}

void VersionsPanel::keep()
{
    const Recipe& recipe = m_document.recipe();
    const std::string& base = recipe.basedOn;
    if (isAsKept(recipe)) {
        emit said(tr("Nothing has changed since “%1”. Press F2 in the list to rename it.").arg(nameOfVersion(recipe, base)));
        return;
    }
    keepVersion(m_document, m_name->text().trimmed().toStdString(), m_note->text().trimmed().toStdString());
    m_name->clear();
    m_note->clear();
    rememberTyping();
    emit said(tr("Kept as “%1”.").arg(nameOf(recipe.versions.back())));
}

/// A recipe without a file has no name to remember it by.
void VersionsPanel::rememberTyping()
{
    if (m_document.path().isEmpty())
        return;
    QSettings remembered = state();
    QVariantMap typed = remembered.value(typedKey).toMap();
    const QStringList words{m_name->text(), m_note->text()};
    if (words.join(QString()).isEmpty())
        typed.remove(m_document.path());
    else
        typed.insert(m_document.path(), words);
    remembered.setValue(typedKey, typed);
}

void VersionsPanel::recallTyping()
{
    const QStringList words = state().value(typedKey).toMap().value(m_document.path()).toStringList();
    m_name->setText(words.value(0));
    m_note->setText(words.value(1));
}

void VersionsPanel::goBack()
{
    const QStringList ids = chosen();
    if (ids.size() != 1)
        return;
    const std::string id = ids.front().toStdString();
    const bool hasKept = goBackTo(m_document, id);
    const QString name = nameOfVersion(m_document.recipe(), id);
    emit said(hasKept ? tr("“%1” is on the bench. What was there before is kept as “%2”; undo puts it back.")
                            .arg(name, nameOf(m_document.recipe().versions.back()))
                      : tr("“%1” is on the bench.").arg(name));
}

void VersionsPanel::copyRows()
{
    const QStringList ids = chosen();
    const Version* version = ids.size() == 1 ? versionNamed(m_document.recipe(), ids.front().toStdString()) : nullptr;
    if (!version)
        return;
    const std::vector<Row> rows = rowsToCopy(version->recipe, m_document.recipe().components.at(m_document.component()).name);
    putOnClipboard(rows);
    const QString sentence =
        rows.size() == 1 ? tr("One row of “%1” is on the clipboard: paste it into the recipe.")
                         : tr("%n rows of “%1” are on the clipboard: paste them into the recipe.", nullptr, int(rows.size()));
    emit said(sentence.arg(nameOf(*version)));
}

void VersionsPanel::remove()
{
    const QStringList ids = chosen();
    if (ids.size() != 1)
        return;
    const std::string id = ids.front().toStdString();
    const QString name = nameOfVersion(m_document.recipe(), id);
    if (isBehindCode(m_document.recipe(), id)) {
        emit said(tr("“%1” is on a blind sheet that is not revealed yet. Reveal it before you delete the version.").arg(name));
        return;
    }
    removeVersion(m_document, id);
    emit said(tr("“%1” is deleted with its readings and tastings. Undo brings them back.").arg(name));
}

void VersionsPanel::follow()
{
    const bool hasVersions = m_model->rowCount() > 0;
    for (QWidget* widget : QList<QWidget*>{m_list, m_goBack, m_copy, m_compare, m_delete})
        widget->setVisible(hasVersions);
    m_hint->setVisible(!hasVersions);
    // What was just put on the bench or kept is what a person goes on with.
    if (const std::string& onBench = m_document.recipe().basedOn; m_wanted != onBench || chosen().isEmpty()) {
        m_wanted = onBench;
        if (const int row = m_model->rowOf(onBench); row >= 0)
            m_list->setCurrentIndex(m_model->index(row, 0));
    }
    enable();
}

void VersionsPanel::enable()
{
    const qsizetype count = chosen().size();
    const bool isBench = count == 1 && chosen().front().toStdString() == versionOfBench(m_document.recipe());
    m_goBack->setEnabled(count == 1 && !isBench);
    m_copy->setEnabled(count == 1);
    m_delete->setEnabled(count == 1);
    m_compare->setEnabled(count >= fewestToCompare && count <= mostToCompare);
}

void VersionsPanel::fitToFont()
{
    const int height = qRound(besideText(font(), target_px));
    for (QWidget* widget : QList<QWidget*>{m_name, m_note, m_keep, m_goBack, m_copy, m_compare, m_delete})
        widget->setMinimumHeight(height);
    const auto fit = [this](int column, const QString& text) {
        m_list->header()->resizeSection(column, fontMetrics().horizontalAdvance(text) + 2 * closeSpace);
    };
    fit(VersionModel::NameColumn, tr("A name as long as most"));
    fit(VersionModel::BenchColumn, tr("changed since"));
    fit(VersionModel::DateColumn, dateText("2026-09-30T22:44"));
    for (const int column : {VersionModel::SugarsColumn, VersionModel::FreezingColumn})
        fit(column, m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString() + QStringLiteral("00"));
}

void VersionsPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitToFont();
    else if (event->type() == QEvent::PaletteChange)
        calm(*m_list);
}

}  // namespace firn::app
