#include "teach/projected_text.h"

#include "gauges/temperature_unit.h"
#include "gauges/wording.h"
#include "teach/figure_wording.h"
#include "texture/texture.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <cmath>

namespace firn::app {

namespace {

// Around a figure that is an answer, inside a text. Of the private use area, so that no text of ours has them; those of files are dropped.
constexpr QChar answerBegins{0xE000};
constexpr QChar answerEnds{0xE001};
constexpr double lineGap_em = 0.18;
constexpr double outline_em = 0.05;

/// What stands around an answer, and is not hidden with it.
bool isBracket(QChar letter) { return letter == u'(' || letter == u')'; }

QString withoutMarks(QString text) { return text.remove(answerBegins).remove(answerEnds); }

/// How firm it is, in a word.
bool isVerdict(const std::string& text)
{
    static constexpr std::array verdicts{Firmness::Liquid, Firmness::Slush, Firmness::Soft, Firmness::Scoopable, Firmness::Firm,
        Firmness::Hard, Firmness::Block, Firmness::Wet, Firmness::Loose, Firmness::Dry};
    return std::ranges::find(verdicts, text, [](Firmness firmness) { return nameOf(firmness); }) != verdicts.end();
}

/// An empty box where this was.
FormulaMark emptied(const FormulaMark& mark)
{
    FormulaMark empty;
    empty.bounds = mark.bounds;
    const double stroke = std::max(1.0, outline_em * QFontInfo(mark.font).pixelSize());
    empty.shape.setFillRule(Qt::OddEvenFill);
    empty.shape.addRect(mark.bounds);
    empty.shape.addRect(mark.bounds.adjusted(stroke, stroke, -stroke, -stroke));
    empty.isQuiet = true;
    return empty;
}

class TextSetter {
public:
    TextSetter(const QFont& font, Lettering lettering, const HiddenAnswers& hidden)
        : m_font(font)
        , m_metrics(font)
        , m_isQuiet(lettering == Lettering::Quiet)
        , m_hidden(hidden)
    {
        m_font.setItalic(lettering == Lettering::Italic);
    }

    double space() const { return m_metrics.horizontalAdvance(u' '); }

    FormulaBox piece(const QString& text, bool isAnswer) const
    {
        FormulaMark mark;
        mark.text = text;
        mark.font = m_font;
        mark.isQuiet = m_isQuiet;
        FormulaBox box;
        box.width = m_metrics.horizontalAdvance(text);
        box.ascent = m_metrics.ascent();
        box.descent = m_metrics.descent();
        mark.bounds = QRectF(0.0, -box.ascent, box.width, box.ascent + box.descent);
        box.marks.push_back(isAnswer && m_hidden.isHiding() ? emptied(mark) : mark);
        return box;
    }

    /// A word, in as many pieces as the room asks for, with its answers apart.
    std::vector<FormulaBox> word(const QString& text, double room) const
    {
        std::vector<FormulaBox> pieces(1);
        bool isAnswer = !text.contains(answerBegins) && m_hidden.contains(text);
        QString run;
        const auto endRun = [&] {
            while (!run.isEmpty()) {
                qsizetype fitting = run.size();
                while (fitting > 1 && m_metrics.horizontalAdvance(run.left(fitting)) > room)
                    fitting = fitting > 64 ? fitting / 2 : fitting - 1;
                const bool isEmptied = isAnswer && !isBracket(run.front()) && !m_hidden.isGiven(run);
                FormulaBox set = piece(run.left(fitting), isEmptied);
                if (pieces.back().width > 0.0 && pieces.back().width + set.width > room)
                    pieces.emplace_back();
                pieces.back().append(std::move(set));
                run.remove(0, fitting);
            }
        };
        for (const QChar letter : text) {
            const bool isMark = letter == answerBegins || letter == answerEnds;
            if (isMark || isBracket(letter) || (!run.isEmpty() && isBracket(run.back())))
                endRun();
            if (isMark)
                isAnswer = letter == answerBegins;
            else
                run += letter;
        }
        endRun();
        return pieces;
    }

    std::vector<FormulaBox> words(const QString& text, double room) const
    {
        std::vector<FormulaBox> boxes;
        for (const QString& each : text.split(u' ', Qt::SkipEmptyParts)) {
            for (FormulaBox& piece : word(each, room))
                boxes.push_back(std::move(piece));
        }
        return boxes;
    }

