// A line for one number with its unit. What cannot be read stays in the line and is marked; it blocks nothing.
#pragma once

#include "document/gesture.h"
#include "units/sentence.h"

#include <QLineEdit>
#include <functional>
#include <optional>
#include <string_view>

namespace firn::app {

class NumberField : public QLineEdit {
    Q_OBJECT

public:
    using Reader = std::function<Result<double>(std::string_view text)>;
    using Writer = std::function<QString(double number)>;

    NumberField(Reader reader, Writer writer, QWidget* parent = nullptr);

    /// Shows a number, or `usual` in quiet ink where none is chosen. What is being typed stays as long as it means that number.
    void showNumber(std::optional<double> number, double usual);

    /// The last number that could be read; none where the line is empty.
    std::optional<double> number() const { return m_number; }

    /// Empties the line.
    void forget();

    /// Why the text cannot be read; empty if it can.
    QString problem() const { return m_problem; }

signals:
    /// Typed so far; none where the line is empty. All that is typed until the line is left is one gesture.
    void numberTyped(std::optional<double> number, firn::app::Gesture gesture);

    /// The text can be read, or cannot any more.
    void problemChanged();

protected:
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void read();
    void write();
    void finishTyping();
    void setProblem(const QString& problem);

    Reader m_reader;
    Writer m_writer;
    std::optional<double> m_number;
    QString m_problem;
    Gesture m_gesture;
    bool m_isTyping = false;
};

}  // namespace firn::app
