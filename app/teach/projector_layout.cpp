#include "teach/projector_layout.h"

#include "gauges/wording.h"
#include "teach/projected_blocks.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <span>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::Projector)
};

constexpr double pictureGap_share = 0.03;  // of the width, between the text and a picture beside it

class Composer {
public:
    Composer(const LessonPage& page, QSize screen, const QFont& family, const PictureNeed& picture, const HiddenAnswers& hidden)
        : m_page(page)
        , m_type(family, screen)
        , m_picture(picture)
        , m_hidden(hidden)
        , m_content(QRectF(QPointF(0, 0), QSizeF(screen)).adjusted(m_type.margin, m_type.margin, -m_type.margin, -m_type.margin))
    {
        m_content.setBottom(m_content.bottom() - QFontMetricsF(m_type.quiet).height());  // where the number of the page stands
    }

    std::vector<ProjectedPart> parts()
    {
        m_titleHeight = title(8, 9).box.height() + m_type.gap;
        const auto quiet = [&](const Sentence& sentence, const QFont& font, double room, ProjectedKind kind) {
            return setter().text(projectedText(sentence), font, room, Lettering::Quiet, kind).front();
        };
        m_idea = quiet(m_page.idea, m_type.idea, m_content.width(), ProjectedKind::Idea);
        if (m_page.caption)
            m_caption = quiet(*m_page.caption, m_type.quiet, pictureWidth(), ProjectedKind::Text);
        m_besideSteps = setter().steps(m_page.steps, textWidth());
        m_conclusions = setter().conclusions(m_page.conclusions, textWidth());
        startFirstPart();
        if (fitWithPicture(0))
            addWithPicture(0);
        else
            splitIntoParts();
        for (std::size_t i = 0; i < m_parts.size(); ++i) {
            addTitle(m_parts[i], i);
            m_parts[i].lastStep = std::max(0, m_parts[i].lastStep);
        }
        return std::move(m_parts);
    }

private:
    bool hasPicture() const { return m_page.picture != LessonPicture::None; }
    bool isBeside() const { return hasPicture() && !m_picture.isStrip; }
    double pictureWidth() const { return isBeside() ? std::floor(m_content.width() * m_picture.shareOfWidth) : m_content.width(); }
    double besidePicture() const { return m_content.width() - pictureWidth() - pictureGap_share * m_content.width(); }

    /// The same title is set with and without "(2 of 3)", so that all parts begin at the same height.
    ProjectedBlock title(std::size_t part, std::size_t count) const
    {
        const QString name = projectedText(m_page.title);
        const QString text =
            count < 2 ? name : Words::tr("%1 (%2\u00a0of\u00a0%3)", "a page and its parts").arg(name).arg(part + 1).arg(count);
        return setter().text(text, m_type.title, m_content.width(), Lettering::Upright, ProjectedKind::Title).front();
    }

    BlockSetter setter() const { return {m_type, m_hidden, tallest()}; }
    /// What a further part has for its blocks.
    double tallest() const { return 0.7 * m_content.height(); }

    static double heightOf(const BlockGroup& group, double gap)
    {
        double height = -gap;
        for (const ProjectedBlock& block : group)
            height += std::ceil(block.box.height()) + gap;
        return height;
    }

    double heightOf(std::span<const BlockGroup> groups) const
    {
        double height = 0.0;
        for (const BlockGroup& group : groups)
            height += heightOf(group, m_type.smallGap) + m_type.gap;
        return height;
    }

    double stripHeight() const { return hasPicture() && m_picture.isStrip ? m_picture.height + captionHeight() : 0.0; }
    double captionHeight() const { return m_caption ? m_caption->box.height() + m_type.smallGap : 0.0; }
    double textWidth() const { return isBeside() ? besidePicture() : m_content.width(); }

    /// Whether the steps from this one on, the picture and what follows from them fit what is left of the part.
    bool fitWithPicture(std::size_t firstStep) const
    {
        const double strip = stripHeight() > 0.0 ? stripHeight() + m_type.gap : 0.0;
        const std::span steps = std::span(m_besideSteps).subspan(firstStep);
        return heightOf(steps) + heightOf(m_conclusions) + strip - m_type.gap <= m_bottom - m_y;
    }

    void addWithPicture(std::size_t firstStep)
    {
        addGroups(std::span(m_besideSteps).subspan(firstStep));
        if (hasPicture())
            placePicture(++m_parts.back().lastStep);
        addGroups(m_conclusions);
    }

