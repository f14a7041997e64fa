// The triangle test: how many tasters found the odd cup, and what that says.
#pragma once

#include <QWidget>

namespace firn::app {

class InkLabel;
class NumberField;

class TriangleView : public QWidget {
    Q_OBJECT

public:
    explicit TriangleView(QWidget* parent = nullptr);

private:
    void judge();

    NumberField* m_tasters;
    NumberField* m_right;
    InkLabel* m_verdict;
};

}  // namespace firn::app
