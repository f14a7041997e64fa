// The fields, lists and labels that tool windows are made of.
#pragma once

#include "bench/ink_label.h"
#include "bench/number_field.h"
#include "document/typed_numbers.h"

class QAbstractItemView;
class QComboBox;
class QPushButton;
class QScrollArea;

namespace firn::app {

/// What a field takes; a number beyond is a slip of the key.
struct Bounds {
    double least = -1e4;
    double most = 1e4;
};

/// A line for a number with this unit, which may stand behind what is typed. An empty line means `usual`, shown in quiet ink.
NumberField* fieldFor(
    const QString& name, const QString& spoken, const QString& unit, std::optional<double> usual = {}, Bounds bounds = {});

/// A line for a temperature in the shown unit; what is typed may name either. Its number is in °C.
NumberField* degreesFieldFor(
    const QString& name, const QString& spoken, std::optional<double> usual_c = {}, Celsius warmest = warmestTemperature);
/// The same with a reader of its own.
NumberField* degreesFieldFor(
    const QString& name, const QString& spoken, std::optional<double> usual_c, const NumberField::Reader& read);

QComboBox* choiceOf(const QString& name, const QString& spoken, const QStringList& items);

QPushButton* buttonOf(const QString& name, const QString& text, const QString& tip = {});

/// Scrolls where the content is larger than its place; without a frame.
QScrollArea* scrolled(QWidget* content, Qt::ScrollBarPolicy sideways = Qt::ScrollBarAsNeeded);

/// Wrapped plain text that a person may select.
InkLabel* plainLabel(const QString& name = {});
QLabel* titleLabel(const QString& text);

/// No box of its own, and a chosen line that does not shout.
void calm(QAbstractItemView& view);

}  // namespace firn::app
