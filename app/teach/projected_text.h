// Text of a projection in lines of type; figures that are answers can be left out of it.
#pragma once

#include "derivation/formula.h"
#include "formulas/formula_box.h"
#include "units/sentence.h"

#include <QSet>

namespace firn::app {

/// Which numbers an empty box of the same size stands for.
class HiddenAnswers {
public:
    void add(const Symbol& found);
    /// Was put in and not found, such as the temperature at serving: stays where it is read, if no answer is the same.
    void addGiven(double value);

    bool isHiding() const { return !m_values.isEmpty(); }
    /// Whether this text is an answer, "26.3 %", or has its digits.
    bool contains(const QString& text) const;
    bool isGiven(const QString& text) const;
    /// The text with a gap for each answer, for a screen reader.
    QString without(const QString& text) const;

private:
    bool isRounding(const QString& digits) const;

    QSet<QString> m_values;
    QSet<QString> m_digits;
    QList<double> m_found;
    QList<double> m_given;
};

/// "26.3" of "−26.3 %": what is left of a value without its sign and unit.
QString digitsOf(const QString& text);

/// The sentence in the user's language without control characters, its figures and verdicts between marks if they are `answers`.
QString projectedText(const Sentence& sentence, bool hasAnswers = false);

/// The same, with every word between marks.
QString projectedVerdict(const Sentence& sentence);

/// In lines of at most `room` pixels; a word that is wider goes on in the next line. Boxes stand for answers that are hidden.
std::vector<FormulaBox> textLines(
    const QString& text, const QFont& font, double room, Lettering lettering, const HiddenAnswers& hidden);

/// Symbols with what they mean, one after another, in lines of at most `room` pixels.
struct SymbolMeaning {
    FormulaBox symbol;
    QString text;
};
std::vector<FormulaBox> meaningLines(
    const std::vector<SymbolMeaning>& meanings, const QFont& font, double room, const HiddenAnswers& hidden);

/// Lines under each other as one box.
FormulaBox stacked(std::vector<FormulaBox> lines);

/// The formula's box with an empty box for each answer that is hidden.
FormulaBox withoutAnswers(FormulaBox box, const HiddenAnswers& hidden);

}  // namespace firn::app
