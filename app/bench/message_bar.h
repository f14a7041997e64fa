// What the program has to say, in one sentence at the foot of the window, where it pushes nothing away from under a hand.
#pragma once

#include <QFrame>
#include <QPointer>
#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace firn::app {

class MessageBar : public QFrame {
    Q_OBJECT

public:
    struct Choice {
        QString verb;
        std::function<void()> act;
    };

    explicit MessageBar(QWidget* parent = nullptr);

    /// What went wrong or has to be decided. It stands until it is dismissed, a choice is taken, or another sentence comes.
    void say(const QString& sentence, const std::vector<Choice>& choices = {});

    /// What is good to know.
    void note(const QString& sentence, const std::vector<Choice>& choices = {});

    /// How something went: says trouble, and notes the rest.
    void tell(const QString& sentence, bool isTrouble);

    void dismiss();
    QString sentence() const;

signals:
    void dismissedByHand(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void giveFocusBack(QWidget& from);
    void put(const QString& sentence, const std::vector<Choice>& choices, bool isNote);

    QLabel* m_label;
    QHBoxLayout* m_choices;
    bool m_isNote = false;
    QPointer<QWidget> m_focusBefore;
};

}  // namespace firn::app
