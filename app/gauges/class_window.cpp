#include "gauges/class_window.h"

#include "gauges/marked_lines.h"
#include "gauges/sugar_ice_picture.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"
#include "texture/texture_class.h"

#include <QKeyEvent>
#include <QVBoxLayout>

namespace firn::app {

namespace {

std::vector<MarkedLine> linesOf(const std::vector<Sentence>& sentences)
{
    std::vector<MarkedLine> lines;
    for (const Sentence& each : sentences)
        lines.push_back({Mark::None, translated(each)});
    return lines;
}

/// As tall as its lines, as far as there is room.
void fitHeight(MarkedLines& lines, int width_px)
{
    const std::vector<int> tops = lines.topsFor(width_px);
    lines.setMaximumHeight(tops.empty() ? 0 : tops.back() + gridStep);
}

}  // namespace

ClassWindow::ClassWindow(QWidget* parent)
    : QWidget(parent, Qt::Window)
    , m_reasons(new MarkedLines)
    , m_picture(new SugarIcePicture)
    , m_bands(new MarkedLines)
{
    m_reasons->setAccessibleName(tr("Why this class"));
    m_bands->setAccessibleName(tr("Why these bands of sugar"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(groupSpace, groupSpace, groupSpace, groupSpace);
    layout->setSpacing(groupSpace);
    layout->addWidget(m_reasons, 1);
    layout->addWidget(m_picture, 3);
    layout->addWidget(m_bands, 1);
    resize(fontMetrics().averageCharWidth() * 96, lineHeight(font()) * 38);
}

void ClassWindow::showTexture(const Texture& texture, Celsius serveAt)
{
    setWindowTitle(tr("Why: %1").arg(translatedName(nameOf(texture.textureClass))));
    m_reasons->setLines(linesOf(reasonsForClass(texture)));
    const bool hasBands = texture.willFreeze && sugars(texture.mix).value > 0.0;
    m_picture->setVisible(hasBands);
    m_bands->setVisible(hasBands);
    if (hasBands) {
        const SugarIceCurve curve = sugarIceCurve(texture.mix, texture.textureClass, serveAt);
        m_picture->showCurve(curve);
        std::vector<Sentence> said = saidBy(curve);
        for (Sentence& each : standingInBand(texture.mix, texture.textureClass))
            said.push_back(std::move(each));
        m_bands->setLines(linesOf(said));
    }
    fitHeight(*m_reasons, width() - 2 * groupSpace);
    fitHeight(*m_bands, width() - 2 * groupSpace);
}

void ClassWindow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        close();
    else
        QWidget::keyPressEvent(event);
}

}  // namespace firn::app