    std::vector<FormulaBox> inLines(std::vector<FormulaBox> words, double room) const
    {
        std::vector<FormulaBox> lines(1);
        for (FormulaBox& each : words) {
            const double x = lines.back().width > 0.0 ? lines.back().width + space() : 0.0;
            if (x > 0.0 && x + each.width > room)
                lines.emplace_back();
            FormulaBox& line = lines.back();
            line.add(std::move(each), {line.width > 0.0 ? line.width + space() : 0.0, 0.0});
        }
        const double gap = lineGap_em * QFontInfo(m_font).pixelSize();
        for (FormulaBox& line : lines)
            line.descent += gap;
        return lines;
    }

private:
    QFont m_font;
    QFontMetricsF m_metrics;
    bool m_isQuiet;
    const HiddenAnswers& m_hidden;
};

}  // namespace

/// A number as short as those of formulas themselves, "100" or "2", is told by its unit alone.
void HiddenAnswers::add(const Symbol& found)
{
    const QString value = valueInLocale(found);
    m_found << std::abs(found.value);
    static const QSet<QString> ofFormulas{"0", "1", "2", "3", "4", "100", "1000"};
    m_values.insert(value);
    if (const QString digits = digitsOf(value); !digits.isEmpty() && !ofFormulas.contains(digits))
        m_digits.insert(digits);
}

void HiddenAnswers::addGiven(double value) { m_given << value; }

bool HiddenAnswers::contains(const QString& text) const
{
    return isHiding()
           && (m_values.contains(text) || ((m_digits.contains(digitsOf(text)) || isRounding(digitsOf(text))) && !isGiven(text)));
}

/// Whether these digits are an answer with more or fewer decimals. Two digits or one may be anything.
bool HiddenAnswers::isRounding(const QString& digits) const
{
    constexpr qsizetype fewest = 3;
    const qsizetype point = digits.indexOf(QLocale().decimalPoint());
    if (point < 0 || digits.size() - 1 < fewest)
        return false;
    const double number = QLocale().toDouble(digits);
    const double half = 0.5 * std::pow(10.0, -double(digits.size() - point - 1));
    return std::ranges::any_of(m_found, [&](double found) { return std::abs(found - number) <= half * (1.0 + 1e-9); });
}

/// A temperature is told by its sign from an answer with the same digits.
bool HiddenAnswers::isGiven(const QString& text) const
{
    static const QRegularExpression number(QStringLiteral("^\\(*([\u2212-]?\\d+(?:[.,]\\d+)?)"));
    QString found = number.match(text).captured(1).replace(QChar(0x2212), u'-');
    bool isNumber = false;
    const double value = found.replace(u',', u'.').toDouble(&isNumber);
    return isNumber && m_given.contains(value) && (value < 0.0 || !m_digits.contains(digitsOf(text)));
}

QString HiddenAnswers::without(const QString& text) const
{
    QStringList words;
    for (const QString& word : text.split(u' ')) {
        const qsizetype begin = word.indexOf(answerBegins), end = word.indexOf(answerEnds);
        const bool isMarked = begin >= 0 && end > begin;
        if (isHiding() && isMarked && !isGiven(word.mid(begin + 1, end - begin - 1)))
            words << word.left(begin) + u'…' + word.mid(end + 1);
        else if (isHiding() && !isMarked && contains(word))
            words << QStringLiteral("…");
        else
            words << withoutMarks(word);
    }
    return words.join(u' ');
}

QString digitsOf(const QString& text)
{
    static const QRegularExpression number(QStringLiteral("^[(\u2212-]*(\\d+(?:[.,]\\d+)*)"));
    return number.match(text).captured(1);
}

namespace {

/// Whether the pattern has "°C" behind this place, or behind the range that begins there.
bool isInDegrees(std::string_view pattern, std::size_t place)
{
    const QRegularExpression degrees(QStringLiteral("\\{%1\\}( \\w+ \\{\\d\\})? °C").arg(place));
    return degrees.match(QString::fromUtf8(pattern.data(), qsizetype(pattern.size()))).hasMatch();
}

}  // namespace

QString projectedText(const Sentence& sentence, bool hasAnswers)
{
    const auto marked = [](const QString& answer) { return (answerBegins + answer + answerEnds).toStdString(); };
    Sentence result = sentence;
    for (std::size_t i = 0; i < result.values.size(); ++i) {
        Sentence::Value& value = result.values[i];
        const auto* number = std::get_if<Figure>(&value);
        if (number && hasAnswers && number->kind == FigureKind::Number && isInDegrees(sentence.pattern, i))
            value = marked(figure(numberIn(shownTemperatureUnit(), Celsius{number->value}), number->decimals));
        else if (number && hasAnswers)
            value = marked(figure(*number));
        else if (const auto* text = std::get_if<std::string>(&value))
            value = hasAnswers && isVerdict(*text) ? marked(translatedName(*text)) : withoutMarks(plain(*text)).toStdString();
    }
    // The unit behind an answer is not among its values.
    static const QRegularExpression unit(QString(answerEnds) + QStringLiteral("[ \u202f]°C"));
    return translated(result).replace(unit, QString(answerEnds) + QChar(0x202F) + degreeSign());
}

QString projectedVerdict(const Sentence& sentence)
{
    QStringList words = projectedText(sentence).split(u' ', Qt::SkipEmptyParts);
    for (QString& word : words)
        word = answerBegins + word + answerEnds;
    return words.join(u' ');
}

std::vector<FormulaBox> textLines(
    const QString& text, const QFont& font, double room, Lettering lettering, const HiddenAnswers& hidden)
{
    const TextSetter setter(font, lettering, hidden);
    return setter.inLines(setter.words(text, room), room);
}

std::vector<FormulaBox> meaningLines(
    const std::vector<SymbolMeaning>& meanings, const QFont& font, double room, const HiddenAnswers& hidden)
{
    const TextSetter setter(font, Lettering::Quiet, hidden);
    std::vector<FormulaBox> words;
    for (std::size_t i = 0; i < meanings.size(); ++i) {
        const bool isLast = i + 1 == meanings.size();
        words.push_back(meanings[i].symbol);
        for (FormulaBox& word : setter.words(isLast ? meanings[i].text : meanings[i].text + u';', room))
            words.push_back(std::move(word));
    }
    return setter.inLines(std::move(words), room);
}

FormulaBox stacked(std::vector<FormulaBox> lines)
{
    FormulaBox box = std::move(lines.front());
    for (std::size_t i = 1; i < lines.size(); ++i) {
        const double drop = box.descent + lines[i].ascent;
        box.add(std::move(lines[i]), {0.0, drop});
    }
    return box;
}

FormulaBox withoutAnswers(FormulaBox box, const HiddenAnswers& hidden)
{
    for (FormulaMark& mark : box.marks) {
        if (!mark.text.isEmpty() && hidden.contains(mark.text))
            mark = emptied(mark);
    }
    return box;
}

}  // namespace firn::app
