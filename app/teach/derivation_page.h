// A derivation from its title to its last line, all of its steps under each other.
#pragma once

#include "explain/explain.h"
#include "teach/figure_wording.h"

#include <QSet>
#include <QWidget>

class QVBoxLayout;

namespace firn::app {

class DerivationPage : public QWidget {
    Q_OBJECT

public:
    /// Steps are counted from 1; the long sums of those that are not `unfolded` are folded.
    DerivationPage(const Derivation& derivation, const FigureHead& head, const QSet<int>& unfolded, QWidget* parent = nullptr);

signals:
    void figureChosen(const QString& figure);
    void foldingChosen(int step, bool isFolded);
    void sourceChosen(firn::Source source);

private:
    void addLine(const QString& text, const char* name, const QFont& font);
    void addSteps(const std::vector<WorkingStep>& steps, const QSet<int>& unfolded);

    QVBoxLayout* m_lines;
};

}  // namespace firn::app
