// One step as a line of fields, with what is left after it, and under it in words what is wrong.
#pragma once

#include "document/document.h"
#include "document/gesture.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLabel;
class QToolButton;

namespace firn::app {

class LossEditor;
class NumberField;

class StepRow : public QObject {
    Q_OBJECT

public:
    enum Column { KindColumn, TemperatureColumn, MinutesColumn, LossColumn, AfterColumn, LostColumn, DeleteColumn, ColumnCount };
    static constexpr int smallestTarget_px = 28;

    /// Puts its fields into the next two lines of the grid, whose widget becomes the parent.
    StepRow(Document& document, std::size_t component, std::size_t index, QGridLayout& grid);

    /// Shows the step as it is now.
    void show();

    /// Everything that takes the focus, in its order.
    QList<QWidget*> fields() const;

signals:
    void deletionAsked();

private:
    const Step& step() const { return m_document.recipe().components.at(m_component).steps.at(m_index); }
    void change(const Step& step);
    void nameFields();
    void showProblem();

    Document& m_document;
    std::size_t m_component;
    std::size_t m_index;
    QString m_outcomeProblem;
    QComboBox* m_kind;
    NumberField* m_temperature;
    NumberField* m_minutes;
    LossEditor* m_loss;
    QToolButton* m_after;
    QLabel* m_lost;
    QToolButton* m_delete;
    QLabel* m_problem;
};

}  // namespace firn::app
