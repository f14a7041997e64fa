#include "bench/fields.h"

#include "bench/typed_text.h"
#include "document/typed_sizes.h"
#include "gauges/palette.h"
#include "gauges/temperature_unit.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "units/amount.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QPushButton>
#include <QScrollArea>

namespace firn::app {

namespace {

constexpr double smallestTarget_px = 24.0;  // what a wet finger still hits

QString textOf(std::string_view text) { return QString::fromUtf8(text.data(), qsizetype(text.size())); }

/// A whole text that is a number with this unit or without one. Masses and volumes may be in another, and are asked about where a mark may
/// part thousands.
Result<double> numberIn(const std::string& unit, std::string_view text)
{
    if (unit == factsOf(Unit::Gram).symbol)
        return massFromText(text).map([](Grams mass) { return mass.value; });
    if (unit == factsOf(Unit::Millilitre).symbol)
        return volumeFromText(text).map([](Millilitres volume) { return volume.value; });
    if (!unit.empty() && text.ends_with(unit))
        text.remove_suffix(unit.size());
    return numberFromText(text);
}

/// The shown unit in quiet ink, until another hint is given.
void hintAtUnit(NumberField& field)
{
    const auto symbol = [] { return textOf(symbolOf(shownTemperatureUnit())); };
    field.setPlaceholderText(symbol());
    QObject::connect(
        &ShownTemperatureUnit::instance(), &ShownTemperatureUnit::changed, &field, [&field, symbol, hint = symbol()]() mutable {
            if (field.placeholderText() != hint)
                return;
            hint = symbol();
            field.setPlaceholderText(hint);
        });
}

NumberField* fieldWith(
    const QString& name, const QString& spoken, const NumberField::Reader& read, const NumberField::Writer& write)
{
    auto* field = new NumberField(read, write);
    field->setObjectName(name);
    field->setAccessibleName(spoken);
    field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("0000.000 °Bx0")));
    field->setMinimumHeight(qRound(besideText(field->font(), smallestTarget_px)));
    return field;
}

}  // namespace

NumberField* fieldFor(const QString& name, const QString& spoken, const QString& unit, std::optional<double> usual, Bounds bounds)
{
    const auto read = [unit = unit.toStdString(), bounds](std::string_view text) -> Result<double> {
        const auto number = numberIn(unit, text);
        if (number && (*number < bounds.least || *number > bounds.most))
            return failure(phrase(
                "{0} is not from {1} to {2}. Correct it.", Figure{*number, 0}, Figure{bounds.least, 0}, Figure{bounds.most, 0}));
        return number;
    };
    NumberField* field = fieldWith(name, spoken, read, [unit](double number) { return typedText(number, unit); });
    if (usual)
        field->showNumber({}, *usual);
    else
        field->setPlaceholderText(unit);
    return field;
}

NumberField* degreesFieldFor(const QString& name, const QString& spoken, std::optional<double> usual_c, Celsius warmest)
{
    return degreesFieldFor(name, spoken, usual_c, [warmest](std::string_view text) {
        return temperatureFromText(text, shownTemperatureUnit(), warmest).map([](Celsius temperature) {
            return temperature.value;
        });
    });
}

NumberField* degreesFieldFor(
    const QString& name, const QString& spoken, std::optional<double> usual_c, const NumberField::Reader& read)
{
    NumberField* field = fieldWith(name, spoken, read, [](double temperature_c) { return chosenDegrees({temperature_c}); });
    if (usual_c)
        field->showNumber({}, *usual_c);
    else
        hintAtUnit(*field);
    return field;
}

QComboBox* choiceOf(const QString& name, const QString& spoken, const QStringList& items)
{
    auto* choice = new QComboBox;
    choice->setObjectName(name);
    choice->setAccessibleName(spoken);
    choice->addItems(items);
    choice->setMinimumHeight(qRound(besideText(choice->font(), smallestTarget_px)));
    return choice;
}

QPushButton* buttonOf(const QString& name, const QString& text, const QString& tip)
{
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setToolTip(tip);
    button->setMinimumHeight(qRound(besideText(button->font(), smallestTarget_px)));
    button->setAutoDefault(false);
    return button;
}

QScrollArea* scrolled(QWidget* content, Qt::ScrollBarPolicy sideways)
{
    auto* area = new QScrollArea;
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(sideways);
    return area;
}

InkLabel* plainLabel(const QString& name)
{
    auto* label = new InkLabel(InkLabel::Plain);
    label->setObjectName(name);
    return label;
}

QLabel* titleLabel(const QString& text)
{
    auto* label = new QLabel(text);
    label->setFont(titleFont(label->font()));
    return label;
}

void calm(QAbstractItemView& view)
{
    constexpr float tint = 0.18F;
    const GaugeColours colours = coloursInWindow(view.parentWidget() ? view.parentWidget()->palette() : view.palette());
    QColor chosen = colours.curve;
    chosen.setAlphaF(tint);
    QPalette palette = view.palette();
    palette.setColor(QPalette::Base, Qt::transparent);
    palette.setColor(QPalette::Highlight, chosen);
    palette.setColor(QPalette::HighlightedText, colours.ink);
    view.setPalette(palette);
    view.setFrameShape(QFrame::NoFrame);
    view.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

}  // namespace firn::app
