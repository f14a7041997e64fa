#include "syrups/outcome_view.h"

#include "bench/ink_label.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "syrups/pearson_picture.h"
#include "teach/figure_link.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

namespace firn::app {

namespace {

QLabel* plainLabel(const QString& objectName)
{
    auto* label = new QLabel;
    label->setObjectName(objectName);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

/// "615 g sugar, 615 g water": a syrup has nothing else.
QString textOf(const std::vector<Row>& rows)
{
    QStringList texts;
    for (const Row& row : rows) {
        const QString grams = gramsText({row.amount.value});
        texts << (row.ingredient == "sucrose" ? OutcomeView::tr("%1 sugar").arg(grams) : OutcomeView::tr("%1 water").arg(grams));
    }
    return texts.join(OutcomeView::tr(", ", "between ingredients"));
}

}  // namespace

OutcomeView::OutcomeView(bool hasSquare, QWidget* parent)
    : QWidget(parent)
    , m_square(hasSquare ? new PearsonPicture : nullptr)
    , m_answer(plainLabel(QStringLiteral("answer")))
    , m_why(new FigureLink(tr("Explain this number"), QStringLiteral("syrup.answer")))
    , m_grid(new QGridLayout)
    , m_lines(new MarkedLines)
    , m_put(new QPushButton(tr("&Put in recipe")))
    , m_toPut(new InkLabel(InkLabel::Quiet))
{
    m_answer->setWordWrap(true);
    m_lines->setObjectName(QStringLiteral("lines"));
    m_lines->setAccessibleName(tr("Cautions and reasons"));
    m_put->setObjectName(QStringLiteral("putInRecipe"));
    m_put->setAutoDefault(false);
    m_toPut->setObjectName(QStringLiteral("toPut"));
    connect(m_why, &FigureLink::chosen, this, [this](const QString& figure) { explain(figure, m_working); });
    connect(m_put, &QPushButton::clicked, this, &OutcomeView::putInRecipe);

    m_grid->setHorizontalSpacing(groupSpace);
    m_grid->setVerticalSpacing(gridStep);
    m_grid->setColumnStretch(2, 1);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(closeSpace);
    foot->addWidget(m_put);
    foot->addWidget(m_toPut, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    if (m_square) {
        layout->addWidget(m_square);
        layout->addSpacing(groupSpace - closeSpace);
    }
    layout->addWidget(m_answer);
    layout->addWidget(m_why);
    layout->addLayout(m_grid);
    layout->addWidget(m_lines, 1);
    layout->addLayout(foot);
}

void OutcomeView::show(const Outcome& outcome)
{
    if (m_square)
        m_square->show(outcome.square);
    m_answer->setText(outcome.answer);
    m_working = outcome.working;
    m_why->setVisible(!m_working.steps().empty());
    showFigures(outcome.figures);
    m_lines->setLines(outcome.lines);
    m_rows = outcome.rows;
    m_put->setVisible(!m_rows.empty());
    m_toPut->setText(textOf(m_rows));
}

void OutcomeView::showFigures(const std::vector<WorkedFigure>& figures)
{
    while (m_figures.size() < figures.size())
        addFigureLine();
    for (std::size_t i = 0; i < m_figures.size(); ++i) {
        const WorkedFigure figure = i < figures.size() ? figures[i] : WorkedFigure{};
        FigureLine& line = m_figures[i];
        line.label->setText(figure.label);
        line.value->setText(figure.value);
        line.note->setText(figure.note);
        line.working = figure.working;
        line.why->setVisible(!figure.working.steps().empty());
        line.why->setAccessibleName(tr("%1: %2").arg(figure.label, figure.value));
    }
}

void OutcomeView::addFigureLine()
{
    const std::size_t i = m_figures.size();
    const int row = int(i);
    m_figures.push_back({plainLabel(QStringLiteral("figureLabel%1").arg(row)), plainLabel(QStringLiteral("figure%1").arg(row)),
        new FigureButton({}, QStringLiteral("syrup.figures[%1]").arg(row)), new InkLabel(InkLabel::Quiet), Working()});
    const FigureLine& line = m_figures.back();
    line.value->setFont(titleFont(font()));
    connect(line.why, &FigureButton::chosen, this, [this, i](const QString& figure) { explain(figure, m_figures[i].working); });
    m_grid->addWidget(line.label, row, 0);
    m_grid->addWidget(line.value, row, 1, Qt::AlignRight | Qt::AlignVCenter);
    m_grid->addWidget(line.why, row, 1);
    m_grid->addWidget(line.note, row, 2);
}

void OutcomeView::fitToFont(int height)
{
    m_answer->setFont(figureFont(font()));
    m_put->setMinimumHeight(height);
    for (const FigureLine& line : m_figures)
        line.value->setFont(titleFont(font()));
}

void OutcomeView::explain(const QString& figure, const Working& working)
{
    Workings workings;
    workings.of(figure.toStdString()).add(working.steps());
    emit derivationWanted(figure, workings);
}

void OutcomeView::putInRecipe()
{
    emit rowsWanted(m_rows);
    m_toPut->setText(tr("%1: in the recipe now.").arg(textOf(m_rows)));
}

}  // namespace firn::app
