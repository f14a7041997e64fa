#include "compare/comparison_lines.h"

#include "analysis/workings_as_read.h"
#include "compare/comparison_workings.h"
#include "gauges/temperature_unit.h"
#include "gauges/wording.h"

#include <QCoreApplication>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::ComparisonLines)
};

QString fromText(const std::string& text) { return QString::fromStdString(text); }

QString gramsOf(Grams mass)
{
    const Figure digits = figureOf(mass);
    return withUnit(figure(digits.value, digits.decimals), Words::tr("g"));
}

/// The keys of the figures that stand in a side's cells, where there are any.
struct Figures {
    std::string ofValue = {};
    std::string ofChange = {};
};

/// Collects the cells of one line, side by side.
class CellsLine {
public:
    explicit CellsLine(QString label) { m_line.label = std::move(label); }

    void add(const QString& value, const QString& change, bool isOther, const Figures& figures = {})
    {
        const bool isFirst = m_line.cells.isEmpty();
        addCell(value, isOther, figures.ofValue);
        if (!isFirst)
            addCell(change, isOther, figures.ofChange);
    }
    ComparisonLine line() const { return m_line; }

private:
    void addCell(const QString& text, bool isOther, const std::string& figure)
    {
        m_line.cells << text;
        m_line.isOther.push_back(isOther);
        m_line.figures << fromText(figure);
    }

    ComparisonLine m_line;
};

ComparisonLine section(const QString& name) { return {ComparisonLine::Section, name}; }

QString valueOf(const ComparedCell& cell, const Basis& basis)
{
    if (!cell.isThere)
        return {};
    const QString written = fromText(cell.written), grams = gramsOf(cell.mass);
    const bool isPlain = basis.per == Basis::Batch && (written.endsWith(u" g") || cell.mass.value <= 0.0);
    return isPlain ? written : Words::tr("%1 (%2)", "grams of the basis, and the amount as written").arg(grams, written);
}

QString markedName(RowDifference difference)
{
    if (difference == RowDifference::Same)
        return {};
    const std::string_view mark = markOf(difference);
    return QString::fromUtf8(mark.data(), qsizetype(mark.size())) + u' ' + translatedName(nameOf(difference));
}

void addRows(std::vector<ComparisonLine>& lines, const Comparison& comparison)
{
    const QString per = basisText(comparison.basis);
    for (const ComparedComponent& component : comparison.components) {
        lines.push_back(section(component.name.empty() ? Words::tr("Ingredients, in %1").arg(per)
                                                       : Words::tr("%1, in %2").arg(fromText(component.name), per)));
        for (const ComparedRow& row : component.rows) {
            CellsLine line(fromText(row.name));
            for (std::size_t i = 0; i < row.cells.size(); ++i) {
                const ComparedCell& cell = row.cells[i];
                const std::string figure = cell.isThere ? figureOfSide(cell, comparison.sides[i]) : std::string();
                line.add(
                    valueOf(cell, comparison.basis), markedName(cell.difference), cell.difference != RowDifference::Same, {figure});
            }
            lines.push_back(line.line());
        }
    }
}

void addDifferences(std::vector<ComparisonLine>& lines, const Comparison& comparison)
{
    if (comparison.differences.empty())
        return;
    lines.push_back(section(Words::tr("Besides the ingredients")));
    for (const HeaderDifference& difference : comparison.differences) {
        const QString label = translatedName(difference.label);
        CellsLine line(difference.part.empty() ? label : Words::tr("%1, %2").arg(label, fromText(difference.part)));
        QStringList values;
        for (const auto& parts : difference.values) {
            QStringList all;
            for (const Sentence& part : parts)
                all << translated(part);
            values << all.join(QStringLiteral("; "));
        }
        for (const QString& value : std::as_const(values))
            line.add(value, value == values.front() ? QString() : QStringLiteral("≠"), value != values.front());
        lines.push_back(line.line());
    }
}

QString unitAfter(const QString& text, std::string_view unit) { return unit.empty() ? text : withUnit(text, shownUnit(unit)); }

bool isTemperature(std::string_view unit) { return unit == symbolOf(TemperatureUnit::Celsius); }

constexpr std::string_view kelvins = "K";

/// Between two temperatures lie kelvins.
std::string_view unitOfChange(std::string_view unit) { return isTemperature(unit) ? kelvins : unit; }

/// The number in the unit that is shown; a difference of two of them has no zero to be moved.
double shownNumber(double value, std::string_view unit)
{
    return isTemperature(unit) ? numberIn(shownTemperatureUnit(), Celsius{value}) : value;
}
double shownApart(double difference, std::string_view unit)
{
    return unitOfChange(unit) == kelvins ? numberIn(shownTemperatureUnit(), KelvinDifference{difference}) : difference;
}

