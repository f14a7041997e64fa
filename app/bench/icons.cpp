#include "bench/icons.h"

#include <QPainter>
#include <QSvgRenderer>

namespace firn::app {

namespace {

QPixmap drawing(const QString& name, int size, const QColor& ink)
{
    QPixmap pixmap(size, size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    QSvgRenderer(QStringLiteral(":/icons/%1.svg").arg(name)).render(&painter);
    painter.setCompositionMode(QPainter::CompositionMode_SourceIn);
    painter.fillRect(pixmap.rect(), ink);
    return pixmap;
}

}  // namespace

QIcon inkedIcon(const QString& name, const QPalette& palette)
{
    QIcon icon;
    for (const int size : {16, 24, 32, 48, 64}) {
        icon.addPixmap(drawing(name, size, palette.color(QPalette::WindowText)));
        icon.addPixmap(drawing(name, size, palette.color(QPalette::Disabled, QPalette::WindowText)), QIcon::Disabled);
    }
    return icon;
}

QIcon programIcon() { return QIcon(QStringLiteral(":/icons/firn.svg")); }

}  // namespace firn::app