    /// The steps as wide as the page, and the last ones together with the picture and what follows from them: as many as it takes to need no
    /// further part, so that no sentence is left alone.
    void splitIntoParts()
    {
        if (m_besideSteps.empty()) {  // the picture comes first, and the title is not left alone
            startFirstPart();
            addWithPicture(0);
            return;
        }
        beginPart(false);
        std::size_t firstOfLast = m_besideSteps.size();
        while (firstOfLast > 1 && fitWithPicture(firstOfLast - 1))
            --firstOfLast;
        const std::vector<BlockGroup> steps = isBeside() ? setter().steps(m_page.steps, m_content.width()) : m_besideSteps;
        const std::size_t fewest = partsFor(std::span(steps).first(firstOfLast));
        while (firstOfLast + 1 < steps.size() && partsFor(std::span(steps).first(firstOfLast + 1)) == fewest)
            ++firstOfLast;
        startFirstPart();
        addGroups(std::span(steps).first(firstOfLast));
        beginPart(false);
        addWithPicture(firstOfLast);
    }

    std::size_t partsFor(std::span<const BlockGroup> steps)
    {
        startFirstPart();
        addGroups(steps);
        return m_parts.size();
    }

    void startFirstPart()
    {
        m_parts.clear();
        beginPart(true);
    }

    void beginPart(bool isFirst)
    {
        m_parts.emplace_back().lastStep = -1;  // what comes first is there on arrival
        m_y = m_content.top() + m_titleHeight;
        m_bottom = m_content.bottom();
        m_top = m_y;
        if (!isFirst)
            return;
        place(m_idea, m_y, 0);
        m_y += m_idea.box.height() + m_type.gap;
        m_top = m_y;
    }

    void placePicture(int shownFrom)
    {
        const double captionRoom = captionHeight();
        QRectF place = isBeside()
                           ? QRectF(m_content.right() - pictureWidth(), m_top, pictureWidth(), m_bottom - m_top - captionRoom)
                           : QRectF(m_content.left(), m_y, m_content.width(), m_picture.height);
        m_parts.back().items.push_back({ProjectedKind::Picture, place.toRect(), {}, {}, shownFrom});
        if (m_caption)
            this->place(*m_caption, place.bottom() + m_type.smallGap, shownFrom, place.left());
        if (!isBeside())
            m_y += stripHeight() + m_type.gap;
    }

    void addGroups(std::span<const BlockGroup> groups)
    {
        for (const BlockGroup& group : groups) {
            const bool isFresh = m_y == m_top;
            if (!isFresh && m_y + heightOf(group, m_type.smallGap) > m_bottom)
                beginPart(false);
            int step = ++m_parts.back().lastStep;
            for (const ProjectedBlock& block : group) {
                const double height = std::ceil(block.box.height());
                if (m_y > m_top && m_y + height > m_bottom) {  // a step that is higher than the page
                    beginPart(false);
                    step = ++m_parts.back().lastStep;
                }
                place(block, m_y, step);
                m_y += height + m_type.smallGap;
            }
            m_y += m_type.gap - m_type.smallGap;
        }
    }

    void place(const ProjectedBlock& block, double y, int shownFrom, std::optional<double> left = {})
    {
        const QRect place(qRound(left.value_or(m_content.left())), int(std::ceil(y)), int(std::ceil(block.box.width)),
            int(std::ceil(block.box.height())));
        m_parts.back().items.push_back({block.kind, place, block.box, block.spoken, shownFrom});
    }

    void addTitle(ProjectedPart& part, std::size_t index)
    {
        const ProjectedBlock block = title(index, m_parts.size());
        const QRect place(
            qRound(m_content.left()), qRound(m_content.top()), int(std::ceil(block.box.width)), int(std::ceil(block.box.height())));
        part.items.insert(part.items.begin(), {block.kind, place, block.box, block.spoken, 0});
    }

    const LessonPage& m_page;
    ProjectorType m_type;
    PictureNeed m_picture;
    const HiddenAnswers& m_hidden;
    QRectF m_content;
    double m_titleHeight = 0.0;
    ProjectedBlock m_idea;
    std::optional<ProjectedBlock> m_caption;
    std::vector<BlockGroup> m_besideSteps;  // as wide as a picture leaves room for
    std::vector<BlockGroup> m_conclusions;
    std::vector<ProjectedPart> m_parts;
    double m_y = 0.0;    // where the next block goes
    double m_top = 0.0;  // of the blocks of this part
    double m_bottom = 0.0;
};

}  // namespace

std::vector<ProjectedPart> projectedParts(
    const LessonPage& page, QSize screen, const QFont& family, const PictureNeed& picture, const HiddenAnswers& hidden)
{
    return Composer(page, screen, family, picture, hidden).parts();
}

}  // namespace firn::app
