// A comparison on paper.
#pragma once

#include "compare/comparison.h"

#include <QTextDocument>
#include <memory>

class QPrinter;
class QWidget;

namespace firn::app {

/// Fairness, the table, and what did it, in plain text and tables: no text of a recipe is ever read as markup.
std::unique_ptr<QTextDocument> comparisonDocument(const QString& title, const Comparison& comparison);

/// A name that every file system takes: without signs that some refuse (FAT and NTFS: \ / : * ? " < > |), and not too long.
QString fileNameFrom(const QString& title);

void printComparison(QPrinter& printer, const QString& title, const Comparison& comparison);

/// Lets the person choose the printer, or a PDF file.
void askAndPrint(QWidget& near, const QString& title, const Comparison& comparison);

}  // namespace firn::app
