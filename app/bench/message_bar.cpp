#include "bench/message_bar.h"

#include "bench/ingredient_table.h"
#include "gauges/palette.h"
#include "gauges/type_and_space.h"

#include <QAccessible>
#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

namespace firn::app {

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent)
    , m_label(new QLabel)
    , m_choices(new QHBoxLayout)
{
    setObjectName(QStringLiteral("messageBar"));
    setAccessibleName(tr("Message"));
    m_label->setTextFormat(Qt::PlainText);
    m_label->setWordWrap(true);
    m_label->setTextInteractionFlags(Qt::TextSelectableByMouse);

    auto* dismissButton = new QPushButton(tr("Dismiss"));
    dismissButton->setObjectName(QStringLiteral("dismissMessage"));
    connect(dismissButton, &QPushButton::clicked, this, [this] {
        const QString dismissed = sentence();
        dismiss();
        emit dismissedByHand(dismissed);
    });

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(groupSpace, gridStep, closeSpace, gridStep);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_label, 1);
    layout->addLayout(m_choices);
    layout->addWidget(dismissButton);
    hide();
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget* before, QWidget* now) {
        if (before && now && isAncestorOf(now) && !isAncestorOf(before) && before->window() == window())
            m_focusBefore = before;
    });
}

void MessageBar::say(const QString& sentence, const std::vector<Choice>& choices) { put(sentence, choices, false); }

void MessageBar::note(const QString& sentence, const std::vector<Choice>& choices) { put(sentence, choices, true); }

void MessageBar::tell(const QString& sentence, bool isTrouble) { put(sentence, {}, !isTrouble); }

void MessageBar::put(const QString& sentence, const std::vector<Choice>& choices, bool isNote)
{
    dismiss();
    // While the window has not come up yet, nothing has the focus, and this is what will.
    m_focusBefore = window()->focusWidget();
    m_isNote = isNote;
    m_label->setText(sentence);
    for (const Choice& choice : choices) {
        auto* button = new QPushButton(choice.verb, this);
        connect(button, &QPushButton::clicked, this, [this, act = choice.act] {
            dismiss();
            act();
        });
        m_choices->addWidget(button);
    }
    show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void MessageBar::dismiss()
{
    // The focus would go to the next field in line, where the next key would type over what is there.
    if (QWidget* focus = window()->focusWidget(); focus && isAncestorOf(focus))
        giveFocusBack(*focus);
    hide();
    m_label->clear();
    while (QLayoutItem* item = m_choices->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
}

void MessageBar::giveFocusBack(QWidget& from)
{
    const auto takesKeys = [](const QWidget* field) { return field->isVisible() && field->isEnabled(); };
    QWidget* to = m_focusBefore && takesKeys(m_focusBefore) ? m_focusBefore.data() : window()->findChild<IngredientTable*>();
    for (QWidget* next = from.nextInFocusChain(); !to && next != &from; next = next->nextInFocusChain())
        if (takesKeys(next) && next->focusPolicy() & Qt::TabFocus && !isAncestorOf(next))
            to = next;
    // Nothing is selected in a field that gets it so: the next key adds to what is there.
    if (to)
        to->setFocus();
}

QString MessageBar::sentence() const { return m_label->text(); }

void MessageBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const GaugeColours colours = gaugeColours(palette());
    painter.fillRect(rect(), palette().color(QPalette::Base));
    painter.fillRect(QRect(0, 0, gridStep, height()), m_isNote ? colours.curve : colours.caution);
    painter.fillRect(QRect(0, 0, width(), 1), colours.hairline);
}

}  // namespace firn::app
