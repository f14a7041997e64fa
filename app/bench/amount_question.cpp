#include "bench/amount_question.h"

#include "gauges/type_and_space.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QShortcut>
#include <algorithm>

namespace firn::app {

namespace {

QKeySequence keyOf(std::size_t meaning) { return {Qt::ALT | Qt::Key(Qt::Key_1 + int(meaning))}; }

}  // namespace

AmountQuestion::AmountQuestion(QWidget& typedIn, QWidget* parent)
    : QFrame(parent)
{
    setObjectName(QStringLiteral("amountQuestion"));
    setAccessibleName(tr("Which amount is meant?"));
    setAutoFillBackground(true);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(gridStep, 0, gridStep, 0);
    layout->setSpacing(gridStep);
    for (std::size_t meaning = 0; meaning < m_buttons.size(); ++meaning) {
        auto* button = m_buttons[meaning] = new QPushButton;
        button->setAutoDefault(false);
        button->setFocusPolicy(Qt::NoFocus);
        layout->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, meaning] { choose(meaning); });
        connect(new QShortcut(keyOf(meaning), &typedIn, nullptr, nullptr, Qt::WidgetWithChildrenShortcut), &QShortcut::activated,
            this, [this, meaning] { choose(meaning); });
    }
    hide();
}

void AmountQuestion::ask(const std::vector<AmountChoice>& choices)
{
    if (choices != m_choices) {
        m_choices = choices;
        for (std::size_t meaning = 0; meaning < std::min(choices.size(), m_buttons.size()); ++meaning) {
            m_buttons[meaning]->setText(choices[meaning].meaning);
            m_buttons[meaning]->setToolTip(tr("%1 is meant (%2)", "an amount, and the keys for it")
                                               .arg(choices[meaning].meaning, keyOf(meaning).toString(QKeySequence::NativeText)));
        }
        layout()->invalidate();
    }
    setVisible(!choices.empty());
}

void AmountQuestion::askBeside(const std::vector<AmountChoice>& choices, const QRect& place)
{
    ask(place.isEmpty() ? std::vector<AmountChoice>() : choices);
    standBeside(place);
}

void AmountQuestion::standBeside(const QRect& place)
{
    if (m_choices.empty())
        return;
    const QSize size = sizeHint().expandedTo({0, place.height()});
    QPoint corner(place.right() + 1, place.top());
    if (corner.x() + size.width() > parentWidget()->width())
        corner = {std::max(0, parentWidget()->width() - size.width()), place.bottom() + 1};
    setGeometry({corner, size});
    raise();
}

void AmountQuestion::choose(std::size_t meaning)
{
    if (!isVisible() || meaning >= m_choices.size())
        return;
    const QString text = m_choices[meaning].text;
    emit chosen(text);
}

}  // namespace firn::app
