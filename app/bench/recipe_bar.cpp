#include "bench/recipe_bar.h"

#include "bench/live_field.h"
#include "bench/number_field.h"
#include "bench/typed_text.h"
#include "bench/undo_shortcut.h"
#include "document/typed_numbers.h"
#include "gauges/temperature_unit.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

namespace firn::app {

namespace {

Result<double> degreesFromText(std::string_view text)
{
    return temperatureFromText(text, shownTemperatureUnit()).map([](Celsius temperature) { return temperature.value; });
}

QString degreesToText(double temperature_c) { return chosenDegrees({temperature_c}); }

QString overrunToText(double overrun_percent) { return typedText(overrun_percent, QStringLiteral("%")); }

std::optional<Celsius> toCelsius(std::optional<double> temperature_c)
{
    return temperature_c ? std::optional(Celsius{*temperature_c}) : std::nullopt;
}

}  // namespace

QString nameOf(Process process)
{
    switch (process) {
    case Process::Still:
        return RecipeBar::tr("without stirring");
    case Process::Scraped:
        return RecipeBar::tr("scraping");
    case Process::Churned:
        return RecipeBar::tr("churning");
    case Process::Folded:
        return RecipeBar::tr("folding");
    case Process::Unfrozen:
        return RecipeBar::tr("not frozen");
    }
    return {};
}

RecipeBar::RecipeBar(Document& document, QWidget* parent)
    : QWidget(parent)
    , m_document(document)
    , m_title(new QLineEdit)
    , m_process(new QComboBox)
    , m_overrun(new NumberField(overrunFromText, overrunToText))
    , m_serving(new NumberField(degreesFromText, degreesToText))
    , m_freezer(new NumberField(degreesFromText, degreesToText))
{
    m_title->setObjectName(QStringLiteral("title"));
    m_title->setAccessibleName(tr("Title"));
    m_title->setPlaceholderText(tr("Title of the recipe"));
    m_title->setFrame(false);
    m_title->setAcceptDrops(false);
    m_title->installEventFilter(this);
    leaveUndoToWindow(*m_title);
    connect(m_title, &QLineEdit::textEdited, this,
        [this](const QString& text) { changeTitle(m_document, text.toStdString(), m_titleGesture); });
    connect(m_title, &QLineEdit::returnPressed, this, &RecipeBar::titleEntered);

    for (const Process process : allProcesses)
        m_process->addItem(nameOf(process));
    connect(m_process, &QComboBox::currentIndexChanged, this,
        [this](int index) { changeProcess(m_document, m_document.component(), allProcesses.at(std::size_t(index))); });
    typeInto(document, *m_overrun,
        [&document](std::optional<double> number) { changeOverrun(document, document.component(), number.value_or(0.0)); });
    typeInto(
        document, *m_serving, [&document](std::optional<double> number) { changeServingTemperature(document, toCelsius(number)); });
    typeInto(
        document, *m_freezer, [&document](std::optional<double> number) { changeFreezerTemperature(document, toCelsius(number)); });

    auto* line = new QHBoxLayout;
    line->setSpacing(closeSpace);
    fillLine(*line);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_title);
    layout->addLayout(line);

    for (const NumberField* field : {m_overrun, m_serving, m_freezer})
        connect(field, &NumberField::problemChanged, this, &RecipeBar::problemChanged);
    const auto tellWhatIsUsual = [this] {
        if (m_serving->problem().isEmpty())
            m_serving->setToolTip(m_serving->number()
                                      ? QString()
                                      : tr("Usual for this freezing method (unverified). Type a temperature of your own."));
    };
    connect(m_serving, &NumberField::problemChanged, this, tellWhatIsUsual);
    fitToFont();
    connect(&document, &Document::changed, this, &RecipeBar::show);
    connect(&document, &Document::changed, this, tellWhatIsUsual);
    show(document.analysis());
    tellWhatIsUsual();
}

void RecipeBar::fillLine(QHBoxLayout& line)
{
    const auto add = [&line](const QString& name, QWidget* field, const QString& objectName) {
        auto* label = new QLabel(name);
        label->setBuddy(field);
        field->setObjectName(objectName);
        leaveUndoToWindow(*field);
        line.addWidget(label);
        line.addWidget(field);
        line.addSpacing(groupSpace - closeSpace);
    };
    add(tr("Freezing &method"), m_process, QStringLiteral("process"));
    add(tr("&Overrun"), m_overrun, QStringLiteral("overrun"));
    add(tr("&Served at"), m_serving, QStringLiteral("serving"));
    add(tr("Free&zer at"), m_freezer, QStringLiteral("freezer"));
    line.addStretch();
}

void RecipeBar::show(const Analysis& analysis)
{
    const Recipe& recipe = m_document.recipe();
    const QString title = QString::fromStdString(recipe.title);
    if (m_title->text() != title)
        m_title->setText(title);
    const QSignalBlocker blocker(m_process);
    m_process->setCurrentIndex(int(analysis.texture.process));
    m_overrun->showNumber(overrunOf(recipe, m_document.component()), 0.0);
    m_serving->showNumber(recipe.serveAt_c, analysis.conditions.serveAt.value);
    m_freezer->showNumber(recipe.freezerAt_c, analysis.conditions.freezerAt.value);
}

QString RecipeBar::problem() const
{
    for (const NumberField* field : {m_overrun, m_serving, m_freezer})
        if (!field->problem().isEmpty())
            return field->problem();
    return {};
}

QString RecipeBar::takeTyping()
{
    for (NumberField* field : {m_overrun, m_serving, m_freezer}) {
        if (field->problem().isEmpty())
            continue;
        field->setFocus();
        return field->problem();
    }
    return {};
}

bool RecipeBar::eventFilter(QObject* object, QEvent* event)
{
    if (object == m_title && event->type() == QEvent::FocusIn)
        m_titleGesture = Gesture::begin();
    return QWidget::eventFilter(object, event);
}

void RecipeBar::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitToFont();
}

void RecipeBar::fitToFont()
{
    m_title->setFont(titleFont(font()));
    for (NumberField* field : {m_overrun, m_serving, m_freezer})
        field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("−00.00 °C")) + groupSpace);
}

}  // namespace firn::app
