// What a cup, a spoon or a piece weighs, to be typed.
#pragma once

#include "ingredients/ingredient.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace firn::app {

class NumberLine;

class MeasuresEditor : public QWidget {
    Q_OBJECT

public:
    explicit MeasuresEditor(QWidget* parent = nullptr);

    void show(const std::vector<Measure>& measures);
    std::vector<Measure> measures() const;

    /// Marks what cannot be read, and measures without a weight. False then.
    bool checkTyping();

signals:
    void changed();

private:
    struct Line {
        QWidget* whole;
        QComboBox* unit;
        NumberLine* grams;
        QLineEdit* note;
        Measure before;
    };
    void addLine(const Measure& measure);
    void removeLine(QWidget* whole);

    std::vector<Line> m_lines;
    QVBoxLayout* m_layout;
};

}  // namespace firn::app
