// What to do about it: what the mix shall be, why it is not, and what can be added, each with what it does.
#pragma once

#include "correction/measuring.h"
#include "document/document.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QTableWidget;

namespace firn::app {

class FigureLink;
class InkLabel;
class NumberField;

class CorrectionView : public QWidget {
    Q_OBJECT

public:
    explicit CorrectionView(Document& document, QWidget* parent = nullptr);

    /// `measured` is the mix that is believed; none for the recipe's own.
    void show(const Measuring& measuring, const std::optional<MeasuredState>& measured);

signals:
    void recipePutRight(const QString& sentence);
    /// The mix that was measured is another by now.
    void choiceAdded(const QString& sentence);
    /// Somebody wants to know how the grams of the chosen addition come about.
    void derivationWanted(const QString& figure, const firn::Workings& workings);

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    StrengthTarget target() const;
    void showUsualTarget();
    void plan();
    void showCauses();
    void showChoices();
    void showEffects();
    std::optional<std::size_t> chosen() const;
    void putRightChosen();
    void addChosen();
    void explainChosen();

    Document& m_document;
    Measuring m_measuring;
    std::optional<MeasuredState> m_measured;
    Result<CorrectionPlan> m_plan;
    NumberField* m_target;
    QComboBox* m_targetKind;
    InkLabel* m_diagnosis;
    QListWidget* m_causes;
    QPushButton* m_putRight;
    QTableWidget* m_choices;
    QPushButton* m_add;
    FigureLink* m_why;
    InkLabel* m_effects;
    InkLabel* m_besides;
};

}  // namespace firn::app
