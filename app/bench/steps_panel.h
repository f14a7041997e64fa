// The steps of one component: what is done with what was weighed out, what each step takes away, and what is left after it.
#pragma once

#include "document/document.h"

#include <QWidget>
#include <optional>
#include <vector>

class QPushButton;

namespace firn::app {

class StepRow;

class StepsPanel : public QWidget {
    Q_OBJECT

public:
    explicit StepsPanel(Document& document, QWidget* parent = nullptr);
    ~StepsPanel() override;

    std::size_t component() const { return m_component; }
    void showComponent(std::size_t component);

protected:
    void changeEvent(QEvent* event) override;

private:
    const std::vector<Step>& steps() const { return m_document.recipe().components.at(m_component).steps; }
    void follow();
    void buildRows();
    void orderFocus();
    void focusOn(std::size_t row, qsizetype field);
    void addStep();
    void deleteStep(std::size_t index);
    void deleteFocused();
    void moveFocused(int by);

    /// A row and one of its fields.
    struct Place {
        std::size_t row;
        qsizetype field;
    };
    std::optional<Place> focused() const;

    Document& m_document;
    std::size_t m_component = 0;
    QWidget* m_body;
    std::vector<StepRow*> m_rows;
    QPushButton* m_add;
    QPushButton* m_weighedOut;
};

}  // namespace firn::app
