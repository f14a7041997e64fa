#include "compare/comparison_document.h"

#include "compare/attribution_wording.h"
#include "compare/comparison_lines.h"
#include "gauges/wording.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPrinter>
#include <QRegularExpression>
#include <QTextCursor>
#include <QTextTable>
#include <algorithm>

namespace firn::app {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(firn::app::ComparisonDocument)
};

constexpr double textSize_pt = 9.0;
constexpr double titleSize_pt = 14.0;
constexpr double headingSize_pt = 11.0;
constexpr double hairline_pt = 0.5;

QTextCharFormat letters(double size_pt, bool isHeavy = false)
{
    QTextCharFormat format;
    format.setFontPointSize(size_pt);
    format.setFontWeight(isHeavy ? QFont::DemiBold : QFont::Normal);
    format.setForeground(Qt::black);
    return format;
}

QTextBlockFormat spaced(double before)
{
    QTextBlockFormat format;
    format.setTopMargin(before);
    format.setBottomMargin(2.0);
    return format;
}

void paragraph(QTextCursor& cursor, const QString& text, const QTextCharFormat& format, double before = 2.0)
{
    cursor.movePosition(QTextCursor::End);
    cursor.insertBlock(spaced(before), format);
    cursor.insertText(text, format);
}

void fill(QTextTable& table, int row, int column, const QString& text, const QTextCharFormat& format, Qt::Alignment alignment,
    double before = 0.0)
{
    QTextCursor cursor = table.cellAt(row, column).firstCursorPosition();
    QTextBlockFormat block;
    block.setAlignment(alignment);
    block.setTopMargin(before);
    cursor.setBlockFormat(block);
    cursor.insertText(text, format);
}

/// With a header that stays with the first row below it and stands again on each page.
QTextTable* tableOf(QTextCursor& cursor, int rows, int columns, int headerRows, double border)
{
    QTextTableFormat format;
    format.setBorder(border);
    format.setBorderBrush(Qt::gray);
    format.setBorderCollapse(true);
    format.setCellPadding(border > 0.0 ? 3.0 : 0.0);
    format.setCellSpacing(0.0);
    format.setHeaderRowCount(headerRows);
    format.setTopMargin(border > 0.0 ? 4.0 : 0.0);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    cursor.movePosition(QTextCursor::End);
    return cursor.insertTable(rows, columns, format);
}

/// A heading and paragraphs, of which the first one stays with it.
void insertSection(QTextCursor& cursor, const QString& heading, const QStringList& paragraphs)
{
    QTextTable* table = tableOf(cursor, int(paragraphs.size()) + 1, 1, 1, 0.0);
    fill(*table, 0, 0, heading, letters(headingSize_pt, true), Qt::AlignLeft, 10.0);
    for (int row = 0; row < int(paragraphs.size()); ++row)
        fill(*table, row + 1, 0, paragraphs.at(row), letters(textSize_pt), Qt::AlignLeft, 2.0);
}

/// A heading over the names of the columns.
void insertCells(
    QTextCursor& cursor, const QString& heading, const QStringList& columns, const std::vector<const ComparisonLine*>& lines)
{
    constexpr int headers = 2;
    QTextTable* table = tableOf(cursor, int(lines.size()) + headers, int(columns.size()), headers, hairline_pt);
    table->mergeCells(0, 0, 1, int(columns.size()));
    fill(*table, 0, 0, heading, letters(headingSize_pt, true), Qt::AlignLeft);
    const auto alignment = [](int column) {
        return column == 0 || (column > 2 && column % 2 == 1) ? Qt::AlignLeft : Qt::AlignRight;
    };
    for (int column = 0; column < int(columns.size()); ++column)
        fill(*table, 1, column, columns.at(column), letters(textSize_pt, true), alignment(column));
    for (int row = 0; row < int(lines.size()); ++row) {
        const ComparisonLine& line = *lines[std::size_t(row)];
        fill(*table, row + headers, 0, line.label, letters(textSize_pt), Qt::AlignLeft);
        for (int i = 0; i < int(line.cells.size()) && i + 1 < int(columns.size()); ++i)
            fill(*table, row + headers, i + 1, line.cells.at(i), letters(textSize_pt, line.isOther[std::size_t(i)]),
                alignment(i + 1));
    }
}

