// The line in which a person takes a comparison away: as text, as a picture, on paper.
#pragma once

#include <QWidget>

class QHBoxLayout;

namespace firn::app {

class OutputRow : public QWidget {
    Q_OBJECT

public:
    explicit OutputRow(QWidget* parent = nullptr);

signals:
    void textWanted();
    void pictureWanted();
    void printWanted();
    void pdfWanted();

private:
    void addButton(const QString& name, const QString& text, void (OutputRow::*wanted)());

    QHBoxLayout* m_layout;
};

}  // namespace firn::app
