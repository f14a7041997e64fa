#include "tasting/blind_pages.h"

#include "document/version_edits.h"
#include "gauges/wording.h"
#include "recipe/blind_sheet.h"
#include "tasting/tasting_wording.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextCursor>
#include <QTextTable>
#include <cmath>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::BlindPages)
};

constexpr double text_pt = 10.5;
constexpr double title_pt = 15.0;
constexpr double line_px = 280.0;  // of the page's width, at 96 in an inch
constexpr int sharpness = 4;       // dots of the picture for each of these
constexpr int lineHeight_px = 14;
constexpr int usualTicks = 10;
constexpr double mostTicks = 20.0;
constexpr int linesForWords = 2;
constexpr double handSpace_px = 7.0;  // above and below a line that a hand writes on

QTextCharFormat inkOf(double size_pt, bool isBold = false)
{
    QTextCharFormat format;
    format.setFontPointSize(size_pt);
    format.setFontWeight(isBold ? QFont::Bold : QFont::Normal);
    format.setForeground(Qt::black);
    return format;
}

QTextBlockFormat space(double above_px, double below_px)
{
    QTextBlockFormat format;
    format.setTopMargin(above_px);
    format.setBottomMargin(below_px);
    return format;
}

/// One for each whole number where the line has room for them.
int ticksOf(const TastingScale& scale)
{
    const double span = scale.to - scale.from;
    const bool isWhole = std::floor(scale.from) == scale.from && std::floor(scale.to) == scale.to;
    return isWhole && span >= 1.0 && span <= mostTicks ? int(span) : usualTicks;
}

QString nameOfLine(int ticks) { return QStringLiteral("line%1").arg(ticks); }

/// The line on which a taster marks a score: a hand needs no numbers in between.
QImage scaleLine(int ticks)
{
    QImage image(int(line_px) * sharpness, lineHeight_px * sharpness, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setPen(QPen(Qt::black, sharpness));
    const int middle = image.height() / 2, last = image.width() - sharpness;
    painter.drawLine(0, middle, last, middle);
    for (int i = 0; i <= ticks; ++i) {
        const int x = sharpness / 2 + (last - sharpness / 2) * i / ticks;
        const int half = i == 0 || i == ticks ? middle - sharpness : middle / 2;
        painter.drawLine(x, middle - half, x, middle + half);
    }
    return image;
}

void insertLine(QTextCursor cursor, int ticks)
{
    QTextImageFormat format;
    format.setName(nameOfLine(ticks));
    format.setWidth(line_px);
    format.setHeight(lineHeight_px);
    format.setVerticalAlignment(QTextCharFormat::AlignMiddle);
    cursor.insertImage(format);
}

/// Columns of these shares of the page's width, in percent.
QTextTableFormat plainTable(const QList<double>& widths_percent)
{
    QTextTableFormat format;
    format.setBorder(0);
    format.setCellPadding(2);
    format.setCellSpacing(0);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    QList<QTextLength> widths;
    for (const double width : widths_percent)
        widths.append(QTextLength(QTextLength::PercentageLength, width));
    format.setColumnWidthConstraints(widths);
    return format;
}

std::unique_ptr<QTextDocument> blankPages()
{
    auto pages = std::make_unique<QTextDocument>();
    pages->setUndoRedoEnabled(false);
    pages->setDocumentMargin(0);
    return pages;
}

void addScale(QTextCursor& cursor, const TastingScale& scale, const std::vector<std::string>& codes)
{
    const int ticks = ticksOf(scale);
    cursor.document()->addResource(QTextDocument::ImageResource, QUrl(nameOfLine(ticks)), scaleLine(ticks));
    cursor.insertBlock(space(8, 0), inkOf(text_pt, true));
    cursor.insertText(QString::fromStdString(scale.name));
    cursor.insertBlock(space(0, 0), inkOf(text_pt));
    QTextTable* table = cursor.insertTable(int(codes.size()), 4, plainTable({10, 21, 48, 21}));
    for (int row = 0; row < table->rows(); ++row) {
        const auto write = [&](int column, const QString& text, bool isBold = false) {
            table->cellAt(row, column).firstCursorPosition().insertText(text, inkOf(text_pt, isBold));
        };
        write(0, QString::fromStdString(codes[std::size_t(row)]), true);
        write(1, (scoreText(scale.from) + u' ' + QString::fromStdString(scale.low)).trimmed());
        insertLine(table->cellAt(row, 2).firstCursorPosition(), ticks);
        write(3, (scoreText(scale.to) + u' ' + QString::fromStdString(scale.high)).trimmed());
    }
    cursor.movePosition(QTextCursor::End);
}

void addWords(QTextCursor& cursor, const std::vector<std::string>& codes)
{
    cursor.insertBlock(space(10, 0), inkOf(text_pt, true));
    cursor.insertText(Words::tr("In words"));
    QTextTableFormat ruled = plainTable({10, 90});
    ruled.setCellPadding(handSpace_px);
    QTextTable* table = cursor.insertTable(int(codes.size()) * linesForWords, 2, ruled);
    QTextTableCellFormat underlined;
    underlined.setBottomBorder(0.5);
    underlined.setBottomBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    underlined.setBottomBorderBrush(Qt::black);
    for (int row = 0; row < table->rows(); ++row) {
        if (row % linesForWords == 0)
            table->cellAt(row, 0).firstCursorPosition().insertText(
                QString::fromStdString(codes[std::size_t(row / linesForWords)]), inkOf(text_pt, true));
        QTextTableCell line = table->cellAt(row, 1);
        line.setFormat(underlined);
    }
    cursor.movePosition(QTextCursor::End);
}

}  // namespace

