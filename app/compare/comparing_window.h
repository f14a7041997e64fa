// Comparing: two to four of what is on the bench, its versions and other files, side by side.
#pragma once

#include "compare/choices.h"
#include "compare/comparison.h"

#include <QStringList>
#include <QWidget>
#include <array>

class QComboBox;

namespace firn::app {

class AttributionView;
class ChooserRow;
class ComparedCurves;
class ComparisonTable;
class Document;
class InkLabel;
class MarkedLines;
class MessageBar;
class NumberField;

/// Stays open beside the bench and follows every edit there.
class ComparingWindow : public QWidget {
    Q_OBJECT

public:
    /// The document must outlive the window.
    ComparingWindow(Document& document, QWidget* parent);
    ~ComparingWindow() override;

    /// The versions with these ids, the first one as what the others are compared with; a single one beside the bench. Without any, the bench
    /// beside the version that it comes from.
    void choose(const QStringList& versions);

    /// Adds a recipe from a file in the first free place, or in the last one.
    void addFile(const QString& path);

    /// None where fewer than two are chosen.
    const std::optional<Comparison>& comparison() const { return m_comparison; }

    /// The recipe's own title, and what is compared. There must be a comparison.
    QString printedTitle() const;

    void copyText() const;
    void copyPicture();

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QWidget* conditions();
    QWidget* pictures();
    void layOut();
    void place(std::size_t place, const Choice& choice);
    void openFile();
    void askAndPrint();
    ComparingWishes wishes() const;
    void refresh();
    void showAll(const Comparison& comparison);
    void showFairness(const Comparison& comparison);
    QString title() const;

    Document& m_document;
    Choices m_choices;
    std::array<Choice, mostCompared> m_chosen;
    std::optional<Comparison> m_comparison;
    MessageBar* m_messages;
    ChooserRow* m_places;
    QComboBox* m_basis;
    NumberField* m_portion;
    NumberField* m_serving;
    InkLabel* m_hint;
    QWidget* m_body = nullptr;
    MarkedLines* m_fairness;
    ComparisonTable* m_table;
    ComparedCurves* m_curves;
    AttributionView* m_attribution;
};

/// The bench's own one, made at the first call, with these versions if there are any.
void showComparing(Document& document, QWidget& near, const QStringList& versions = {});

}  // namespace firn::app
