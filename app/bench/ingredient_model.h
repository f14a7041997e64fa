// The rows of one component as a table. It holds the recipe's rows and what the analysis says of them, and computes nothing.
#pragma once

#include "bench/amount_choice.h"
#include "document/document.h"
#include "document/edits.h"

#include <QAbstractTableModel>
#include <array>
#include <optional>

namespace firn::app {

/// One row of the table belongs to no row of the recipe: the blank one, in which typing starts an ingredient. It stands at the end
/// unless the person asked for a row in between.
class IngredientModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        IngredientColumn,
        AmountColumn,
        UnitColumn,
        ReadingColumn,
        GramsColumn,
        ShareColumn,
        CompositionColumn,
        ColumnCount
    };
    enum Role {
        ProblemRole = Qt::UserRole,  // QString: what is wrong with this cell and what to do; empty if nothing is
        RibbonRole,                  // Ribbon
        PlaceholderRole              // QString: what could be typed here
    };

    explicit IngredientModel(Document& document, QObject* parent = nullptr);

    std::size_t component() const { return m_component; }
    void showComponent(std::size_t component);

    int blankRow() const { return int(m_blank); }
    /// Moves the blank row in front of this row of the table, or to the end.
    void putBlankRow(int row);

    /// The recipe's row behind a row of the table; none for the blank row.
    std::optional<RowPlace> placeOf(int row) const;
    /// Whether a row of the recipe has an ingredient and waits for its amount.
    bool lacksAmount(int row) const;
    int rowOf(std::size_t recipeRow) const { return int(recipeRow < m_blank ? recipeRow : recipeRow + 1); }

    /// Takes back a text that could not be read.
    void forgetDraft(const QModelIndex& index) { setDraft(index, std::nullopt); }

    /// Makes room for the next line: one in the blank row that could not be read becomes a row of that name, as a pasted one does. False where
    /// there is none.
    bool keepRefusedLine();

    bool isDraft(const QModelIndex& index) const { return index.isValid() && draftAt(index); }

    /// The first cell whose text could not be read.
    QModelIndex firstDraft() const;

    /// Shows in all views what this text would do, as far as it can be read; Document::showTyping. In the blank row that is a row which stays
    /// there until it is typed to its end. The answer is what the text may mean, where that is to be asked.
    std::vector<AmountChoice> showTyping(const QModelIndex& index, const QString& text);

    /// The first cell whose text has two meanings, and these.
    QModelIndex firstQuestion() const;
    std::vector<AmountChoice> choicesOf(const QModelIndex& index) const;

    /// Says that the text of this cell could not be read, and what undoing the typing would keep.
    QString refusalOf(const QModelIndex& draft) const;

    /// The first cell whose text could not be read; without one, the first whose row cannot be counted.
    QModelIndex firstProblem() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

signals:
    /// A row was made of what was typed into the blank one.
    void rowTyped(int row);

private:
    /// A text as typed that could not be read, and why.
    struct Draft {
        QString text;
        QString problem;
        std::vector<AmountChoice> choices = {};
    };
    static constexpr std::size_t typedColumns = ReadingColumn + 1;
    using Drafts = std::array<std::optional<Draft>, typedColumns>;

    struct ShownRow {
        Row row;
        Row settled;  // without what is being typed
        RowAnalysis analysis;
        Drafts drafts;
    };

    /// The recipe's rows that have a row of their own here, and what the analysis says of one.
    std::vector<Row> recipeRows() const;
    RowAnalysis analysisOf(std::size_t row) const;
    bool isBlankShown() const { return m_isBlankTyped && m_document.isTyping(); }
    bool showBlankTyping(const std::string& text, std::optional<AmountFault>& fault);
    void startAnew();
    void follow();
    void insertShown(std::size_t at, std::size_t count);
    void removeShown(std::size_t at, std::size_t count);
    void fillShown();

    template <class Condition>
    QModelIndex firstTypedCell(const Condition& holds) const;
    const Draft* draftAt(const QModelIndex& index) const;
    void setDraft(const QModelIndex& index, std::optional<Draft> draft);
    QString problemOf(const QModelIndex& index) const;
    bool isTakenForAnother(const QModelIndex& index) const;
    QString textOf(const QModelIndex& index) const;
    QString recipeTextOf(const QModelIndex& index) const;
    QString countedAmountOf(int row) const;
    QString explanationOf(const QModelIndex& index) const;
    std::optional<AmountFault> typeBlank(const std::string& text);

    Document& m_document;
    std::size_t m_component = 0;
    std::vector<ShownRow> m_rows;
    std::size_t m_blank = 0;  // the recipe's row that the blank one stands in front of
    std::optional<Draft> m_blankDraft;
    bool m_isBlankTyped = false;  // what is being typed there is in the recipe, in front of the row m_blank
    ShownRow m_blankShown;        // that row
};

}  // namespace firn::app

Q_DECLARE_METATYPE(firn::Ribbon)
