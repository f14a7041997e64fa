// Alcohol as a label or a table has it: grams in 100 g, or % vol.
#pragma once

#include "ingredients/composition.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace firn::app {

class NumberLine;

class AlcoholLine : public QWidget {
    Q_OBJECT

public:
    explicit AlcoholLine(const QString& spoken, QWidget* parent = nullptr);

    NumberLine* number() { return m_number; }

    void showGrams(Grams grams);

    /// Grams in 100 g beside these constituents; none where the strength cannot be, which is said.
    Grams gramsBeside(const Amounts& others);

    /// Marks what cannot be. False then.
    bool checkTyping();

signals:
    void changed();

private:
    bool isByVolume() const;

    NumberLine* m_number;
    QComboBox* m_unit;
    QLabel* m_grams;
    QString m_fault;
};

}  // namespace firn::app
