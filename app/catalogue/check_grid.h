// Allergens or hazards to tick.
#pragma once

#include "catalogue/ingredient_wording.h"
#include "gauges/type_and_space.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QWidget>
#include <algorithm>
#include <functional>

namespace firn::app {

/// One box for each of the first `count` values of the enumeration.
template <class Key, std::size_t count>
class CheckGrid : public QWidget {
public:
    CheckGrid(int columns, const std::function<void()>& changed)
    {
        auto* layout = new QGridLayout(this);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setHorizontalSpacing(groupSpace);
        layout->setVerticalSpacing(gridStep);
        for (std::size_t i = 0; i < count; ++i) {
            const auto key = static_cast<Key>(i);
            m_boxes[i] = new QCheckBox(nameOf(key));
            m_boxes[i]->setObjectName(QString::fromStdString(std::string(keyOf(key))));
            layout->addWidget(m_boxes[i], int(i) / columns, int(i) % columns);
            QObject::connect(m_boxes[i], &QCheckBox::clicked, this, changed);
        }
        layout->setColumnStretch(columns, 1);
    }

    void show(const std::vector<Key>& chosen)
    {
        for (std::size_t i = 0; i < count; ++i)
            m_boxes[i]->setChecked(std::ranges::find(chosen, static_cast<Key>(i)) != chosen.end());
    }

    std::vector<Key> chosen() const
    {
        std::vector<Key> keys;
        for (std::size_t i = 0; i < count; ++i)
            if (m_boxes[i]->isChecked())
                keys.push_back(static_cast<Key>(i));
        return keys;
    }

private:
    std::array<QCheckBox*, count> m_boxes{};
};

using AllergenGrid = CheckGrid<Allergen, allergenCount>;
using HazardGrid = CheckGrid<Hazard, hazardCount>;

}  // namespace firn::app
