#include "bench/recipe_sheet.h"

#include "bench/ingredient_table.h"
#include "bench/recipe_bar.h"
#include "bench/recipe_notices.h"
#include "document/typed_edit.h"
#include "gauges/figures_panel.h"
#include "gauges/palette.h"
#include "gauges/ribbon.h"
#include "gauges/type_and_space.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QTabBar>
#include <QVBoxLayout>

namespace firn::app {

RecipeSheet::RecipeSheet(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_head(new RecipeBar(document))
    , m_componentLine(new QWidget)
    , m_components(new QTabBar)
    , m_componentName(new QLineEdit)
    , m_table(new IngredientTable(document))
    , m_problem(new QLabel)
{
    m_components->setObjectName(QStringLiteral("components"));
    m_components->setAccessibleName(tr("Components"));
    m_components->setExpanding(false);
    m_components->setDrawBase(false);
    m_componentName->setObjectName(QStringLiteral("componentName"));
    m_componentName->setAccessibleName(tr("Name of the component"));
    m_componentName->setAcceptDrops(false);
    m_componentName->setPlaceholderText(tr("Name of the component"));
    connect(m_components, &QTabBar::currentChanged, this, &RecipeSheet::goToComponent);
    connect(m_componentName, &QLineEdit::editingFinished, this,
        [this] { renameComponent(m_document, m_table->rows().component(), m_componentName->text().toStdString()); });

    m_problem->setObjectName(QStringLiteral("problem"));
    m_problem->setTextFormat(Qt::PlainText);
    m_problem->setWordWrap(true);
    m_problem->hide();
    colourProblem();
    auto* total = new RibbonBar;
    auto* figures = new FiguresPanel;

    auto* componentLayout = new QHBoxLayout(m_componentLine);
    componentLayout->setContentsMargins(0, 0, 0, 0);
    componentLayout->addWidget(m_components);
    componentLayout->addStretch();
    componentLayout->addWidget(m_componentName);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(groupSpace, closeSpace, groupSpace, closeSpace);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_head);
    layout->addWidget(new RecipeNotices(document));
    layout->addWidget(m_componentLine);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_problem);
    layout->addWidget(total);
    layout->addWidget(figures);

    connect(&document, &Document::changed, total, [total](const Analysis& analysis) { total->show(analysis.ribbon); });
    connect(&document, &Document::changed, figures, &FiguresPanel::show);
    connect(&document, &Document::changed, this, &RecipeSheet::showComponents);
    connect(&m_table->rows(), &QAbstractItemModel::dataChanged, this, &RecipeSheet::showProblem);
    connect(&m_table->rows(), &QAbstractItemModel::modelReset, this, &RecipeSheet::showProblem);
    connect(&m_table->rows(), &QAbstractItemModel::modelReset, this, &RecipeSheet::showComponents);
    connect(m_head, &RecipeBar::problemChanged, this, &RecipeSheet::showProblem);
    connect(m_head, &RecipeBar::titleEntered, m_table, qOverload<>(&QWidget::setFocus));
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &RecipeSheet::showProblem);
    total->show(document.analysis().ribbon);
    figures->show(document.analysis());
    showComponents();
}

QString RecipeSheet::takeTyping()
{
    const QString refusal = m_table->takeTyping();
    finishTyping(m_document);
    return refusal.isEmpty() ? m_head->takeTyping() : refusal;
}

/// A text that cannot be read keeps its component in view: elsewhere it would be forgotten.
void RecipeSheet::goToComponent(int component)
{
    m_table->commitEditor();
    if (m_table->rows().firstDraft().isValid())
        showComponents();
    else
        m_table->rows().showComponent(std::size_t(component));
}

void RecipeSheet::addComponent()
{
    if (!m_table->takeTyping().isEmpty())
        return;
    firn::app::addComponent(m_document, tr("Component %1").arg(m_document.recipe().components.size() + 1).toStdString());
    m_components->setCurrentIndex(m_components->count() - 1);
    m_componentName->setFocus();
    m_componentName->selectAll();
}

void RecipeSheet::removeComponent() { firn::app::removeComponent(m_document, m_table->rows().component()); }

void RecipeSheet::showComponents()
{
    const auto& components = m_document.recipe().components;
    const auto current = m_table->rows().component();
    const QSignalBlocker blocker(m_components);
    while (m_components->count() > int(components.size()))
        m_components->removeTab(m_components->count() - 1);
    while (m_components->count() < int(components.size()))
        m_components->addTab({});
    for (std::size_t i = 0; i < components.size(); ++i) {
        // A tab takes & for a shortcut.
        const QString name = QString::fromStdString(components[i].name).replace(QLatin1Char('&'), QLatin1String("&&"));
        m_components->setTabText(int(i), name.isEmpty() ? tr("Component %1").arg(i + 1) : name);
    }
    m_components->setCurrentIndex(int(current));
    m_componentLine->setVisible(components.size() > 1);
    if (!m_componentName->hasFocus() && current < components.size())
        m_componentName->setText(QString::fromStdString(components[current].name));
}

/// The problem of the cell with the caret, or of the first cell that has one. A text that could not be read comes first, since
/// something else counts in its place.
void RecipeSheet::showProblem()
{
    const auto problemOf = [](const QModelIndex& index) { return index.data(IngredientModel::ProblemRole).toString(); };
    const IngredientModel& model = m_table->rows();
    const QModelIndex current = m_table->currentIndex();
    const bool isFirst = model.isDraft(current) || (!problemOf(current).isEmpty() && !model.firstDraft().isValid());
    const QString ofTable = problemOf(isFirst ? current : model.firstProblem());
    const QString problem = ofTable.isEmpty() ? m_head->problem() : ofTable;
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    if (!model.firstDraft().isValid() && m_head->problem().isEmpty())
        emit everythingRead();
}

void RecipeSheet::colourProblem()
{
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, gaugeColours(colours).caution);
    m_problem->setPalette(colours);
}

void RecipeSheet::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        colourProblem();
}

}  // namespace firn::app