QString valueOf(const ComparedFigure& one, std::size_t side)
{
    if (!one.values[side])
        return Words::tr("none");
    if (one.isFreezers[side])
        return Words::tr("straight from the freezer", "the coldest at which it may be served");
    const QString value = figure(shownNumber(*one.values[side], one.unit), one.decimals);
    const auto uncertainty = shownUncertainty(one, side);
    const QString band = uncertainty ? figure(shownApart(*uncertainty, one.unit), one.decimals) : QString();
    return unitAfter(uncertainty ? Words::tr("%1 ± %2").arg(value, band) : value, one.unit);
}

void addFigures(std::vector<ComparisonLine>& lines, const Comparison& comparison)
{
    lines.push_back(section(Words::tr("Figures")));
    CellsLine texture(Words::tr("Texture"));
    const auto textureOf = [&](const ComparedSide& side) {
        return Words::tr("%1, %2", "a kind of ice and how firm it is")
            .arg(
                translatedName(nameOf(side.analysis.texture.textureClass)), translatedName(nameOf(side.analysis.texture.firmness)));
    };
    const QString first = textureOf(comparison.sides.front());
    for (const ComparedSide& side : comparison.sides)
        texture.add(textureOf(side), textureOf(side) == first ? QString() : QStringLiteral("≠"), textureOf(side) != first);
    lines.push_back(texture.line());
    for (const ComparedFigure& one : comparison.figures) {
        if (isNothing(one))
            continue;
        CellsLine line(translatedName(one.label));
        for (std::size_t i = 0; i < one.values.size(); ++i) {
            const auto change = shownChange(one, i);
            const bool isOfAnotherKind =
                one.values[i].has_value() != one.values.front().has_value() || one.isFreezers[i] != one.isFreezers.front();
            line.add(valueOf(one, i),
                change            ? changeText(*change, one.decimals, one.unit)
                : isOfAnotherKind ? QStringLiteral("≠")
                                  : QString(),
                isOfAnotherKind || change.value_or(0.0) != 0.0,
                {one.values[i] ? figureOfSide(one, comparison.sides[i]) : std::string(),
                    change ? figureOfChange(one) : std::string()});
        }
        lines.push_back(line.line());
    }
}

void addReadings(std::vector<ComparisonLine>& lines, const Comparison& comparison)
{
    constexpr std::array instruments{Instrument::Refractometer, Instrument::HydrometerBrix, Instrument::HydrometerGravity,
        Instrument::HydrometerBaume, Instrument::Egg, Instrument::BoilingPoint};
    bool isFirst = true;
    for (const Instrument instrument : instruments) {
        std::vector<const BesideReading*> latest;
        for (const ComparedSide& side : comparison.sides) {
            const auto found = std::find_if(side.readings.rbegin(), side.readings.rend(),
                [instrument](const BesideReading& reading) { return reading.record.instrument == instrument; });
            latest.push_back(found == side.readings.rend() ? nullptr : &*found);
        }
        if (std::ranges::all_of(latest, [](const BesideReading* reading) { return !reading; }))
            continue;
        if (std::exchange(isFirst, false))
            lines.push_back(section(Words::tr("Readings")));
        CellsLine measured(capitalised(nameOf(instrument)));
        CellsLine computed(Words::tr("computed for it"));
        for (const BesideReading* reading : latest) {
            const bool isComputed = reading && reading->computed && reading->computed->value;
            measured.add(reading ? readingText(reading->record) : QString(), {}, false);
            computed.add(isComputed ? valueOn(instrument, *reading->computed->value) : QString(), {}, false,
                {isComputed ? figureComputedFor(instrument) : std::string()});
        }
        lines.push_back(measured.line());
        lines.push_back(computed.line());
    }
}

void addReasons(std::vector<ComparisonLine>& lines, const Comparison& comparison)
{
    lines.push_back(section(Words::tr("Why this texture")));
    for (const ComparedSide& side : comparison.sides) {
        QStringList sentences;
        for (const auto& all : {side.analysis.texture.reasons, side.analysis.texture.faults})
            for (const Sentence& sentence : all)
                sentences << translated(sentence);
        lines.push_back({ComparisonLine::Sentence, Words::tr("%1: %2").arg(fromText(side.name), sentences.join(u' '))});
    }
}

QString onOneLine(QString text) { return text.replace(u'\t', u' ').replace(u'\n', u' ').replace(u'\r', u' '); }

