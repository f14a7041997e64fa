// The name of a figure that opens its derivation, by mouse, Space or Enter.
#pragma once

#include <QAbstractButton>

namespace firn::app {

class FigureLink : public QAbstractButton {
    Q_OBJECT

public:
    FigureLink(const QString& name, QString figure, QWidget* parent = nullptr);

    /// Its key in the report.
    QString figure() const { return m_figure; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void chosen(const QString& figure);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QString m_name;
    QString m_figure;
};

}  // namespace firn::app
