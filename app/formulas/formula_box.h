// Formulas as type: pieces of text and strokes at their places, put together to fractions, roots, brackets and lines.
#pragma once

#include <QFont>
#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <vector>

namespace firn::app {

/// A piece of text, or a filled shape.
struct FormulaMark {
    QRectF bounds;  // of its ink
    QString text;
    QFont font;
    QPointF baseline;
    QPainterPath shape;
    bool isQuiet = false;
};

/// Marks around a baseline that begins at (0, 0).
struct FormulaBox {
    double width = 0.0;
    double ascent = 0.0;
    double descent = 0.0;
    std::vector<FormulaMark> marks;
    bool hasLines = false;  // in several lines, so that what follows must not stand after the first one

    double height() const { return ascent + descent; }
    /// Puts the other's marks here, and grows to hold them.
    void add(FormulaBox other, QPointF at);
    /// As `add`, at the right end of the baseline.
    void append(FormulaBox other);
};

enum class Lettering { Upright, Italic, Quiet };

/// Sets boxes in one size of type.
class FormulaType {
public:
    explicit FormulaType(const QFont& font);
    FormulaType smaller(double factor) const;

    double em() const { return m_em; }

    FormulaBox text(const QString& text, Lettering lettering = Lettering::Upright) const;
    FormulaBox space(double ems) const;
    FormulaBox inBrackets(FormulaBox inside) const;
    FormulaBox fraction(FormulaBox above, FormulaBox below) const;
    FormulaBox root(FormulaBox radicand) const;
    /// Subscript and superscript, one above the other; either may be empty.
    FormulaBox withScripts(FormulaBox base, FormulaBox subscript, FormulaBox superscript) const;
    FormulaBox sumSign(FormulaBox index) const;
    /// The pieces in a row, and in more rows, indented, where `room` is too narrow for one.
    FormulaBox flow(std::vector<FormulaBox> pieces, double room, double indent) const;

private:
    QFont m_font;
    double m_em = 0.0;
    double m_stroke = 0.0;
    double m_axis = 0.0;  // above the baseline: where a minus stands, and the bar of a fraction
    double m_xHeight = 0.0;
};

}  // namespace firn::app
