// The name of a figure that opens its derivation, underlined as a link.
#pragma once

#include "gauges/figure_button.h"

namespace firn::app {

class FigureLink : public FigureButton {
    Q_OBJECT

public:
    FigureLink(const QString& name, const QString& figure, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_name;
};

}  // namespace firn::app