QString tabbed(QStringList cells)
{
    for (QString& cell : cells)
        cell = onOneLine(cell);
    return cells.join(u'\t') + u'\n';
}

}  // namespace

QString basisText(const Basis& basis)
{
    if (basis.per == Basis::Portion)
        return Words::tr("a portion of %1").arg(gramsText(basis.portion));
    return basis.per == Basis::Batch ? Words::tr("the whole batch") : withUnit(QStringLiteral("100"), Words::tr("g"));
}

QString shownUnit(std::string_view unit)
{
    const bool isInFahrenheit = unit == kelvins && shownTemperatureUnit() == TemperatureUnit::Fahrenheit;
    return isTemperature(unit) || isInFahrenheit ? degreeSign() : translatedName(unit);
}

QString changeText(double change, int decimals, std::string_view unit)
{
    const QString text = figure(shownApart(change, unit), decimals);
    return change > 0.0 && text != figure(0.0, decimals) ? u'+' + text : text;
}

QStringList columnNames(const Comparison& comparison)
{
    QStringList names{QString()};
    for (const ComparedSide& side : comparison.sides) {
        if (&side != &comparison.sides.front())
            names << fromText(side.name) << Words::tr("Change");
        else
            names << fromText(side.name);
    }
    return names;
}

std::vector<ComparisonLine> linesOf(const Comparison& comparison)
{
    std::vector<ComparisonLine> lines;
    addRows(lines, comparison);
    addDifferences(lines, comparison);
    addFigures(lines, comparison);
    addReadings(lines, comparison);
    addReasons(lines, comparison);
    return lines;
}

QHash<QString, QString> shownFigures(const Comparison& comparison, std::size_t side)
{
    QHash<QString, QString> shown;
    for (const ComparedFigure& one : comparison.figures)
        if (one.values[side])
            shown.insert(fromText(figureOfSide(one, comparison.sides[side])),
                unitAfter(figure(shownNumber(*one.values[side], one.unit), one.decimals), one.unit));
    for (const ComparedComponent& component : comparison.components)
        for (const ComparedRow& row : component.rows)
            if (const ComparedCell& cell = row.cells[side]; cell.isThere)
                shown.insert(fromText(figureOfSide(cell, comparison.sides[side])), gramsOf(cell.mass));
    return shown;
}

QHash<QString, QString> shownDifferences(const Comparison& comparison, std::size_t side)
{
    QHash<QString, QString> shown;
    for (const ComparedFigure& one : comparison.figures)
        if (const auto change = shownChange(one, side))
            shown.insert(
                fromText(figureOfChange(one)), unitAfter(changeText(*change, one.decimals, one.unit), unitOfChange(one.unit)));
    for (const AttributedKind& kind : attributedKinds())
        if (const AttributedFigure& whole = comparison.attributions[side - 1].*kind.figure; !whole.whyNone)
            shown.insert(fromText(figureOfAttribution(kind)),
                unitAfter(changeText(shownWhole(whole, kind.decimals), kind.decimals, kind.unit), kind.unit));
    return shown;
}

QString tabbedText(const Comparison& comparison)
{
    QString text;
    for (const firn::Sentence& sentence : comparison.fairness)
        text += tabbed({translated(sentence)});
    text += tabbed(columnNames(comparison));
    for (const ComparisonLine& line : linesOf(comparison))
        text += tabbed(QStringList{line.label} + line.cells);
    for (std::size_t i = 0; i < comparison.attributions.size(); ++i) {
        const Attribution& attribution = comparison.attributions[i];
        const std::string &from = comparison.sides.front().name, &to = comparison.sides[i + 1].name;
        QStringList labels{Words::tr("What did it: %1 → %2").arg(fromText(from), fromText(to))}, sums{Words::tr("together")};
        for (const AttributedKind& kind : attributedKinds()) {
            const AttributedFigure& whole = attribution.*kind.figure;
            labels << translatedName(kind.label) + QStringLiteral(", ") + shownUnit(kind.unit);
            sums << (whole.whyNone ? Words::tr("none") : changeText(shownWhole(whole, kind.decimals), kind.decimals, kind.unit));
        }
        text += tabbed(labels);
        for (std::size_t change = 0; change < attribution.changes.size(); ++change) {
            QStringList parts{translated(attribution.changes[change].what)};
            for (const AttributedKind& kind : attributedKinds()) {
                const AttributedFigure& whole = attribution.*kind.figure;
                parts << (whole.whyNone ? Words::tr("none")
                                        : changeText(roundedParts(whole, kind.decimals)[change], kind.decimals, kind.unit));
            }
            text += tabbed(parts);
        }
        text += tabbed(sums);
    }
    return text;
}

}  // namespace firn::app