void insertAttribution(QTextCursor& cursor, const Comparison& comparison, std::size_t index)
{
    const Attribution& attribution = comparison.attributions[index];
    const std::string &from = comparison.sides.front().name, &to = comparison.sides[index + 1].name;
    QStringList sentences;
    for (const AttributedKind& kind : attributedKinds())
        sentences << translated(inASentence(attribution, kind, from, to));
    insertSection(
        cursor, Words::tr("What did it: %1 → %2").arg(QString::fromStdString(from), QString::fromStdString(to)), sentences);
    if (attribution.changes.empty())
        return;
    const int rows = int(attribution.changes.size()) + 2;
    QTextTable* table = tableOf(cursor, rows, int(attributedKinds().size()) + 1, 1, hairline_pt);
    fill(*table, 0, 0, Words::tr("Change"), letters(textSize_pt, true), Qt::AlignLeft);
    fill(*table, rows - 1, 0, Words::tr("together"), letters(textSize_pt, true), Qt::AlignLeft);
    for (int row = 0; row + 2 < rows; ++row)
        fill(*table, row + 1, 0, translated(attribution.changes[std::size_t(row)].what), letters(textSize_pt), Qt::AlignLeft);
    int column = 1;
    for (const AttributedKind& kind : attributedKinds()) {
        const AttributedFigure& figure = attribution.*kind.figure;
        const auto number = [&](double part) {
            return figure.whyNone ? Words::tr("none") : withUnit(changeText(part, kind.decimals), translatedName(kind.unit));
        };
        const std::vector<double> parts = roundedParts(figure, kind.decimals);
        fill(*table, 0, column, translatedName(kind.label), letters(textSize_pt, true), Qt::AlignRight);
        for (int row = 0; row + 2 < rows; ++row)
            fill(*table, row + 1, column, number(figure.whyNone ? 0.0 : parts[std::size_t(row)]), letters(textSize_pt),
                Qt::AlignRight);
        fill(*table, rows - 1, column, number(figure.whyNone ? 0.0 : shownWhole(figure, kind.decimals)), letters(textSize_pt, true),
            Qt::AlignRight);
        ++column;
    }
}

}  // namespace

std::unique_ptr<QTextDocument> comparisonDocument(const QString& title, const Comparison& comparison)
{
    auto document = std::make_unique<QTextDocument>();
    QTextCursor cursor(document.get());
    cursor.insertText(title, letters(titleSize_pt, true));
    for (const firn::Sentence& sentence : comparison.fairness)
        paragraph(cursor, translated(sentence), letters(textSize_pt));
    const QStringList columns = columnNames(comparison);
    QString heading;
    std::vector<const ComparisonLine*> cells;
    QStringList sentences;
    const auto flush = [&] {
        if (!cells.empty())
            insertCells(cursor, heading, columns, std::exchange(cells, {}));
        else if (!sentences.isEmpty())
            insertSection(cursor, heading, std::exchange(sentences, {}));
    };
    const std::vector<ComparisonLine> lines = linesOf(comparison);
    for (const ComparisonLine& line : lines) {
        if (line.kind == ComparisonLine::Section) {
            flush();
            heading = line.label;
        } else if (line.kind == ComparisonLine::Cells) {
            cells.push_back(&line);
        } else {
            sentences << line.label;
        }
    }
    flush();
    for (std::size_t i = 0; i < comparison.attributions.size(); ++i)
        insertAttribution(cursor, comparison, i);
    return document;
}

QString fileNameFrom(const QString& title)
{
    constexpr qsizetype longest = 80;
    static const QRegularExpression refused(QStringLiteral("\\s*[\\\\/:*?\"<>|\\p{C}]+\\s*"));
    QString name = title.simplified().left(longest);
    name.replace(refused, QStringLiteral(" "));
    return name.trimmed();
}

void printComparison(QPrinter& printer, const QString& title, const Comparison& comparison)
{
    const auto document = comparisonDocument(title, comparison);
    document->print(&printer);
}

void askAndPrint(QWidget& near, const QString& title, const Comparison& comparison)
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(fileNameFrom(title));
    if (comparison.sides.size() > fewestCompared)
        printer.setPageOrientation(QPageLayout::Landscape);
    QPrintDialog dialog(&printer, &near);
    if (dialog.exec() == QDialog::Accepted)
        printComparison(printer, title, comparison);
}

}  // namespace firn::app
