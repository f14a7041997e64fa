#include "bench/appearance.h"

#include "bench/clear_frames.h"
#include "document/places.h"
#include "gauges/palette.h"

#include <QApplication>
#include <QStyle>
#include <QStyleFactory>
#include <memory>

namespace firn::app {

namespace {

const QString appearanceKey = QStringLiteral("appearance");

QColor between(const QColor& a, const QColor& b, double shareOfB)
{
    const auto mixed = [shareOfB](int from, int to) { return int(from + (to - from) * shareOfB); };
    return QColor(mixed(a.red(), b.red()), mixed(a.green(), b.green()), mixed(a.blue(), b.blue()));
}

/// Where no desktop has a say, Qt falls back on the colours of its own style.
bool isBareDesktop()
{
    static const bool isBare = [] {
        const std::unique_ptr<QStyle> style(QStyleFactory::create(QStringLiteral("Fusion")));
        return QApplication::palette().color(QPalette::Window) == style->standardPalette().color(QPalette::Window);
    }();
    return isBare;
}

}  // namespace

QPalette framePalette(bool isDark)
{
    const GaugeColours colours =
        gaugeColours(isDark ? QPalette(Qt::white, Qt::black, Qt::black, Qt::black, Qt::black, Qt::white, Qt::black)
                            : QPalette(Qt::black, Qt::white, Qt::white, Qt::white, Qt::white, Qt::black, Qt::white));
    const QColor base = isDark ? between(colours.ground, colours.ink, 0.05) : QColor(Qt::white);
    const QColor button = between(colours.ground, colours.ink, 0.06);

    QPalette palette(button, colours.ground);
    palette.setColor(QPalette::WindowText, colours.ink);
    palette.setColor(QPalette::Base, base);
    palette.setColor(QPalette::AlternateBase, colours.ground);
    palette.setColor(QPalette::Text, colours.ink);
    palette.setColor(QPalette::ButtonText, colours.ink);
    palette.setColor(QPalette::BrightText, colours.caution);
    palette.setColor(QPalette::PlaceholderText, colours.quietInk);
    palette.setColor(QPalette::ToolTipBase, base);
    palette.setColor(QPalette::ToolTipText, colours.ink);
    palette.setColor(QPalette::Highlight, colours.curve);
    palette.setColor(QPalette::HighlightedText, colours.ground);
    palette.setColor(QPalette::Link, colours.curve);
    palette.setColor(QPalette::LinkVisited, colours.curve);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, between(colours.ground, colours.ink, 0.45));
    return palette;
}

void useClearFrames() { QApplication::setStyle(new ClearFrames); }

Appearance chosenAppearance()
{
    const QString name = settings().value(appearanceKey).toString();
    return name == QLatin1String("light")  ? Appearance::Light
           : name == QLatin1String("dark") ? Appearance::Dark
                                           : Appearance::System;
}

void chooseAppearance(Appearance appearance)
{
    settings().setValue(appearanceKey, appearance == Appearance::Light  ? QStringLiteral("light")
                                       : appearance == Appearance::Dark ? QStringLiteral("dark")
                                                                        : QStringLiteral("system"));
    dress(appearance);
}

void dress(Appearance appearance)
{
    const bool isBare = isBareDesktop();
    if (appearance == Appearance::System && !isBare)
        QApplication::setPalette(QPalette());
    else
        QApplication::setPalette(framePalette(appearance == Appearance::Dark));
}

}  // namespace firn::app
