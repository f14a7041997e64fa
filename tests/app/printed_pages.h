// What stands on printed pages, for tests: their text, faults of their layout, and what a PDF says of itself.
#pragma once

#include "print/pages.h"

#include <QFile>
#include <QRegularExpression>
#include <gtest/gtest.h>

namespace firn::app {

inline Paper upright(QPageSize::PageSizeId size) { return Paper(QPageLayout(QPageSize(size), QPageLayout::Portrait, {})); }

inline const Paper a4 = upright(QPageSize::A4);

inline QStringList linesOf(const PrintedPage& page)
{
    QStringList lines;
    for (const PrintMark& mark : page.marks) {
        if (const auto* line = std::get_if<PrintText>(&mark.ink))
            lines << line->text;
    }
    return lines;
}

inline QString textOf(const PrintedPage& page) { return linesOf(page).join(u'\n') + u'\n'; }

inline QString textOf(const std::vector<PrintedPage>& pages)
{
    QString text;
    for (const PrintedPage& page : pages)
        text += textOf(page);
    return text;
}

/// Ink that leaves the margins, or that stands on other ink.
inline std::string faultOf(const std::vector<PrintedPage>& pages, const Paper& paper)
{
    constexpr double hair = 1.0;
    const QRectF inside = paper.inside.adjusted(-hair, -hair, hair, hair);
    for (const PrintedPage& page : pages) {
        for (std::size_t i = 0; i < page.marks.size(); ++i) {
            const QRectF place = page.marks[i].place.adjusted(hair, hair, -hair, -hair);
            if (!inside.contains(page.marks[i].place))
                return "outside of the margins on a page with " + textOf(page).left(200).toStdString();
            for (std::size_t j = i + 1; j < page.marks.size(); ++j) {
                if (place.intersects(page.marks[j].place.adjusted(hair, hair, -hair, -hair)))
                    return "overlap on a page with " + textOf(page).left(200).toStdString();
            }
        }
    }
    return {};
}

inline QByteArray contentsOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

inline qsizetype pagesIn(const QByteArray& pdf) { return QString::fromLatin1(pdf).count(QRegularExpression("/Type /Page\\b")); }

/// Width and height of the first page in points.
inline QSize paperOf(const QByteArray& pdf)
{
    static const QRegularExpression box("/MediaBox \\[0 0 ([\\d.]+) ([\\d.]+)\\]");
    const auto found = box.match(QString::fromLatin1(pdf));
    return QSizeF(found.captured(1).toDouble(), found.captured(2).toDouble()).toSize();
}

inline constexpr QSize a4_pt{595, 842};
inline constexpr QSize letter_pt{612, 792};

}  // namespace firn::app
