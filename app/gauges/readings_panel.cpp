#include "gauges/readings_panel.h"

#include "gauges/egg_picture.h"
#include "gauges/hydrometer_picture.h"
#include "gauges/marked_lines.h"
#include "gauges/refractometer_picture.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <QSpinBox>
#include <array>

namespace firn::app {

namespace {

// Left edges of the three columns, and the right edge of the last, as shares of the width; the hydrometer's caption is the longest.
constexpr std::array<double, 4> columnEdges{0.0, 0.31, 0.66, 1.0};
constexpr double tallestPicture = 0.42;  // against the width of the panel; taller ones would only stretch the jar
constexpr double lowestPicture = 5.5;    // lines of text; the first sentence on what disturbs the readings may take the rest
constexpr int coldestReading_c = 0;
constexpr int hottestReading_c = 80;

}  // namespace

ReadingsPanel::ReadingsPanel(QWidget* parent)
    : Gauge(tr("Readings"), parent)
    , m_readAt(new QSpinBox(this))
    , m_disturbances(new MarkedLines(this))
{
    m_readAt->setRange(coldestReading_c, hottestReading_c);
    m_readAt->setPrefix(tr("at ", "a temperature follows"));
    m_readAt->setSuffix(tr(" °C"));
    m_readAt->setAccessibleName(tr("Temperature of the reading"));
    m_readAt->setToolTip(tr("Temperature of the mix when it is read"));
    m_disturbances->setAccessibleName(tr("What disturbs the readings"));
    connect(m_readAt, &QSpinBox::valueChanged, this, [this](int temperature_c) { emit readAtChosen(temperature_c); });
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    show(Analysis{});
}

QSize ReadingsPanel::sizeHint() const { return {fontMetrics().averageCharWidth() * 60, lineHeight(font()) * 13}; }

QSize ReadingsPanel::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 50, lineHeight(font()) * 9}; }

void ReadingsPanel::show(const Analysis& analysis)
{
    m_readings = analysis.readings;
    {
        const QSignalBlocker quietly(m_readAt);
        m_readAt->setValue(qRound(analysis.conditions.readAt.value));
    }
    std::vector<MarkedLine> lines;
    if (m_readings) {
        for (const Sentence& disturbance : m_readings->disturbances)
            lines.push_back({Mark::None, translated(disturbance), true});
        const QString egg = m_readings->egg.floats
                                ? tr("an egg floats and shows a patch %1 wide").arg(millimetresText(m_readings->egg.exposedWidth))
                                : tr("an egg sinks");
        const QString refractometer = m_readings->refractometer_brix ? brixText(*m_readings->refractometer_brix) : tr("no line");
        setValueText(tr("At %1: refractometer %2, hydrometer %3 or %4, %5")
                         .arg(chosenDegrees(m_readings->temperature), refractometer,
                             specificGravityText(m_readings->specificGravity_20_20), baumeText(m_readings->baume), egg));
    } else if (analysis.mix.isEmpty()) {
        setValueText(tr("Instruments read a mix as soon as there is one"));
    } else {
        setValueText(tr("There is no liquid in the mix to read"));
    }
    m_disturbances->setLines(std::move(lines));
    m_disturbances->setVisible(m_readings.has_value());
    m_readAt->setVisible(m_readings.has_value());
    layOut();
    update();
}

QString ReadingsPanel::baumeCaption() const
{
    return m_readings ? tr("hydrometer, %1").arg(baumeText(m_readings->baume)) : QString();
}

/// Two lines where the longest caption does not fit into one.
int ReadingsPanel::captionHeight() const
{
    const double room = (columnEdges[2] - columnEdges[1]) * width();
    return fontMetrics().horizontalAdvance(baumeCaption()) > room ? 2 * lineHeight(font()) : lineHeight(font());
}

/// As high as the sentences are; where that would cost the pictures their size, as high as the first of them.
int ReadingsPanel::footHeight() const
{
    const int line = lineHeight(font());
    const int least = std::max(m_readAt->sizeHint().height(), 2 * (line + 1));
    const int left = m_readAt->sizeHint().width() + closeSpace;
    const std::vector<int> ends = m_disturbances->topsFor(width() - left);
    const int first = ends.size() > 1 ? ends[1] : 0;
    const int room = height() - lineHeight(figureFont(font())) - captionHeight() - gridStep;
    const int besideLargePictures = room - qRound(tallestPicture * width()), besideSmallOnes = room - qRound(lowestPicture * line);
    return std::max(least, std::min(ends.back(), std::max(besideLargePictures, std::min(first, besideSmallOnes))));
}

/// A high panel leaves its lower end empty.
int ReadingsPanel::usedHeight() const
{
    const int text = lineHeight(figureFont(font())) + captionHeight() + gridStep + footHeight();
    return std::min(height(), text + qRound(tallestPicture * width()));
}

ReadingsPanel::Column ReadingsPanel::column(int index) const
{
    const auto edge = static_cast<std::size_t>(index);
    const double left = columnEdges[edge] * width(), columnWidth = columnEdges[edge + 1] * width() - left;
    const double figureHeight = lineHeight(figureFont(font()));
    const double captionTop = usedHeight() - footHeight() - gridStep - captionHeight();
    return {{left, 0.0, columnWidth, captionTop - figureHeight}, {left, captionTop - figureHeight, columnWidth, figureHeight},
        {left, captionTop, columnWidth, static_cast<double>(captionHeight())}};
}

void ReadingsPanel::layOut()
{
    const int top = usedHeight() - footHeight();
    const QSize spin = m_readAt->sizeHint();
    m_readAt->setGeometry(0, top, spin.width(), spin.height());
    const int left = spin.width() + closeSpace;
    m_disturbances->setGeometry(left, top, std::max(0, width() - left), footHeight());
}

void ReadingsPanel::resizeEvent(QResizeEvent* event)
{
    Gauge::resizeEvent(event);
    layOut();
}

void ReadingsPanel::changeEvent(QEvent* event)
{
    Gauge::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        layOut();
    }
}

void ReadingsPanel::paintFigure(
    QPainter& painter, const Column& column, const QString& figure, const QString& caption, const GaugeColours& colours)
{
    const QFont text = painter.font();
    painter.setFont(figureFont(text));
    painter.setPen(colours.ink);
    painter.drawText(column.figure, Qt::AlignCenter, figure);
    painter.setFont(text);
    painter.setPen(colours.quietInk);
    painter.drawText(column.caption, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, caption);
}

void ReadingsPanel::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    if (!m_readings) {
        paintHint(painter, rect(), valueText(), colours);
        return;
    }
    const Readings& readings = *m_readings;
    paintRefractometer(painter, column(0).picture, readings.refractometer_brix, colours);
    paintFigure(painter, column(0), readings.refractometer_brix ? brixText(*readings.refractometer_brix) : tr("no line"),
        tr("refractometer"), colours);
    paintHydrometer(painter, column(1).picture, readings.specificGravity_20_20, colours);
    paintFigure(painter, column(1), specificGravityText(readings.specificGravity_20_20), baumeCaption(), colours);
    paintEgg(painter, readings.egg, column(2).picture, colours);
    paintFigure(painter, column(2), readings.egg.floats ? millimetresText(readings.egg.exposedWidth) : tr("sinks"),
        readings.egg.floats ? tr("of the egg shows") : tr("egg on the bottom"), colours);
}

}  // namespace firn::app
