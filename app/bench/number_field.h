// A line for one number with its unit. What cannot be read stays in the line and is marked; it blocks nothing, and what counts meanwhile is
// the number from before the typing.
#pragma once

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

    /// What was typed, as soon as it can be read; while it cannot, the number from before. None where the line is empty.
    std::optional<double> number() const { return m_number; }

    /// Empties the line.
    void forget();

    /// Why the text cannot be read; empty if it can.
    QString problem() const { return m_problem; }

signals:
    /// Typed so far; none where the line is empty. A text that can no longer be read, and Escape, bring back the number from before: its first digits
    /// may have been one by themselves.
    void numberTyped(std::optional<double> number);

    /// By Enter, or because the line was left.
    void typingFinished();

    /// The text can be read, or cannot any more.
    void problemChanged();

protected:
    void focusOutEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void read();
    Result<std::optional<double>> numberIn(const QString& text) const;
    void take(std::optional<double> number);
    void putBack();
    void write();
    void showUsual(double usual);
    void writeInOtherUnit();
    void finishTyping();
    void setProblem(const QString& problem);

    Reader m_reader;
    Writer m_writer;
    std::optional<double> m_number;
    std::optional<double> m_before;  // the typing
    std::optional<double> m_usual;
    QString m_usualText;
    QString m_problem;
    bool m_isTyping = false;
};

}  // namespace firn::app
