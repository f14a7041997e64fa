// More or less of the recipe: how much is wanted, what that makes of each row, and what rounding does to it.
#pragma once

#include "analysis/batch_size.h"
#include "bench/ink_label.h"
#include "document/document.h"
#include "document/edits.h"

#include <QWidget>
#include <optional>
#include <vector>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QPushButton;

namespace firn::app {

class AmountQuestion;
class FieldGrid;
class ScalePreview;

class ScalePanel : public QWidget {
    Q_OBJECT

public:
    explicit ScalePanel(Document& document, QWidget* parent = nullptr);

    /// Puts the cursor where the amount is typed.
    void goToField();

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// Ways to say how much, in the order of the combo box.
    enum class Way { Factor, Mass, Volume, Portions, Pan, Ingredient };

    /// Of an amount, with the unit that a plain number is in.
    using UsualUnit = std::optional<Unit>;
    QLineEdit* newField(
        Way way, const QString& name, const QString& objectName, const QString& example, UsualUnit unit = std::nullopt);
    QLineEdit* addField(
        Way way, const QString& label, const QString& objectName, const QString& example, UsualUnit unit = std::nullopt);
    void addChoice(const QString& label, QComboBox* choice, const QString& objectName);
    void layOut();
    void fitToFont();
    Way way() const;
    void showFieldsOfWay();
    void showIngredients();
    bool isFilledIn() const;
    Result<BatchSize> wanted() const;
    void preview();
    void say(const QString& sentence, InkLabel::Ink ink);
    void ask();
    void answer(const QString& text);
    void apply();

    Document& m_document;
    FieldGrid* m_form;
    QComboBox* m_way;
    QLineEdit* m_factor;
    QLineEdit* m_mass;
    QLineEdit* m_volume;
    QLineEdit* m_portions;
    QLineEdit* m_portion;
    QLineEdit* m_length;
    QLineEdit* m_width;
    QLineEdit* m_depth;
    QComboBox* m_ingredient;
    QLineEdit* m_available;
    QComboBox* m_scaleStep;
    QCheckBox* m_spoonFractions;
    ScalePreview* m_preview;
    InkLabel* m_result;
    InkLabel* m_sentence;
    AmountQuestion* m_question;
    QLineEdit* m_asked = nullptr;  // the field that the question is about
    QPushButton* m_apply;

    struct Field {
        Way way;
        QLineEdit* edit;
        QWidget* row;  // of the form
        UsualUnit unit;
    };
    std::vector<Field> m_fields;
    std::vector<RowPlace> m_ingredientRows;  // in the order of the combo box
    std::optional<Batch> m_batch;            // none while the fields do not say how much
};

}  // namespace firn::app
