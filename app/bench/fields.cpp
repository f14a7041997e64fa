#include "bench/fields.h"

#include "bench/typed_text.h"
#include "document/typed_numbers.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QPushButton>
#include <QScrollArea>

namespace firn::app {

namespace {

constexpr double smallestTarget_px = 24.0;  // what a wet finger still hits

}  // namespace

NumberField* fieldFor(const QString& name, const QString& spoken, const QString& unit, std::optional<double> usual, Bounds bounds)
{
    const auto read = [unit = unit.toStdString(), bounds](std::string_view text) -> Result<double> {
        if (!unit.empty() && text.ends_with(unit))
            text.remove_suffix(unit.size());
        const auto number = numberFromText(text);
        if (number && (*number < bounds.least || *number > bounds.most))
            return failure(phrase(
                "{0} is not from {1} to {2}: correct it.", Figure{*number, 0}, Figure{bounds.least, 0}, Figure{bounds.most, 0}));
        return number;
    };
    auto* field = new NumberField(read, [unit](double number) { return typedText(number, unit); });
    field->setObjectName(name);
    field->setAccessibleName(spoken);
    field->setFixedWidth(field->fontMetrics().horizontalAdvance(QStringLiteral("0000.000 °Bx0")));
    field->setMinimumHeight(qRound(besideText(field->font(), smallestTarget_px)));
    if (usual)
        field->showNumber({}, *usual);
    else
        field->setPlaceholderText(unit);
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
