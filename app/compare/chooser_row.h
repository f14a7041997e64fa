// The line in which a person chooses what is compared with what.
#pragma once

#include "compare/choices.h"

#include <QWidget>
#include <array>

class QComboBox;

namespace firn::app {

class ChooserRow : public QWidget {
    Q_OBJECT

public:
    explicit ChooserRow(QWidget* parent = nullptr);

    /// Lays out all choices in every place.
    void show(const Choices& choices, const Places& chosen);

    void takeFocus();

signals:
    void chosen(std::size_t place, const firn::app::Choice& choice);
    void fileWanted();

private:
    void tell(std::size_t place);

    std::array<QComboBox*, mostCompared> m_places{};
};

}  // namespace firn::app
