#include "teach/figure_wording.h"

#include "derivation/formula_text.h"
#include "exchange/plain_text.h"
#include "gauges/wording.h"

#include <QCoreApplication>
#include <QLocale>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::FigureWording)
};

constexpr int mostDecimals = 8;

}  // namespace

QString valueInLocale(const Number& number)
{
    const QString text = QString::fromStdString(valueText(number));
    const qsizetype end = text.indexOf(u' ');
    const QString digits = text.left(end).replace(u'.', QLocale().decimalPoint());
    return end < 0 ? digits : withUnit(digits, text.mid(end + 1));
}

QString valueInLocale(const Symbol& symbol) { return valueInLocale(Number{symbol.value, symbol.unit, true, symbol.decimals}); }

QString onBench(const QString& figureKey, const Symbol& result)
{
    const QString unit = QString::fromStdString(result.unit);
    const auto rounded = [&](int decimals, const QString& shownUnit) {
        return shownUnit == QStringLiteral("°C") ? degrees({result.value}, decimals)
                                                 : withUnit(figure(result.value, decimals), shownUnit);
    };
    if (figureKey.startsWith(QLatin1String("texture.ice")) || figureKey.endsWith(QLatin1String("water_frozen_percent")))
        return rounded(0, unit);
    if (figureKey == QLatin1String("sweetness_percent_sucrose"))
        return rounded(0, QStringLiteral("%"));
    if (figureKey == QLatin1String("lactose_g_per_100_g_water"))
        return lactoseText(result.value);
    if (figureKey == QLatin1String("readings.specific_gravity_20_20")
        || figureKey == QLatin1String("instruments.hydrometer_gravity"))
        return specificGravityText(result.value);
    if (unit == QLatin1String("% vol"))
        return rounded(1, QStringLiteral("%"));
    if (unit == QLatin1String("%") || unit == QStringLiteral("°C") || unit == QStringLiteral("°Bx")
        || unit == QStringLiteral("°Bé"))
        return rounded(1, unit);
    if (unit == QLatin1String("g"))
        return gramsText({result.value});
    if (unit == QLatin1String("mL"))
        return millilitresText({result.value});
    if (unit == QLatin1String("mm"))
        return millimetresText({result.value});
    return valueInLocale(result);
}

QString shownText(const FigureHead& head, const QString& figure, const Symbol& result)
{
    return head.shown.isEmpty() ? onBench(figure, result) : head.shown;
}

/// What stands there is rounded from the exact value: a last 5 that was rounded up would be rounded up once more.
QString lastLine(const FigureHead& head, const QString& figure, const Symbol& result)
{
    const auto digitsOf = [](const QString& text) { return text.section(QChar(0x202F), 0, 0); };
    const QString shown = shownText(head, figure, result);
    QString exact = valueInLocale(result);
    if (exact == shown)
        return exact;
    Symbol finer = result;
    while (digitsOf(exact).endsWith(u'5') && finer.decimals.value_or(0) < mostDecimals) {
        finer.decimals = int(digitsOf(exact).size() - digitsOf(exact).indexOf(QLocale().decimalPoint()));
        exact = valueInLocale(finer);
    }
    return Words::tr("%1, shown as %2", "an exact value, and as rounded").arg(exact, shown);
}

QString plain(const std::string& text) { return QString::fromStdString(printable(text)); }

QString plainInCelsius(Sentence sentence)
{
    const auto unitOf = [](FigureKind kind) {
        return kind == FigureKind::Temperature             ? QStringLiteral("°C")
               : kind == FigureKind::TemperatureDifference ? QStringLiteral("K")
                                                           : QString();
    };
    for (Sentence::Value& value : sentence.values) {
        if (const auto* number = std::get_if<Figure>(&value)) {
            const QString unit = unitOf(number->kind), text = figure(number->value, number->decimals);
            value = (unit.isEmpty() ? text : withUnit(text, unit)).toStdString();
        }
    }
    return plain(sentence);
}

QString plain(const Sentence& sentence) { return plain(translated(sentence).toStdString()); }

}  // namespace firn::app
