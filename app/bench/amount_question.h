// A question at a cell: which of two amounts is meant by "1.015 g".
#pragma once

#include "bench/ingredient_model.h"

#include <QFrame>

class QHBoxLayout;

namespace firn::app {

/// One button for each meaning. It takes no focus by itself, so that typing goes on; Alt+1 and Alt+2 press the buttons.
class AmountQuestion : public QFrame {
    Q_OBJECT

public:
    explicit AmountQuestion(QWidget* parent);

    /// Asks beside this place, pixels of the parent; without choices there is nothing to ask.
    void ask(const std::vector<AmountChoice>& choices, const QRect& cell);

signals:
    void chosen(const QString& text);

private:
    void build(const std::vector<AmountChoice>& choices);

    std::vector<AmountChoice> m_choices;
    QHBoxLayout* m_buttons;
};

}  // namespace firn::app
