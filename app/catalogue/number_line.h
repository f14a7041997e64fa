// A field for one number, with what is wrong with it beside it.
#pragma once

#include "bench/number_field.h"

#include <QWidget>

namespace firn::app {

class InkLabel;

class NumberLine : public QWidget {
    Q_OBJECT

public:
    /// `spoken` names the field for a screen reader; the unit stands beside it, also while the line is empty.
    NumberLine(const QString& spoken, NumberField::Reader reader, const QString& unit, QWidget* parent = nullptr);

    NumberField* field() { return m_field; }

    void showNumber(std::optional<double> number);
    /// What was typed last that could be read; none where the line is empty.
    std::optional<double> number() const { return m_number; }

    /// What an empty line stands for, in quiet ink.
    void showUsual(std::optional<double> number);

    /// Shows why the text cannot be read, if so. False then.
    bool checkTyping();
    /// Shows another sentence about the number.
    void say(const QString& fault);

signals:
    void changed();

private:
    NumberField* m_field;
    QString m_unit;
    InkLabel* m_fault;
    std::optional<double> m_number;
};

}  // namespace firn::app