std::unique_ptr<QTextDocument> tasterPages(
    const Recipe& recipe, const BlindSheet& sheet, std::size_t tasters, const std::vector<Sentence>& cautions)
{
    auto pages = blankPages();
    QTextCursor cursor(pages.get());
    for (std::size_t taster = 0; taster < tasters; ++taster) {
        QTextBlockFormat first = space(0, 4);
        if (taster > 0)
            first.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
        if (taster == 0)
            cursor.setBlockFormat(first);
        else
            cursor.insertBlock(first);
        cursor.insertText(QString::fromStdString(recipe.title).simplified(), inkOf(title_pt, true));
        cursor.insertBlock(space(0, 8), inkOf(text_pt));
        cursor.insertText(Words::tr("Tasted blind, %1. Taster %2: ______________________________")
                              .arg(sheet.date.empty() ? QStringLiteral("____________") : dateText(sheet.date))
                              .arg(taster + 1),
            inkOf(text_pt));
        const std::vector<std::string> codes = servingOrder(sheet, taster);
        QStringList order;
        for (const std::string& code : codes)
            order.append(QString::fromStdString(code));
        cursor.insertBlock(space(0, 4), inkOf(text_pt));
        cursor.insertText(Words::tr("Taste in this order, with water in between: %1. Mark each line where you find it; do not talk "
                                    "before all have finished.")
                              .arg(order.join(QStringLiteral(", "))),
            inkOf(text_pt));
        cursor.insertBlock(space(0, 2), inkOf(text_pt, true));
        cursor.insertText(
            Words::tr("Ask before you taste if there is anything that you must not eat or drink."), inkOf(text_pt, true));
        for (const Sentence& caution : cautions) {
            cursor.insertBlock(space(0, 2), inkOf(text_pt, true));
            cursor.insertText(translated(caution), inkOf(text_pt, true));
        }
        for (const TastingScale& scale : recipe.scales)
            addScale(cursor, scale, codes);
        addWords(cursor, codes);
    }
    return pages;
}

std::unique_ptr<QTextDocument> keyPage(const Recipe& recipe, const BlindSheet& sheet, std::size_t tasters)
{
    auto pages = blankPages();
    QTextCursor cursor(pages.get());
    cursor.setBlockFormat(space(0, 8));
    cursor.insertText(Words::tr("Key: %1").arg(QString::fromStdString(recipe.title).simplified()), inkOf(title_pt, true));
    cursor.insertBlock(space(0, 8), inkOf(text_pt));
    cursor.insertText(
        Words::tr("For whoever fills the cups and does not taste. Equal cups, equal portions, equally cold."), inkOf(text_pt));
    for (const CodedSample& sample : sheet.samples) {
        cursor.insertBlock(space(0, 4), inkOf(text_pt));
        cursor.insertText(Words::tr("%1: %2", "a cup and what was in it")
                              .arg(QString::fromStdString(sample.code), nameOfVersion(recipe, sample.version).simplified()),
            inkOf(text_pt, true));
    }
    for (std::size_t taster = 0; taster < tasters; ++taster) {
        QStringList order;
        for (const std::string& code : servingOrder(sheet, taster))
            order.append(QString::fromStdString(code));
        cursor.insertBlock(space(taster == 0 ? 8 : 0, 2), inkOf(text_pt));
        cursor.insertText(Words::tr("Taster %1 gets %2").arg(taster + 1).arg(order.join(QStringLiteral(", "))), inkOf(text_pt));
    }
    return pages;
}

Result<void> savePdf(const QTextDocument& pages, const QString& file)
{
    QBuffer contents;
    contents.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&contents);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins({});  // the document brings its own
        writer.setTitle(QCoreApplication::applicationName());
        pages.print(&writer);
    }
    QSaveFile target(file);
    if (target.open(QIODevice::WriteOnly) && target.write(contents.data()) == contents.size() && target.commit())
        return {};
    return failure(phrase(
        "{0} could not be written ({1}): save it in another place.", file.toStdString(), target.errorString().toStdString()));
}

}  // namespace firn::app
