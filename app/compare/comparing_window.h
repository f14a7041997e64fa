// Comparing: two to four of what is on the bench, its versions and other files, side by side.
#pragma once

#include "compare/choices.h"
#include "compare/comparison.h"
#include "compare/side_figures.h"

#include <QStringList>
#include <QWidget>

namespace firn::app {

class AttributionView;
class ChooserRow;
class ComparedCurves;
class ComparisonTable;
class ConditionsRow;
class Document;
class FairnessLines;
class InkLabel;
class MessageBar;
class OutputRow;
class PrintOutlet;
class Questions;

/// Stays open beside the bench and follows every edit there.
class ComparingWindow : public QWidget {
    Q_OBJECT

public:
    /// Document and questions must outlive the window.
    ComparingWindow(Document& document, Questions& questions, QWidget* parent);
    ~ComparingWindow() override;

    /// The versions with these ids, the first one as what the others are compared with; a single one beside the bench. Without any, the bench
    /// beside the version that it comes from.
    void choose(const QStringList& versions);

    /// Adds a recipe from a file in the first free place, or in the last one.
    void addFile(const QString& path);

    /// The open recipe beside what its file, or another one, holds.
    void compareWith(const QString& path, const Recipe& onDisk);

    /// None where fewer than two are chosen.
    const std::optional<Comparison>& comparison() const { return m_comparison; }

    /// The recipe's own title, and what is compared. There must be a comparison.
    QString printedTitle() const;

    void copyText() const;
    void copyPicture();

signals:
    /// Somebody wants to know how a figure comes about: its key, and the set that has it.
    void derivationWanted(const QString& figure, const firn::app::SharedFigures& set);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QWidget* pictures();
    void layOut();
    void place(std::size_t place, const Choice& choice);
    void openFile();
    void print();
    void savePdf();
    ComparingWishes wishes() const;
    void refresh();
    QString title() const;
    void explain(const QString& figure, std::size_t side, bool isDifference);

    Document& m_document;
    Questions& m_questions;
    Choices m_choices;
    Places m_chosen;
    std::optional<Comparison> m_comparison;
    SideFigures m_figures;
    MessageBar* m_messages;
    PrintOutlet* m_outlet;
    ChooserRow* m_places;
    ConditionsRow* m_conditions;
    OutputRow* m_output;
    InkLabel* m_hint;
    QWidget* m_body = nullptr;
    FairnessLines* m_fairness;
    ComparisonTable* m_table;
    ComparedCurves* m_curves;
    AttributionView* m_attribution;
};

/// The bench's own one, made at the first call; it shows derivations in the bench's window for them. With these versions if there are any.
void showComparing(Document& document, Questions& questions, QWidget& near, const QStringList& versions = {});

/// The same with the open recipe beside what a file holds.
void showComparingWith(Document& document, Questions& questions, QWidget& near, const QString& path, const Recipe& onDisk);

}  // namespace firn::app
