#include "formulas/formula_layout.h"

#include "derivation/formula_text.h"
#include "teach/figure_wording.h"

#include <QCoreApplication>
#include <QFontInfo>
#include <QLocale>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FormulaLayout)
};

constexpr int smallestType_px = 6;
constexpr double scriptSize = 0.72;
constexpr double nestedFractionSize = 0.86;
constexpr double operatorSpace_em = 0.22;
constexpr double dotSpace_em = 0.12;
constexpr double argumentSpace_em = 0.2;

const QString minusSign{QChar(0x2212)};

const Operation* asOperation(const Formula& formula, Operator op)
{
    const auto* operation = std::get_if<Operation>(&formula.node);
    return operation && operation->op == op ? operation : nullptr;
}

/// The formula without its leading minus, where it has one: in a sum it is subtracted.
std::optional<Formula> subtracted(const Formula& formula)
{
    if (const auto* negative = asOperation(formula, Operator::Negative))
        return negative->parts.front();
    if (const auto* number = std::get_if<Number>(&formula.node); number && number->value < 0.0) {
        Number positive = *number;
        positive.value = -positive.value;
        return positive;
    }
    for (const Operator op : {Operator::Product, Operator::Fraction}) {
        if (const auto* operation = asOperation(formula, op)) {
            if (auto first = subtracted(operation->parts.front())) {
                Operation positive = *operation;
                positive.parts.front() = std::move(*first);
                return positive;
            }
        }
    }
    return std::nullopt;
}

class Setter {
public:
    Setter(const FormulaType& type, bool isFolded, int fractions = 0)
        : m_type(type)
        , m_isFolded(isFolded)
        , m_fractions(fractions)
    {
    }

    FormulaBox set(const Formula& formula, double room) const
    {
        return std::visit([&](const auto& node) { return set(node, room); }, formula.node);
    }

private:
    FormulaBox set(const Number& number, double) const { return m_type.text(valueInLocale(number)); }
    FormulaBox set(const Symbol& symbol, double) const { return name(symbol.name, symbol.subscript, {}); }

    FormulaBox set(const Operation& operation, double room) const
    {
        const auto& parts = operation.parts;
        switch (operation.op) {
        case Operator::Sum: {
            std::vector<const Formula*> terms;
            for (const Formula& part : parts)
                terms.push_back(&part);
            return sum(terms, room);
        }
        case Operator::Product:
            return product(parts, room);
        case Operator::Fraction:
            return fraction(parts[0], parts[1], room);
        case Operator::Negative: {
            FormulaBox box = m_type.text(minusSign);
            box.append(m_type.space(bearing_em));
            box.append(part(parts[0], Operator::Negative, 0, room - box.width));
            return box;
        }
        case Operator::Power:
            return power(parts[0], parts[1], room);
        case Operator::Root:
            return m_type.root(set(parts[0], room - m_type.em()));
        case Operator::Function:
            return function(operation, room);
        case Operator::Equals:
            return equation(parts, room);
        }
        return {};
    }

    FormulaBox set(const Series& series, double room) const
    {
        if (!series.isWrittenOut) {
            FormulaBox box = m_type.sumSign(script().text(QString::fromStdString(series.index), Lettering::Italic));
            box.append(m_type.space(argumentSpace_em));
            box.append(part(*series.body, Operator::Product, 0, room - box.width));
            return box;
        }
        if (series.terms.empty())
            return set(Number{0.0, {}}, room);
        const bool isCut = m_isFolded && series.terms.size() > mostTermsFolded;
        const std::size_t count = isCut ? mostTermsFolded - 1 : series.terms.size();
        std::vector<const Formula*> terms;
        for (std::size_t i = 0; i < count; ++i)
            terms.push_back(&series.terms[i].formula);
        return sum(terms, room, int(series.terms.size() - count));
    }

    FormulaBox part(const Formula& formula, Operator op, std::size_t place, double room) const
    {
        if (!needsBrackets(formula, op, place))
            return set(formula, room);
        return m_type.inBrackets(set(formula, room - m_type.em()));
    }

    FormulaType script() const { return m_type.smaller(scriptSize); }

    /// Words under a symbol stand upright, an index is slanted.
    FormulaBox name(const std::string& symbol, const std::string& subscript, FormulaBox superscript) const
    {
        const QString word = QString::fromStdString(subscript);
        FormulaBox box = m_type.text(QString::fromStdString(symbol), Lettering::Italic);
        FormulaBox under;
        if (!word.isEmpty())
            under = script().text(word, word == u'i' || word == u'j' ? Lettering::Italic : Lettering::Upright);
        return m_type.withScripts(std::move(box), std::move(under), std::move(superscript));
    }

    FormulaBox withSign(const QString& sign, double space_em, FormulaBox operand) const
    {
        FormulaBox box = m_type.space(space_em);
        box.append(m_type.text(sign));
        box.append(m_type.space(space_em));
        box.append(std::move(operand));
        return box;
    }

