#include "teach/step_view.h"

#include "formulas/formula_picture.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"
#include "teach/figure_link.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int numberColumn_px = 32;
constexpr int meaningStretch = 1;
constexpr int rowHeight_px = 24;

QWidget* picture(Formula formula, bool isFolded, const QFont& font)
{
    auto* formulaPicture = new FormulaPicture(std::move(formula), isFolded);
    formulaPicture->setFont(font);
    return formulaPicture;
}

}  // namespace

QWidget* plainLabel(const QString& text, bool isQuiet)
{
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    label->setWordWrap(true);
    label->setMinimumWidth(1);
    if (isQuiet) {
        QPalette quiet = label->palette();
        quiet.setColor(QPalette::WindowText, gaugeColours(quiet).quietInk);
        label->setPalette(quiet);
    }
    return label;
}

StepView::StepView(const WorkingStep& step, const Place& place, QWidget* parent)
    : QWidget(parent)
    , m_place(place)
{
    auto* columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(0);
    auto* number = plainLabel(QStringLiteral("%1.").arg(place.number), true);
    number->setFixedWidth(numberColumn_px);
    columns->addWidget(number, 0, Qt::AlignTop);
    m_lines = new QVBoxLayout;
    m_lines->setSpacing(closeSpace);
    columns->addLayout(m_lines, 1);

    const StepContent content = contentOf(step);
    m_lines->addWidget(picture(content.formula, place.isFolded, titleFont(font())));
    addSymbols(content.symbols);
    for (const Formula& values : content.values)
        m_lines->addWidget(picture(values, place.isFolded, titleFont(font())));
    if (!content.terms.empty())
        addTerms(content.terms);
    for (const QString& note : content.notes)
        m_lines->addWidget(plainLabel(note, true));
    if (!place.isSourceRepeated)
        addSource(content.source, step.source);
}

QWidget* StepView::meaning(const QString& text, const std::string& figure)
{
    if (figure.empty() || !m_place.hasLinks)
        return plainLabel(text);
    auto* link = new FigureLink(text, QString::fromStdString(figure));
    connect(link, &FigureLink::chosen, this, &StepView::figureChosen);
    return link;
}

void StepView::addRow(QGridLayout* table, QWidget* symbol, QWidget* value, QWidget* what)
{
    const int row = table->rowCount();
    table->addWidget(symbol, row, 0, Qt::AlignVCenter);
    table->addWidget(value, row, 1, Qt::AlignRight | Qt::AlignVCenter);
    table->addWidget(what, row, 2);
    table->setColumnStretch(2, meaningStretch);
    table->setRowMinimumHeight(row, rowHeight_px);
    table->setHorizontalSpacing(groupSpace);
    table->setVerticalSpacing(gridStep / 2);
}

void StepView::addSymbols(const std::vector<SymbolLine>& symbols)
{
    auto* table = new QGridLayout;
    for (const SymbolLine& line : symbols) {
        auto* value = new QLabel(line.value);
        value->setTextFormat(Qt::PlainText);
        addRow(table, picture(line.symbol, true, font()), value, meaning(line.meaning, line.figure));
    }
    m_lines->addLayout(table);
}

void StepView::addTerms(const std::vector<TermLine>& terms)
{
    const bool isLong = terms.size() > mostTermsFolded;
    const std::size_t shown = isLong && m_place.isFolded ? mostTermsFolded - 1 : terms.size();
    const bool hasSources = std::ranges::any_of(terms, [](const TermLine& term) { return !term.source.isEmpty(); });
    auto* table = new QGridLayout;
    for (std::size_t i = 0; i < shown; ++i) {
        const int row = table->rowCount();
        table->addWidget(meaning(terms[i].label, terms[i].figure), row, 0);
        table->addWidget(picture(terms[i].withValues, m_place.isFolded, font()), row, 1, Qt::AlignVCenter);
        if (!terms[i].source.isEmpty())
            table->addWidget(plainLabel(terms[i].source, true), row, 2);
    }
    table->setColumnStretch(0, 1);
    table->setColumnStretch(1, 2);
    table->setColumnStretch(2, hasSources ? 2 : 0);
    table->setHorizontalSpacing(groupSpace);
    table->setVerticalSpacing(gridStep);
    m_lines->addLayout(table);
    if (!isLong)
        return;
    auto* fold =
        new QPushButton(m_place.isFolded ? tr("And %n more", "terms of a sum", int(terms.size() - shown)) : tr("Fold the sum"));
    fold->setObjectName(QStringLiteral("fold%1").arg(m_place.number));
    fold->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(fold, &QPushButton::clicked, this, [this] { emit foldingChosen(!m_place.isFolded); });
    m_lines->addWidget(fold);
}

void StepView::addSource(const QString& text, Source source)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(groupSpace);
    row->addWidget(plainLabel(text, true), 1);
    m_lines->addLayout(row);
    if (source == Source::Definition)  // nobody has published it, so there is no more to tell
        return;
    auto* more = new FigureLink(tr("About this source"), {});
    more->setAccessibleDescription(tr("Shows its range and its error"));
    connect(more, &FigureLink::clicked, this, [this, source] { emit sourceChosen(source); });
    row->addWidget(more, 0, Qt::AlignTop);
}

}  // namespace firn::app
