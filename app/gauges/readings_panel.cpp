#include "gauges/readings_panel.h"

#include "gauges/degrees_spin.h"
#include "gauges/egg_picture.h"
#include "gauges/figure_button.h"
#include "gauges/hydrometer_picture.h"
#include "gauges/marked_lines.h"
#include "gauges/refractometer_picture.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "units/deviation.h"

#include <QEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <limits>

namespace firn::app {

namespace {

// Left edges of the three columns, and the right edge of the last, as shares of the width; the hydrometer's caption is the longest.
constexpr std::array<double, 4> columnEdges{0.0, 0.31, 0.66, 1.0};
constexpr double tallestPicture = 0.42;  // against the width of the panel; taller ones would only stretch the jar
constexpr double lowestPicture = 5.5;    // lines of text; the first sentence on what disturbs the readings may take the rest
constexpr double coldestReading_c = 0.0;
constexpr double hottestReading_c = 80.0;

/// "19.0 ± 0.3 °Bx"
QString withBand(const ScaleReading& reading, int decimals, const QString& unit)
{
    if (!reading.value)
        return ReadingsPanel::tr("off the scale");
    const QString band = ReadingsPanel::tr("%1 ± %2").arg(
        figure(*reading.value, decimals), figure(shownDeviation(decimals, combined(reading.errors)), decimals));
    return unit.isEmpty() ? band : withUnit(band, unit);
}

QString shownText(const ScaleReading& reading, QString (*written)(double))
{
    return reading.value ? written(*reading.value) : ReadingsPanel::tr("off the scale");
}

std::optional<std::size_t> columnOf(Instrument instrument)
{
    switch (instrument) {
    case Instrument::Refractometer:
        return 0;
    case Instrument::Egg:
        return 2;
    case Instrument::BoilingPoint:
        return std::nullopt;
    case Instrument::HydrometerBrix:
    case Instrument::HydrometerGravity:
    case Instrument::HydrometerBaume:
        break;
    }
    return 1;
}

}  // namespace

ReadingsPanel::ReadingsPanel(QWidget* parent)
    : Gauge(tr("Readings"), parent)
    , m_readAt(new DegreesSpin(this))
    , m_disturbances(new MarkedLines(this))
{
    m_readAt->setRange(coldestReading_c, hottestReading_c);
    m_readAt->setPrefix(tr("at ", "a temperature follows"));
    m_readAt->setAccessibleName(tr("Temperature of the reading"));
    m_readAt->setToolTip(tr("Temperature of the mix when it is read"));
    m_disturbances->setAccessibleName(tr("What disturbs the readings"));
    connect(m_readAt, &QDoubleSpinBox::valueChanged, this, &ReadingsPanel::readAtChosen);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    show(Analysis{});
}

QSize ReadingsPanel::sizeHint() const { return {fontMetrics().averageCharWidth() * 60, lineHeight(font()) * 13}; }

QSize ReadingsPanel::minimumSizeHint() const { return {fontMetrics().averageCharWidth() * 50, lineHeight(font()) * 9}; }

void ReadingsPanel::show(const Analysis& analysis)
{
    m_readings = analysis.readings;
    // What is being typed stays as it is.
    if (const double readAt_c = analysis.conditions.readAt.value; m_readAt->value() != readAt_c) {
        const QSignalBlocker quietly(m_readAt);
        m_readAt->setValue(readAt_c);
    }
    m_instruments = analysis.instruments;
    std::vector<MarkedLine> lines;
    if (m_readings && m_instruments) {
        for (const Sentence& disturbance : m_readings->disturbances)
            lines.push_back({Mark::None, translated(disturbance), true});
        write(analysis);
    } else {
        m_readings.reset();
        setToolTip({});
        setValueText(analysis.mix.isEmpty() ? tr("Instruments read a mix as soon as there is one")
                                            : tr("There is no liquid in the mix to read"));
    }
    m_disturbances->setLines(std::move(lines));
    m_disturbances->setVisible(m_readings.has_value());
    m_readAt->setVisible(m_readings.has_value());
    layOut();
    update();
}

void ReadingsPanel::write(const Analysis& analysis)
{
    const auto& [refractometer, brix, hydrometerBrix, gravity, baume] = *m_instruments;
    const EggFloat& egg = m_readings->egg;
    m_shown = {};
    m_shown[0] = {brix.value ? brixText(*brix.value) : tr("off the scale"),
        brix.value                       ? tr("refractometer")
        : brix.onScale == OnScale::Above ? tr("refractometer, over %1").arg(brixText(refractometer.to_brix))
                                         : tr("refractometer, under %1").arg(brixText(refractometer.from_brix)),
        {}, brix.value ? QStringLiteral("instruments.refractometer_brix") : QString()};
    m_alsoBaume = shownText(baume, baumeText);
    m_alsoBrix = shownText(hydrometerBrix, brixText);
    m_shown[1] = {shownText(gravity, specificGravityText), tr("hydrometer, %1, %2").arg(m_alsoBrix, m_alsoBaume), {},
        gravity.value ? QStringLiteral("instruments.hydrometer_gravity") : QStringLiteral("readings.density_g_ml")};
    m_shown[2] = {egg.floats ? millimetresText(egg.exposedWidth) : tr("sinks"),
        egg.floats ? tr("of the egg shows") : tr("egg on the bottom"), {}, QStringLiteral("readings.egg.exposed_width_mm")};
    QStringList spoken{
        tr("At %1: refractometer %2, hydrometer %3 or %4 or %5, %6")
            .arg(chosenDegrees(m_readings->temperature), withBand(brix, 1, tr("°Bx")), withBand(gravity, 3, {}),
                withBand(hydrometerBrix, 1, tr("°Bx")), withBand(baume, 1, tr("°Bé")),
                egg.floats ? tr("an egg floats and shows a patch %1 wide").arg(m_shown[2].figure) : tr("an egg sinks"))};
    for (const BesideReading& beside : analysis.measured.readings) {
        const QString measured = tr("measured %1").arg(readingText(beside.record));
        if (const auto column = columnOf(beside.record.instrument))
            m_shown[*column].measured = measured;
        spoken << tr("%1: %2", "an instrument and what was measured").arg(nameOf(beside.record.instrument), measured);
    }
    setValueText(spoken.join(u'\n'));
    setToolTip(valueText());
}

double ReadingsPanel::columnWidth(int index) const
{
    const auto edge = static_cast<std::size_t>(index);
    return (columnEdges[edge + 1] - columnEdges[edge]) * width();
}

/// As high as the longest caption is, broken where its column ends.
int ReadingsPanel::captionHeight() const
{
    int height = 0;
    for (int i = 0; i < static_cast<int>(m_shown.size()); ++i) {
        const auto heightOf = [&](const QString& text) {
            const QRect room(0, 0, static_cast<int>(columnWidth(i)), std::numeric_limits<short>::max());
            return text.isEmpty() ? 0 : fontMetrics().boundingRect(room, Qt::AlignHCenter | Qt::TextWordWrap, text).height();
        };
        const Shown& shown = m_shown[static_cast<std::size_t>(i)];
        height = std::max(height, heightOf(shown.caption) + heightOf(shown.measured));
    }
    return std::max(height, lineHeight(font()));
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
    const double left = columnEdges[edge] * width(), across = columnWidth(index);
    const double figureHeight = lineHeight(figureFont(font()));
    const double captionTop = usedHeight() - footHeight() - gridStep - captionHeight();
    return {{left, 0.0, across, captionTop - figureHeight}, {left, captionTop - figureHeight, across, figureHeight},
        {left, captionTop, across, static_cast<double>(captionHeight())}};
}

/// Picture and figure open what the instrument shows. The hydrometer's caption opens its two other scales, one on each half, and
/// what was measured opens what it says about the mix.
void ReadingsPanel::placeFigures()
{
    std::vector<FigurePlace> figures;
    for (int i = 0; i < int(m_shown.size()) && m_readings; ++i) {
        const Column place = column(i);
        const Shown& shown = m_shown[std::size_t(i)];
        if (!shown.key.isEmpty())
            figures.push_back({shown.key, tr("%1: %2", "a figure and its value").arg(shown.caption, shown.figure),
                place.picture.united(place.figure).toAlignedRect()});
    }
    if (m_readings) {
        QRect half = column(1).caption.toAlignedRect();
        half.setHeight(std::max(FigureButton::leastSize_px, half.height()));
        half.setWidth(half.width() / 2);
        if (m_instruments->hydrometerBrix.value)
            figures.push_back({QStringLiteral("instruments.hydrometer_brix"), tr("hydrometer: %1").arg(m_alsoBrix), half});
        half.translate(half.width(), 0);
        if (m_instruments->hydrometerBaume.value)
            figures.push_back({QStringLiteral("instruments.hydrometer_baume"), tr("hydrometer: %1").arg(m_alsoBaume), half});
    }
    setFigures(figures);
}

void ReadingsPanel::layOut()
{
    placeFigures();
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

void ReadingsPanel::paintShown(QPainter& painter, int index, const GaugeColours& colours) const
{
    const Column place = column(index);
    const Shown& shown = m_shown[static_cast<std::size_t>(index)];
    const QFont text = painter.font();
    // What does not fit as a figure is told as a word.
    const bool isTooWide = QFontMetrics(figureFont(text)).horizontalAdvance(shown.figure) > place.figure.width();
    painter.setFont(isTooWide ? text : figureFont(text));
    painter.setPen(colours.ink);
    painter.drawText(place.figure, Qt::AlignCenter, shown.figure);
    painter.setFont(text);
    painter.setPen(colours.quietInk);
    painter.drawText(place.caption, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, shown.caption);
    painter.setPen(colours.curve);
    painter.drawText(place.caption, Qt::AlignHCenter | Qt::AlignBottom | Qt::TextWordWrap, shown.measured);
}

void ReadingsPanel::paintGauge(QPainter& painter, const GaugeColours& colours)
{
    if (!m_readings) {
        paintHint(painter, rect(), valueText(), colours);
        return;
    }
    const bool isUnder = m_instruments->brix.onScale == OnScale::Below;
    paintRefractometer(painter, column(0).picture, isUnder ? std::optional(0.0) : m_instruments->brix.value, colours);
    paintHydrometer(
        painter, column(1).picture, m_instruments->hydrometerGravity.value.value_or(m_readings->specificGravity_20_20), colours);
    paintEgg(painter, m_readings->egg, column(2).picture, colours);
    for (int i = 0; i < static_cast<int>(m_shown.size()); ++i)
        paintShown(painter, i, colours);
}

}  // namespace firn::app
