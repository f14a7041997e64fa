#include "bench/steps_panel.h"

#include "bench/step_row.h"
#include "document/step_edits.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"

#include <QApplication>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

QLabel* quietLabel(const QString& text, const QPalette& palette)
{
    auto* label = new QLabel(text);
    QPalette colours = palette;
    colours.setColor(QPalette::WindowText, coloursInWindow(palette).quietInk);
    label->setPalette(colours);
    return label;
}

}  // namespace

StepsPanel::StepsPanel(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_body(new QWidget)
    , m_add(new QPushButton(tr("Add a step")))
    , m_weighedOut(new QPushButton(tr("Show the mix as weighed out")))
{
    setObjectName(QStringLiteral("steps"));
    setAccessibleName(tr("Steps"));
    m_add->setObjectName(QStringLiteral("addStep"));
    m_add->setMinimumHeight(StepRow::smallestTarget_px);
    connect(m_add, &QPushButton::clicked, this, &StepsPanel::addStep);
    m_weighedOut->setObjectName(QStringLiteral("weighedOut"));
    m_weighedOut->setMinimumHeight(StepRow::smallestTarget_px);
    m_weighedOut->setCheckable(true);
    connect(m_weighedOut, &QPushButton::clicked, this,
        [this](bool isOn) { m_document.showStepsDone(isOn ? std::optional<std::size_t>(0) : std::nullopt); });

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_body);
    auto* below = new QHBoxLayout;
    below->addWidget(m_add);
    below->addWidget(m_weighedOut);
    below->addStretch();
    layout->addLayout(below);
    layout->addStretch();

    // A field that is being typed into keeps its own Delete.
    const auto onKey = [this](const QKeySequence& keys, auto action) {
        connect(new QShortcut(keys, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut), &QShortcut::activated, this, action);
    };
    onKey(Qt::Key_Delete, [this] { deleteFocused(); });
    onKey(Qt::CTRL | Qt::Key_Up, [this] { moveFocused(-1); });
    onKey(Qt::CTRL | Qt::Key_Down, [this] { moveFocused(1); });

    connect(&document, &Document::replaced, this, [this] { showComponent(0); });
    connect(&document, &Document::changed, this, &StepsPanel::follow);
    buildRows();
}

/// A field that loses the focus may still have something to say: the panel hides while it is whole, and can hear it.
StepsPanel::~StepsPanel() { hide(); }

void StepsPanel::showComponent(std::size_t component)
{
    m_component = component;
    buildRows();
}

void StepsPanel::follow()
{
    m_weighedOut->setChecked(m_document.stepsDone() == std::size_t{0});
    const std::size_t components = m_document.recipe().components.size();
    if (m_component >= components)
        showComponent(components - 1);
    else if (m_rows.size() != steps().size())
        buildRows();
    else
        for (StepRow* row : m_rows)
            row->show();
}

void StepsPanel::buildRows()
{
    const auto before = focused();
    auto* body = new QWidget(this);
    auto* grid = new QGridLayout(body);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(closeSpace);
    grid->setVerticalSpacing(gridStep);
    grid->setColumnStretch(StepRow::LossColumn, 1);
    m_rows.clear();
    m_weighedOut->setVisible(!steps().empty());
    if (steps().empty()) {
        grid->addWidget(quietLabel(tr("No steps: what is weighed out is what is frozen."), palette()), 0, 0);
    } else {
        const QStringList titles{tr("Step"), tr("Temperature"), tr("min"), tr("Takes away"), tr("Mix after"), tr("Taken away")};
        for (int column = 0; column < titles.size(); ++column) {
            const bool isText = column == StepRow::KindColumn || column == StepRow::LossColumn;
            grid->addWidget(quietLabel(titles[column], palette()), 0, column, isText ? Qt::AlignLeft : Qt::AlignRight);
        }
    }
    for (std::size_t i = 0; i < steps().size(); ++i) {
        auto* row = new StepRow(m_document, m_component, i, *grid);
        connect(row, &StepRow::deletionAsked, this, [this, i] { deleteStep(i); });
        m_rows.push_back(row);
    }
    delete layout()->replaceWidget(m_body, body);
    // One of the old fields may be the one that asked for this.
    m_body->hide();
    m_body->deleteLater();
    m_body = body;
    // A layout shows what it is given later, and a hidden field cannot take the focus.
    m_body->show();
    orderFocus();
    if (before)
        focusOn(before->row, before->field);
}

/// New fields would come last in the window.
void StepsPanel::orderFocus()
{
    QWidget* last = m_add;
    for (const StepRow* row : m_rows)
        for (QWidget* field : row->fields()) {
            setTabOrder(last, field);
            last = field;
        }
    if (last != m_add)
        setTabOrder(last, m_add);
}

std::optional<StepsPanel::Place> StepsPanel::focused() const
{
    for (std::size_t row = 0; row < m_rows.size(); ++row)
        if (const auto field = m_rows[row]->fields().indexOf(QApplication::focusWidget()); field >= 0)
            return Place{row, field};
    return std::nullopt;
}

/// Where there is no such row any more, the last one, and at the end the button.
void StepsPanel::focusOn(std::size_t row, qsizetype field)
{
    if (m_rows.empty()) {
        m_add->setFocus();
        return;
    }
    const QList<QWidget*> fields = m_rows[std::min(row, m_rows.size() - 1)]->fields();
    (fields[field]->isVisibleTo(this) ? fields[field] : fields.front())->setFocus();
}

void StepsPanel::addStep()
{
    firn::app::addStep(m_document, m_component, StepKind::Strain);
    focusOn(m_rows.size() - 1, 0);
}

void StepsPanel::deleteStep(std::size_t index)
{
    removeSteps(m_document, m_component, {index});
    focusOn(index, 0);
}

void StepsPanel::deleteFocused()
{
    if (const auto place = focused())
        deleteStep(place->row);
}

void StepsPanel::moveFocused(int by)
{
    const auto place = focused();
    const std::size_t to = place ? place->row + std::size_t(by) : m_rows.size();
    if (to >= m_rows.size())
        return;
    moveStep(m_document, m_component, place->row, to);
    // What was being typed belongs to the step that has gone elsewhere.
    buildRows();
    focusOn(to, place->field);
}

void StepsPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        buildRows();
}

}  // namespace firn::app
