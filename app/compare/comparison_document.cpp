#include "compare/comparison_document.h"

#include "compare/attribution_wording.h"
#include "compare/comparison_lines.h"
#include "gauges/wording.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPrinter>
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

void fill(QTextTable& table, int row, int column, const QString& text, bool isHeavy, Qt::Alignment alignment)
{
    QTextCursor cursor = table.cellAt(row, column).firstCursorPosition();
    QTextBlockFormat block;
    block.setAlignment(alignment);
    cursor.setBlockFormat(block);
    cursor.insertText(text, letters(textSize_pt, isHeavy));
}

QTextTable* tableOf(QTextCursor& cursor, int rows, int columns)
{
    QTextTableFormat format;
    format.setBorder(0.5);
    format.setBorderBrush(Qt::gray);
    format.setBorderCollapse(true);
    format.setCellPadding(3.0);
    format.setCellSpacing(0.0);
    format.setHeaderRowCount(1);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    cursor.movePosition(QTextCursor::End);
    cursor.insertBlock(spaced(4.0));
    return cursor.insertTable(rows, columns, format);
}

void insertCells(QTextCursor& cursor, const QStringList& columns, const std::vector<const ComparisonLine*>& lines)
{
    QTextTable* table = tableOf(cursor, int(lines.size()) + 1, int(columns.size()));
    const auto alignment = [](int column) {
        return column == 0 || (column > 2 && column % 2 == 1) ? Qt::AlignLeft : Qt::AlignRight;
    };
    for (int column = 0; column < int(columns.size()); ++column)
        fill(*table, 0, column, columns.at(column), true, alignment(column));
    for (int row = 0; row < int(lines.size()); ++row) {
        const ComparisonLine& line = *lines[std::size_t(row)];
        fill(*table, row + 1, 0, line.label, false, Qt::AlignLeft);
        for (int i = 0; i < int(line.cells.size()) && i + 1 < int(columns.size()); ++i)
            fill(*table, row + 1, i + 1, line.cells.at(i), line.isOther[std::size_t(i)], alignment(i + 1));
    }
}

void insertAttribution(QTextCursor& cursor, const Comparison& comparison, std::size_t index)
{
    const Attribution& attribution = comparison.attributions[index];
    const std::string &from = comparison.sides.front().name, &to = comparison.sides[index + 1].name;
    paragraph(cursor, Words::tr("What did it: %1 → %2").arg(QString::fromStdString(from), QString::fromStdString(to)),
        letters(headingSize_pt, true), 10.0);
    for (const AttributedKind& kind : attributedKinds())
        paragraph(cursor, translated(inASentence(attribution, kind, from, to)), letters(textSize_pt));
    if (attribution.changes.empty())
        return;
    const int rows = int(attribution.changes.size()) + 2;
    QTextTable* table = tableOf(cursor, rows, int(attributedKinds().size()) + 1);
    fill(*table, 0, 0, Words::tr("Change"), true, Qt::AlignLeft);
    fill(*table, rows - 1, 0, Words::tr("together"), true, Qt::AlignLeft);
    for (int row = 0; row + 2 < rows; ++row)
        fill(*table, row + 1, 0, translated(attribution.changes[std::size_t(row)].what), false, Qt::AlignLeft);
    int column = 1;
    for (const AttributedKind& kind : attributedKinds()) {
        const AttributedFigure& figure = attribution.*kind.figure;
        const auto number = [&](double part) {
            return figure.whyNone ? Words::tr("none") : withUnit(changeText(part, kind.decimals), translatedName(kind.unit));
        };
        const std::vector<double> parts = roundedParts(figure, kind.decimals);
        fill(*table, 0, column, translatedName(kind.label), true, Qt::AlignRight);
        for (int row = 0; row + 2 < rows; ++row)
            fill(*table, row + 1, column, number(figure.whyNone ? 0.0 : parts[std::size_t(row)]), false, Qt::AlignRight);
        fill(*table, rows - 1, column, number(figure.whyNone ? 0.0 : *figure.to - *figure.from), true, Qt::AlignRight);
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
    const std::vector<ComparisonLine> lines = linesOf(comparison);
    std::vector<const ComparisonLine*> cells;
    const auto flush = [&] {
        if (!cells.empty())
            insertCells(cursor, columns, std::exchange(cells, {}));
    };
    for (const ComparisonLine& line : lines) {
        if (line.kind == ComparisonLine::Cells) {
            cells.push_back(&line);
            continue;
        }
        flush();
        const bool isSection = line.kind == ComparisonLine::Section;
        paragraph(cursor, line.label, letters(isSection ? headingSize_pt : textSize_pt, isSection), isSection ? 10.0 : 2.0);
    }
    flush();
    for (std::size_t i = 0; i < comparison.attributions.size(); ++i)
        insertAttribution(cursor, comparison, i);
    return document;
}

void printComparison(QPrinter& printer, const QString& title, const Comparison& comparison)
{
    const auto document = comparisonDocument(title, comparison);
    document->print(&printer);
}

void askAndPrint(QWidget& near, const QString& title, const Comparison& comparison)
{
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(title);
    if (comparison.sides.size() > fewestCompared)
        printer.setPageOrientation(QPageLayout::Landscape);
    QPrintDialog dialog(&printer, &near);
    if (dialog.exec() == QDialog::Accepted)
        printComparison(printer, title, comparison);
}

}  // namespace firn::app
