// A question where an amount is typed: which of two is meant by "1.015 g".
#pragma once

#include "bench/amount_choice.h"

#include <QFrame>
#include <array>

class QPushButton;

namespace firn::app {

/// One button for each meaning. It takes no focus by itself, so that typing goes on; Alt+1 and Alt+2 press the buttons.
class AmountQuestion : public QFrame {
    Q_OBJECT

public:
    /// The keys are heard while the focus is in `typedIn`.
    AmountQuestion(QWidget& typedIn, QWidget* parent);

    /// Without choices there is nothing to ask.
    void ask(const std::vector<AmountChoice>& choices);

    /// The same beside this place, pixels of the parent.
    void askBeside(const std::vector<AmountChoice>& choices, const QRect& place);

    /// Stands beside this place while it asks.
    void standBeside(const QRect& place);

signals:
    void chosen(const QString& text);

private:
    void choose(std::size_t meaning);

    std::vector<AmountChoice> m_choices;
    // They stay the same ones: a button that went while it was pressed, or while a key was on its way, would take the focus along.
    std::array<QPushButton*, 2> m_buttons;
};

}  // namespace firn::app
