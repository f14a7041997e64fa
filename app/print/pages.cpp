#include "print/pages.h"

#include "formulas/formula_picture.h"
#include "gauges/palette.h"
#include "print/strips.h"

#include <QApplication>
#include <QFontMetricsF>
#include <QPainter>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Handout)
};

// Common practice: printers need 5 mm, punched holes 15.
constexpr double margin_mm = 18.0;
constexpr double type_pt = 10.5;
constexpr double pointsPerInch = 72.0;
constexpr double mmPerInch = 25.4;
constexpr double headGap_em = 0.8;  // between the head of a page and what stands on it

QFont textFont()
{
    QFont font = QApplication::font();
    font.setPixelSize(qRound(type_pt * dotsPerInch / pointsPerInch));
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

/// The place between head and foot of a page.
QRectF bodyOf(const Paper& paper, const QFont& font)
{
    const double edge = QFontMetricsF(fontOf(TextStyle::Quiet, font)).height() + headGap_em * font.pixelSize();
    return paper.inside.adjusted(0.0, edge, 0.0, -edge);
}

/// Puts strips under each other, on as many pages as they need.
class Stack {
public:
    explicit Stack(const QRectF& body)
        : m_body(body)
        , m_pages(1)
    {
    }

    void add(const std::vector<Strip>& strips)
    {
        for (std::size_t i = 0; i < strips.size(); ++i) {
            if (!isAtTop() && !fits(strips, i)) {
                turn();
                for (const Strip& strip : strips[i].headOverleaf)
                    place(strip);
            }
            place(strips[i]);
        }
    }

    std::vector<PrintedPage> take() { return std::move(m_pages); }

private:
    bool isAtTop() const { return m_y == 0.0; }

    void turn()
    {
        m_pages.emplace_back();
        m_y = 0.0;
    }

    /// The strip, with those that it must not be parted from as long as a page holds them.
    bool fits(const std::vector<Strip>& strips, std::size_t first) const
    {
        double height = strips[first].height;
        double together = height;
        for (std::size_t i = first; strips[i].keepsWithNext && i + 1 < strips.size(); ++i) {
            together += strips[i + 1].spaceBefore + strips[i + 1].height;
            if (together > m_body.height())
                break;
            height = together;
        }
        return m_y + strips[first].spaceBefore + height <= m_body.height();
    }

    void place(const Strip& strip)
    {
        if (!isAtTop())
            m_y += strip.spaceBefore;
        const QPointF at = m_body.topLeft() + QPointF(0.0, m_y);
        for (PrintMark mark : strip.marks) {
            mark.place.translate(at);
            if (auto* text = std::get_if<PrintText>(&mark.ink))
                text->baseline += at;
            m_pages.back().marks.push_back(std::move(mark));
        }
        m_y += strip.height;
    }

    QRectF m_body;
    std::vector<PrintedPage> m_pages;
    double m_y = 0.0;
};

void putText(PrintedPage& page, const QString& text, const QFont& font, QPointF corner, bool isRight)
{
    if (text.isEmpty())
        return;
    PrintMark mark = markOf(text, font, true);
    const QPointF at = isRight ? corner - QPointF(mark.place.width(), 0.0) : corner;
    mark.place.translate(at);
    std::get<PrintText>(mark.ink).baseline += at;
    page.marks.push_back(std::move(mark));
}

void putHeadAndFoot(std::vector<PrintedPage>& pages, const Section& section, const Paper& paper, const QFont& text)
{
    const QFont font = fontOf(TextStyle::Quiet, text);
    const QFontMetricsF metrics(font);
    const QRectF& inside = paper.inside;
    const double footTop = inside.bottom() - metrics.height();
    const double room = inside.width() - metrics.horizontalAdvance(section.number) - text.pixelSize();
    const QString name = metrics.elidedText(QString(section.name).simplified(), Qt::ElideRight, room);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        putText(pages[i], name, font, inside.topLeft(), false);
        putText(pages[i], section.number, font, inside.topRight(), true);
        putText(pages[i], Words::tr("Page %1 of %2").arg(i + 1).arg(pages.size()), font, {inside.right(), footTop}, true);
    }
}

}  // namespace

Paper::Paper(const QPageLayout& layout)
    : size(layout.fullRect(QPageLayout::Inch).size() * dotsPerInch)
{
    constexpr double margin = margin_mm / mmPerInch * dotsPerInch;
    inside = QRectF({0.0, 0.0}, size).adjusted(margin, margin, -margin, -margin);
}

std::vector<PrintedPage> pagesOf(const Handout& handout, const Paper& paper)
{
    const QFont font = textFont();
    const QRectF body = bodyOf(paper, font);
    std::vector<PrintedPage> pages;
    for (const Section& section : handout.sections) {
        std::vector<Strip> strips;
        for (const Block& block : section.blocks)
            std::ranges::move(stripsOf(block, font, body.size()), std::back_inserter(strips));
        Stack stack(body);
        stack.add(strips);
        std::vector<PrintedPage> own = stack.take();
        putHeadAndFoot(own, section, paper, font);
        std::ranges::move(own, std::back_inserter(pages));
    }
    return pages;
}

void paint(QPainter& painter, const PrintedPage& page)
{
    static const QColor ink(Qt::black), quietInk(0x44, 0x44, 0x44);
    GaugeColours colours{};
    colours.ink = ink;
    colours.quietInk = quietInk;
    for (const PrintMark& mark : page.marks) {
        if (const auto* text = std::get_if<PrintText>(&mark.ink)) {
            painter.setFont(text->font);
            painter.setPen(text->isQuiet ? quietInk : ink);
            painter.drawText(text->baseline, text->text);
        } else if (const auto* formula = std::get_if<FormulaBox>(&mark.ink)) {
            paint(painter, *formula, mark.place.topLeft(), colours);
        } else {
            painter.fillRect(mark.place, ink);
        }
    }
}

}  // namespace firn::app
