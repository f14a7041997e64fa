// One exercise: its question, a field for the answer, what is wrong with it, hints one after the other, and the worked solution.
#pragma once

#include "explain/exercises.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace firn::app {

class InkLabel;

/// How far somebody has come with an exercise.
struct ExerciseProgress {
    QString typed;
    std::optional<Judgement> judgement = {};
    QString refusal;  // why what was typed is no answer
    std::size_t hintsShown = 0;
    bool isSolutionShown = false;

    bool isRight() const;
};

class ExercisePane : public QWidget {
    Q_OBJECT

public:
    explicit ExercisePane(QWidget* parent = nullptr);

    /// The pane keeps its own copy of the exercise, and works on this progress until another one is shown.
    void show(const Exercise& exercise, ExerciseProgress& progress);
    /// Says why there is none.
    void showNone(const QString& why);

    void takeFocus();

public slots:
    void check();
    void showHint();
    void showSolution();

signals:
    void progressed();
    void sourceChosen(firn::Source source);

protected:
    void changeEvent(QEvent* event) override;

private:
    void showTables();
    void showProgress();
    void showSteps();

    Exercise m_exercise;
    ExerciseProgress* m_progress = nullptr;
    QLabel* m_question;
    InkLabel* m_given;
    QVBoxLayout* m_tables;
    QWidget* m_answerRow;
    QLineEdit* m_answer;
    InkLabel* m_verdict;
    QVBoxLayout* m_hints;
    QPushButton* m_hint;
    QPushButton* m_solve;
    QWidget* m_steps = nullptr;
    QVBoxLayout* m_lines;
};

}  // namespace firn::app
