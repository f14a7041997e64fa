// What to do about it: the target, why the mix missed it, and what can be added to this batch or to the recipe, each with what it does.
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

    /// `measured` is the mix that is believed; none for the recipe's own. `isRefused`: something was read, but it cannot be.
    void show(const Measuring& measuring, const std::optional<MeasuredState>& measured, bool isRefused);

    /// Another recipe is open: its own strength is the target.
    void forgetTarget();

signals:
    /// The recipe's rows are others now; what was read is still what is in the bowl.
    void recipeChanged(const QString& sentence);
    /// This is to be added to the batch that was measured, which held so much sugar.
    void batchCorrected(const firn::CorrectionChoice& choice, firn::MassFraction sugarsBefore);
    /// Somebody wants to know how the grams of the chosen addition come about.
    void derivationWanted(const QString& figure, const firn::Workings& workings);

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    StrengthTarget target() const;
    void showUsualTarget();
    Corrected subject() const;
    void plan();
    void showCauses();
    void showChoices();
    void showEffects();
    std::optional<std::size_t> chosen() const;
    void enableApplying();
    void applyChosen();
    void addChosen();
    void changeRecipe(const CorrectionChoice& choice);
    void explainChosen();

    Document& m_document;
    Measuring m_measuring;
    std::optional<MeasuredState> m_measured;
    bool m_isRefused = false;
    Result<CorrectionPlan> m_plan;  // for what is to be corrected
    std::vector<Cause> m_causesFound;
    QComboBox* m_subject;
    NumberField* m_target;
    QComboBox* m_targetKind;
    InkLabel* m_diagnosis;
    QListWidget* m_causes;
    QPushButton* m_apply;
    QTableWidget* m_choices;
    QPushButton* m_add;
    FigureLink* m_why;
    InkLabel* m_effects;
    InkLabel* m_besides;
};

}  // namespace firn::app
