// Which sheets go on paper, with which solutions.
#pragma once

#include "teach/exercise_sheet.h"
#include "units/sentence.h"

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace firn::app {

class SheetChoice : public QWidget {
    Q_OBJECT

public:
    explicit SheetChoice(QWidget* parent = nullptr);

    /// The sheet on the screen, which goes on paper as long as nobody has typed others.
    void follow(std::uint64_t sheet);

    /// The numbers of the first and the last sheet. Fails on what is no number, on a last one before the first, and on more than mostSheets.
    Result<std::pair<std::uint64_t, std::uint64_t>> sheets() const;
    Solutions solutions() const;

signals:
    void printWanted();
    void pdfWanted();

private:
    QLineEdit* m_first;
    QLineEdit* m_last;
    QComboBox* m_solutions;
    bool m_isTyped = false;
};

}  // namespace firn::app
