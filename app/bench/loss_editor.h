// What a step takes away: a choice, and the numbers that go with it.
#pragma once

#include "document/document.h"
#include "document/gesture.h"

#include <QWidget>

class QComboBox;

namespace firn::app {

class NumberField;

class LossEditor : public QWidget {
    Q_OBJECT

public:
    explicit LossEditor(QWidget* parent = nullptr);

    /// `massNow` is what boiling down starts from when it is chosen.
    void show(const Loss& loss, const Component& component, const Catalogue& catalogue, Grams massNow);

    /// Everything that takes the focus, in its order.
    QList<QWidget*> fields() const;

    /// Why one of the texts cannot be read; empty if all can.
    QString problem() const;

signals:
    void lossChosen(const firn::Loss& loss);
    /// So far, until the typing is finished.
    void lossTyped(const firn::Loss& loss);
    void typingFinished();
    void textChanged();

private:
    QList<NumberField*> numbers() const;
    void chooseKind(int kind);
    void showFields();

    Loss m_loss;
    Grams m_massNow;
    int m_likelySteeped = 0;
    QComboBox* m_kind;
    QComboBox* m_row;
    NumberField* m_grams;
    NumberField* m_brix;
    NumberField* m_soaking;
    NumberField* m_extracted;
    QWidget* m_steeping;
};

}  // namespace firn::app
