// Exercises made from the recipe on the bench, each sheet with numbers of its own.
#pragma once

#include "document/document.h"
#include "print/block.h"
#include "teach/exercise_pane.h"

class QLineEdit;
class QListWidget;
class QScrollArea;

namespace firn::app {

class InkLabel;
class Questions;
class SheetChoice;

class ExercisesWindow : public QWidget {
    Q_OBJECT

public:
    /// Document and questions must outlive the window.
    ExercisesWindow(const Document& document, Questions& questions, QWidget* parent);
    ~ExercisesWindow() override;

    const ExerciseSheet& sheet() const { return m_sheet; }

    /// The sheets that are chosen for paper. Fails on numbers that are none.
    Result<Handout> handout() const;

public slots:
    void openSheet(quint64 number);

signals:
    void sourceChosen(firn::Source source);

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QLayout* buildHead();
    QWidget* buildList();
    void layOut();
    void follow();
    void showSheet();
    void showExercise();
    void listExercises();
    void readNumber();
    void say(const QString& sentence, bool isTrouble);

    const Document& m_document;
    ExerciseSheet m_sheet;
    std::vector<ExerciseProgress> m_progress;
    QLineEdit* m_number;
    QListWidget* m_list;
    InkLabel* m_rows;
    ExercisePane* m_pane;
    QScrollArea* m_page;
    SheetChoice* m_choice;
    InkLabel* m_message;
};

/// The bench's own one, made at the first call.
ExercisesWindow& showExercises(const Document& document, Questions& questions, QWidget& bench);

}  // namespace firn::app
