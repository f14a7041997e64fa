#include "gauges/wording.h"

#include "gauges/temperature_unit.h"
#include "units/deviation.h"
#include "units/number.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QRegularExpression>
#include <cmath>

namespace firn::app {

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(Wording)
};

constexpr QChar minusSign{0x2212};
constexpr QChar narrowNoBreakSpace{0x202F};

QString written(const Sentence::Value& value)
{
    if (const auto* number = std::get_if<Figure>(&value))
        return figure(*number);
    return QString::fromStdString(std::get<std::string>(value));
}

/// What follows a place that holds a temperature where the pattern itself has the unit.
struct DegreeBehind {
    bool isEndOfRange;  // else the unit stands behind the other end: "{0} to {1} °C"
    qsizetype length;   // of the unit, where it stands right here
};

/// A plain number before "°C" in a pattern is a temperature: differences bring their unit with them.
std::optional<DegreeBehind> degreeBehind(const QString& pattern, qsizetype place)
{
    static const QRegularExpression unit(QStringLiteral("\\{\\d\\}( \\w+ \\{\\d\\})?\u202f°C"));
    const auto match = unit.match(pattern, place, QRegularExpression::NormalMatch, QRegularExpression::AnchorAtOffsetMatchOption);
    if (!match.hasMatch())
        return std::nullopt;
    const bool isEndOfRange = match.captured(1).isEmpty();
    constexpr qsizetype unitLength = 3;  // with its blank
    return DegreeBehind{isEndOfRange, isEndOfRange ? unitLength : 0};
}

QString temperatureBefore(const DegreeBehind& degree, const Figure& number)
{
    return degree.isEndOfRange ? degrees({number.value}, number.decimals)
                               : figure(numberIn(shownTemperatureUnit(), Celsius{number.value}), number.decimals);
}

QString translatedCore(std::string_view english)
{
    // translate() wants a terminated text, which a view does not promise.
    return QCoreApplication::translate("core", std::string(english).c_str());
}

/// Small amounts need a decimal to be told apart; large ones are never known to a tenth.
QString amountText(double amount, const QString& unit) { return withUnit(figure(amount, std::abs(amount) < 9.95 ? 1 : 0), unit); }

}  // namespace

QString translated(const Sentence& sentence)
{
    QString pattern = translatedCore(sentence.pattern);
    // A line must not end between a number and its unit.
    for (const QChar unit : {u'%', u'°'})
        pattern.replace(QString(u' ') + unit, QString(narrowNoBreakSpace) + unit);
    const bool isFahrenheit = shownTemperatureUnit() == TemperatureUnit::Fahrenheit;
    QString text;
    text.reserve(pattern.size() + 32);
    // In one pass: a value that itself looks like a place, "{1}", must stay as it is.
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const bool isPlace = pattern[i] == u'{' && i + 2 < pattern.size() && pattern[i + 2] == u'}' && pattern[i + 1].isDigit();
        const auto index = isPlace ? static_cast<std::size_t>(pattern[i + 1].digitValue()) : sentence.values.size();
        if (index < sentence.values.size()) {
            const auto* number = std::get_if<Figure>(&sentence.values[index]);
            const auto degree = number && isFahrenheit ? degreeBehind(pattern, i) : std::nullopt;
            text += degree ? temperatureBefore(*degree, *number) : written(sentence.values[index]);
            i += 2 + (degree ? degree->length : 0);
        } else {
            text += pattern[i];
        }
    }
    return text;
}

QString translatedName(std::string_view name) { return translatedCore(name); }

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString dateText(const std::string& date)
{
    const QString text = QString::fromStdString(date);
    if (!text.contains(u'T'))
        return QLocale().toString(QDate::fromString(text, Qt::ISODate), QLocale::ShortFormat);
    // A file has no seconds, so that a time must not seem to have any.
    static const QRegularExpression seconds(QStringLiteral("[:.]ss?(?![A-Za-z])"));
    const QString format = QLocale().dateTimeFormat(QLocale::ShortFormat).remove(seconds);
    return QLocale().toString(QDateTime::fromString(text, Qt::ISODate), format);
}

QString figure(double value, int decimals)
{
    // As core rounds, so that window and text agree; zero has no sign.
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(roundedTo(decimals, value) + 0.0, 'f', decimals).replace(u'-', minusSign);
}

QString figure(const Figure& figure)
{
    switch (figure.kind) {
    case FigureKind::Temperature:
        return degrees({figure.value}, figure.decimals);
    case FigureKind::TemperatureDifference:
        return degreesApart({figure.value}, figure.decimals);
    case FigureKind::Number:
        break;
    }
    return app::figure(figure.value, figure.decimals);
}

QString amountNumberText(const Amount& amount)
{
    return QString::fromStdString(amountNumber(amount)).replace(u'.', QLocale().decimalPoint());
}

QString withUnit(const QString& figure, const QString& unit) { return figure + narrowNoBreakSpace + unit; }

QString degrees(Celsius temperature, int decimals)
{
    return withUnit(figure(numberIn(shownTemperatureUnit(), temperature), decimals), degreeSign());
}

