#include "tasting/score_lines.h"

#include "bench/ink_label.h"
#include "bench/number_field.h"
#include "bench/typed_text.h"
#include "document/tasting_edits.h"
#include "document/typed_numbers.h"
#include "gauges/type_and_space.h"
#include "tasting/kept_number.h"
#include "tasting/scales.h"
#include "tasting/tasting_wording.h"

#include <QGridLayout>
#include <QStringList>

namespace firn::app {

namespace {

constexpr double target_px = 26.0;

NumberField* fieldOn(const TastingScale& scale)
{
    const auto read = [scale](std::string_view text) -> Result<double> {
        const auto number = numberFromText(text);
        if (number)
            if (auto fault = faultOfScore(scale, *number))
                return failure(std::move(*fault));
        return number;
    };
    auto* field = new NumberField(read, [](double number) { return scoreText(number); });
    field->setObjectName(QStringLiteral("score ") + QString::fromStdString(scale.name));
    field->setAccessibleName(QString::fromStdString(scale.name));
    field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("00000.00")));
    field->setMinimumHeight(qRound(besideText(field->font(), target_px)));
    return field;
}

InkLabel* label(InkLabel::Ink ink, const QString& text, QWidget* parent)
{
    auto* made = new InkLabel(ink, parent);
    made->setText(text);
    return made;
}

}  // namespace

ScoreLines::ScoreLines(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_layout(new QVBoxLayout(this))
    , m_hint(label(InkLabel::Quiet, tr("Choose what you give scores for under “Scales”."), this))
    , m_others(new InkLabel(InkLabel::Quiet, this))
{
    m_others->setObjectName(QStringLiteral("otherScores"));
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(gridStep);
    m_layout->addWidget(m_hint);
    m_layout->addWidget(m_others);
    build();
}

void ScoreLines::show(std::size_t tasting, bool isSomethingElse)
{
    m_tasting = tasting;
    if (m_scales != m_document.recipe().scales)
        build();
    for (KeptNumber* each : m_lines)
        each->show(isSomethingElse);
    showOthers();
}

void ScoreLines::build()
{
    m_scales = m_document.recipe().scales;
    m_lines.clear();
    m_fields.clear();
    auto* body = new QWidget(this);
    auto* grid = new QGridLayout(body);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(closeSpace);
    grid->setVerticalSpacing(gridStep);
    grid->setColumnStretch(2, 1);
    int row = 0;
    for (const TastingScale& scale : m_scales) {
        NumberField* field = fieldOn(scale);
        auto* line = new KeptNumber(
            m_document, field, [this, name = scale.name] { return scoreOn(m_document.recipe().tastings.at(m_tasting), name); },
            [this, name = scale.name](std::optional<double> number) { changeScore(m_document, m_tasting, name, number); });
        grid->addWidget(label(InkLabel::Plain, QString::fromStdString(scale.name), body), row, 0);
        grid->addWidget(field, row, 1);
        grid->addWidget(label(InkLabel::Quiet, endsText(scale), body), row, 2);
        grid->addWidget(line->fault(), row + 1, 1, 1, 2);
        m_lines.push_back(line);
        m_fields.push_back(field);
        row += 2;
    }
    if (m_body) {
        delete m_layout->replaceWidget(m_body, body);
        // One of the old fields may be the one that asked for this.
        m_body->hide();
        m_body->deleteLater();
    } else {
        m_layout->insertWidget(0, body);
    }
    m_body = body;
    m_body->show();
    m_hint->setVisible(m_scales.empty());
    orderTabs();
}

void ScoreLines::followInTabOrder(QWidget* before)
{
    m_before = before;
    orderTabs();
}

/// New fields would come last of the whole window.
void ScoreLines::orderTabs()
{
    QWidget* before = m_before;
    for (QWidget* field : m_fields) {
        if (before)
            setTabOrder(before, field);
        before = field;
    }
}

/// Scores of a file whose scale it does not have.
void ScoreLines::showOthers()
{
    QStringList others;
    for (const Score& score : m_document.recipe().tastings.at(m_tasting).scores)
        if (!scaleNamed(m_document.recipe(), score.scale))
            others.append(tr("%1: %2", "a scale and its score").arg(QString::fromStdString(score.scale), scoreText(score.value)));
    m_others->setText(others.isEmpty() ? QString() : tr("Without a scale: %1").arg(others.join(QStringLiteral(", "))));
}

}  // namespace firn::app