    FormulaBox sum(const std::vector<const Formula*>& terms, double room, int left = 0) const
    {
        std::vector<FormulaBox> pieces;
        for (std::size_t i = 0; i < terms.size(); ++i) {
            const auto positive = i > 0 ? subtracted(*terms[i]) : std::nullopt;
            if (i == 0)
                pieces.push_back(
                    terms.size() + std::size_t(left) == 1 ? set(*terms[i], room) : part(*terms[i], Operator::Sum, i, room));
            else if (positive)
                pieces.push_back(withSign(minusSign, operatorSpace_em, part(*positive, Operator::Negative, 0, room)));
            else
                pieces.push_back(withSign(QStringLiteral("+"), operatorSpace_em, part(*terms[i], Operator::Sum, i, room)));
        }
        if (left > 0) {
            const QString more = Words::tr("and %n more", "terms of a sum", left);
            pieces.push_back(withSign(
                QStringLiteral("+"), operatorSpace_em, m_type.text(QString(QChar(0x2026)) + u' ' + more, Lettering::Quiet)));
        }
        return m_type.flow(std::move(pieces), room, 0.0);
    }

    FormulaBox product(const std::vector<Formula>& parts, double room) const
    {
        std::vector<FormulaBox> pieces;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            FormulaBox factor = part(parts[i], Operator::Product, i, room);
            pieces.push_back(i == 0 ? std::move(factor) : withSign(QString(QChar(0x00B7)), dotSpace_em, std::move(factor)));
        }
        return m_type.flow(std::move(pieces), room, 0.0);
    }

    /// a / b / c and a · b / c / d have one bar: a above b · c.
    FormulaBox fraction(const Formula& above, const Formula& below, double room) const
    {
        if (const auto* inner = asOperation(above, Operator::Fraction))
            return fraction(inner->parts[0], inner->parts[1] * below, room);
        const auto* factors = asOperation(above, Operator::Product);
        if (const auto* last = factors ? asOperation(factors->parts.back(), Operator::Fraction) : nullptr) {
            Operation flat = *factors;
            flat.parts.back() = last->parts[0];
            return fraction(flat, last->parts[1] * below, room);
        }
        const FormulaType type = m_fractions > 0 ? m_type.smaller(nestedFractionSize) : m_type;
        const Setter inside(type, m_isFolded, m_fractions + 1);
        return m_type.fraction(inside.set(above, room - m_type.em()), inside.set(below, room - m_type.em()));
    }

    FormulaBox power(const Formula& base, const Formula& exponent, double room) const
    {
        FormulaBox raised = Setter(script(), m_isFolded, 1).set(exponent, room);
        if (const auto* symbol = std::get_if<Symbol>(&base.node))
            return name(symbol->name, symbol->subscript, std::move(raised));
        return m_type.withScripts(part(base, Operator::Power, 0, room - raised.width), {}, std::move(raised));
    }

    FormulaBox function(const Operation& operation, double room) const
    {
        const auto underscore = operation.function.find('_');
        FormulaBox box = underscore == std::string::npos
                             ? m_type.text(QString::fromStdString(operation.function))
                             : name(operation.function.substr(0, underscore), operation.function.substr(underscore + 1), {});
        box.append(m_type.space(bearing_em));
        FormulaBox arguments;
        for (std::size_t i = 0; i < operation.parts.size(); ++i) {
            if (i > 0) {
                arguments.append(m_type.text(QLocale().decimalPoint() == u"," ? QStringLiteral(";") : QStringLiteral(",")));
                arguments.append(m_type.space(argumentSpace_em));
            }
            arguments.append(set(operation.parts[i], room - box.width - m_type.em()));
        }
        box.append(m_type.inBrackets(std::move(arguments)));
        return box;
    }

    /// Further lines begin under the first sign of equality.
    FormulaBox equation(const std::vector<Formula>& parts, double room) const
    {
        std::vector<FormulaBox> pieces{set(parts[0], room)};
        const double indent = pieces[0].width < 0.4 * room ? pieces[0].width : m_type.em();
        for (std::size_t i = 1; i < parts.size(); ++i)
            pieces.push_back(
                withSign(QStringLiteral("="), operatorSpace_em, set(parts[i], room - indent - equalsWidth_em * m_type.em())));
        return m_type.flow(std::move(pieces), room, indent);
    }

    static constexpr double bearing_em = 0.06;
    static constexpr double equalsWidth_em = 1.3;

    FormulaType m_type;
    bool m_isFolded;
    int m_fractions;  // how many bars stand above or below this
};

}  // namespace

FormulaBox laidOut(const Formula& formula, const QFont& font, double room, bool isFolded)
{
    return Setter(FormulaType(font), isFolded).set(formula, room);
}

FormulaBox fitted(const Formula& formula, const QFont& font, double room, bool isFolded)
{
    FormulaBox box = laidOut(formula, font, room, isFolded);
    if (box.width <= room)
        return box;
    QFont smaller = font;
    smaller.setPixelSize(std::max(smallestType_px, int(QFontInfo(smaller).pixelSize() * room / box.width)));
    return laidOut(formula, smaller, room, isFolded);
}

}  // namespace firn::app