QString degreeSign() { return shownTemperatureUnit() == TemperatureUnit::Celsius ? Wording::tr("°C") : Wording::tr("°F"); }

QString degreesApart(KelvinDifference difference, int decimals)
{
    const TemperatureUnit unit = shownTemperatureUnit();
    const QString sign = unit == TemperatureUnit::Celsius ? Wording::tr("K", "kelvins, between two temperatures") : degreeSign();
    return withUnit(figure(numberIn(unit, difference), decimals), sign);
}

QString chosenDegrees(Celsius temperature)
{
    constexpr int mostDecimals = 2;
    constexpr double sameNumber = 1e-6;
    const double number = numberIn(shownTemperatureUnit(), temperature);
    int decimals = 0;
    while (decimals < mostDecimals && std::abs(number - roundedTo(decimals, number)) > sameNumber)
        ++decimals;
    return degrees(temperature, decimals);
}

QString degreesRange(const TemperatureRange& range)
{
    return Wording::tr("%1 to %2", "a range of temperatures")
        .arg(figure(numberIn(shownTemperatureUnit(), range.coldest), 0), degrees(range.warmest, 0));
}

std::vector<DegreeMark> degreeMarks(Celsius coldest, bool areWide)
{
    const TemperatureUnit unit = shownTemperatureUnit();
    const int step = unit == TemperatureUnit::Celsius ? (areWide ? 10 : 5) : (areWide ? 20 : 10);
    const int warmest = int(std::floor(numberIn(unit, Celsius{0.0}) / step)) * step;
    std::vector<DegreeMark> marks;
    for (int number = warmest; temperatureFrom(unit, number) >= coldest; number -= step) {
        const Celsius temperature = temperatureFrom(unit, number);
        marks.push_back({temperature, number == warmest ? degrees(temperature, 0) : figure(number, 0)});
    }
    return marks;
}

QString percentText(MassFraction share, int decimals) { return withUnit(figure(percent(share), decimals), QStringLiteral("%")); }

QString percentText(MassFraction share, MassFraction standardDeviation)
{
    const int decimals = percent(standardDeviation) < 2.0 ? 1 : 0;
    if (standardDeviation.value <= 0.0)
        return percentText(share, decimals);
    const QString band = figure(shownDeviation(decimals, percent(standardDeviation)), decimals);
    return withUnit(Wording::tr("%1 ± %2").arg(figure(percent(share), decimals), band), QStringLiteral("%"));
}

QString gramsText(Grams mass) { return amountText(mass.value, Wording::tr("g")); }

QString millilitresText(Millilitres volume) { return amountText(volume.value, Wording::tr("mL")); }

QString millimetresText(Millimetres length) { return withUnit(figure(length.value, 0), Wording::tr("mm")); }

QString brixText(double brix) { return withUnit(figure(brix, 1), Wording::tr("°Bx")); }

QString baumeText(double baume) { return withUnit(figure(baume, 1), Wording::tr("°Bé")); }

QString specificGravityText(double specificGravity) { return figure(specificGravity, 3); }

QString lactoseText(double grams_per100gWater) { return withUnit(figure(grams_per100gWater, 1), Wording::tr("g")); }

QString nameOf(RibbonPart part)
{
    switch (part) {
    case RibbonPart::Water:
        return Wording::tr("water");
    case RibbonPart::Sugars:
        return Wording::tr("sugars");
    case RibbonPart::Fat:
        return Wording::tr("fat");
    case RibbonPart::Protein:
        return Wording::tr("protein");
    case RibbonPart::FibreAndOther:
        return Wording::tr("fibre and other");
    case RibbonPart::Alcohol:
        return Wording::tr("alcohol");
    case RibbonPart::SaltAndAcid:
        return Wording::tr("salt and acid");
    }
    return {};
}

QString nameOf(Instrument instrument)
{
    switch (instrument) {
    case Instrument::Refractometer:
        return Wording::tr("refractometer");
    case Instrument::Egg:
        return Wording::tr("egg");
    case Instrument::BoilingPoint:
        return Wording::tr("boiling point");
    case Instrument::HydrometerBrix:
    case Instrument::HydrometerGravity:
    case Instrument::HydrometerBaume:
        break;
    }
    return Wording::tr("hydrometer");
}

QString valueOn(Instrument instrument, double value)
{
    switch (instrument) {
    case Instrument::Refractometer:
    case Instrument::HydrometerBrix:
        return brixText(value);
    case Instrument::HydrometerGravity:
        return specificGravityText(value);
    case Instrument::HydrometerBaume:
        return baumeText(value);
    case Instrument::Egg:
        return millimetresText({value});
    case Instrument::BoilingPoint:
        break;
    }
    return degrees({value});
}

QString readingText(const ReadingRecord& record)
{
    const QString value = valueOn(record.instrument, record.value);
    const bool hasTemperature = record.temperature_c && record.instrument != Instrument::BoilingPoint;
    return hasTemperature
               ? Wording::tr("%1 at %2", "a reading and its temperature").arg(value, chosenDegrees({*record.temperature_c}))
               : value;
}

}  // namespace firn::app
