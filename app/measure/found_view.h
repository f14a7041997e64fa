// What is in the mix by its readings, large, and beside it what the recipe computes.
#pragma once

#include "bench/fields.h"
#include "correction/measuring.h"

#include <QWidget>
#include <array>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace firn::app {

class FigureButton;
class InkLabel;

class FoundView : public QWidget {
    Q_OBJECT

public:
    explicit FoundView(QWidget* parent = nullptr);

    /// `problem` says why a text cannot be read; empty if all can.
    void show(const Measuring& measuring, const QString& problem);

    /// The mix that is believed, of those that read so; none where there is none.
    std::optional<MeasuredState> measured() const;

    /// What was typed as a note belongs to another recipe.
    void forgetNote();

    /// Its number among those that read so.
    std::size_t chosen() const;

signals:
    void mixChosen();
    void keepingAsked(const QString& note);
    /// Somebody wants to know how a figure of the table comes about: its key, and what stands there.
    void figureChosen(const QString& figure, const QString& shown);

protected:
    void changeEvent(QEvent* event) override;

private:
    static constexpr int columnCount = 4;
    using Line = std::array<QString, columnCount>;
    /// What the cells of a line open: keys, empty where a cell has no derivation.
    using Figures = std::array<QString, columnCount>;

    void showMixes();
    void showResult();
    void showTable();
    void put(int row, const Line& line, const Figures& figures = {});
    QString headline() const;
    FigureButton* buttonInTable(int row, int column);

    Measuring m_measuring;
    QString m_problem;
    InkLabel* m_result;
    InkLabel* m_explanation;
    QComboBox* m_mixes;
    QGridLayout* m_table;
    std::vector<std::array<InkLabel*, columnCount>> m_cells;
    std::vector<std::array<FigureButton*, columnCount>> m_buttons;
    InkLabel* m_disturbances;
    QLineEdit* m_note;
    QPushButton* m_keep;
};

}  // namespace firn::app
