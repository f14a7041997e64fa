// What 100 g hold, to be typed: a line for each constituent that is there, and one to add another.
#pragma once

#include "ingredients/composition.h"

#include <QWidget>
#include <map>

class QComboBox;
class QGridLayout;
class QLabel;
class QLayout;
class QPushButton;

namespace firn::app {

class AlcoholLine;
class InkLabel;
class NumberLine;
class RibbonBar;

class ConstituentsEditor : public QWidget {
    Q_OBJECT

public:
    explicit ConstituentsEditor(QWidget* parent = nullptr);

    void show(const Amounts& per100g);
    const Amounts& amounts() const { return m_amounts; }

    /// Marks what cannot be read. False then.
    bool checkTyping();
    void say(const QString& fault);

signals:
    void changed();
    /// A syrup of this strength was taken as the beginning.
    void syrupStarted(double brix);

private:
    NumberLine* addLine(Constituent constituent);
    NumberLine* newLine(const ConstituentFacts& facts, QWidget*& shown);
    QLayout* syrupLine();
    void startFromSyrup();
    void offerOthers();
    void takeRestAsWater();
    void follow();

    Amounts m_amounts;
    RibbonBar* m_ribbon;
    QGridLayout* m_grid;
    std::map<Constituent, NumberLine*> m_lines;
    AlcoholLine* m_alcohol = nullptr;  // the line of the alcohol, if it is there
    QWidget* m_lastLine = nullptr;
    std::vector<QWidget*> m_shown;  // names and lines
    NumberLine* m_syrupStrength;
    QComboBox* m_others;
    QLabel* m_total;
    QPushButton* m_restIsWater;
    InkLabel* m_fault;
};

}  // namespace firn::app
