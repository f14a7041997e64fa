#include "bench/amount_question.h"

#include "gauges/type_and_space.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

namespace firn::app {

AmountQuestion::AmountQuestion(QWidget* parent)
    : QFrame(parent)
    , m_buttons(new QHBoxLayout(this))
{
    setObjectName(QStringLiteral("amountQuestion"));
    setAccessibleName(tr("Which amount is meant?"));
    setAutoFillBackground(true);
    m_buttons->setContentsMargins(gridStep, 0, gridStep, 0);
    m_buttons->setSpacing(gridStep);
    hide();
}

void AmountQuestion::ask(const std::vector<AmountChoice>& choices, const QRect& cell)
{
    if (choices != m_choices)
        build(choices);
    if (choices.empty() || cell.isEmpty()) {
        hide();
        return;
    }
    const QSize size = sizeHint().expandedTo({0, cell.height()});
    QPoint corner(cell.right() + 1, cell.top());
    if (corner.x() + size.width() > parentWidget()->width())
        corner = {std::max(0, parentWidget()->width() - size.width()), cell.bottom() + 1};
    setGeometry({corner, size});
    show();
    raise();
}

void AmountQuestion::build(const std::vector<AmountChoice>& choices)
{
    m_choices = choices;
    for (QPushButton* button : findChildren<QPushButton*>(QString(), Qt::FindDirectChildrenOnly)) {
        // It may be the one that was just pressed.
        button->setParent(nullptr);
        button->deleteLater();
    }
    for (std::size_t i = 0; i < choices.size(); ++i) {
        auto* button = new QPushButton(choices[i].meaning, this);
        const QKeySequence key(Qt::ALT | Qt::Key(Qt::Key_1 + int(i)));
        button->setShortcut(key);
        button->setToolTip(tr("%1 is meant (%2)", "an amount, and the keys for it")
                               .arg(choices[i].meaning, key.toString(QKeySequence::NativeText)));
        button->setAutoDefault(false);
        button->setFocusPolicy(Qt::NoFocus);
        connect(button, &QPushButton::clicked, this, [this, text = choices[i].text] { emit chosen(text); });
        m_buttons->addWidget(button);
    }
}

}  // namespace firn::app
