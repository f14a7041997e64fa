#include "teach/sheet_choice.h"

#include "gauges/type_and_space.h"
#include "print/chosen_paper.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace firn::app {

namespace {

constexpr int targetHeight_px = 28;
constexpr int numberWidth_px = 64;

QLineEdit* numberField(const char* name, const QString& spoken)
{
    auto* field = new QLineEdit;
    field->setObjectName(QLatin1String(name));
    field->setAccessibleName(spoken);
    field->setFixedWidth(numberWidth_px);
    field->setMinimumHeight(targetHeight_px);
    return field;
}

QLabel* labelOf(const QString& text, QWidget* field)
{
    auto* label = new QLabel(text);
    label->setBuddy(field);
    return label;
}

}  // namespace

SheetChoice::SheetChoice(QWidget* parent)
    : QWidget(parent)
    , m_first(numberField("firstSheet", tr("First sheet")))
    , m_last(numberField("lastSheet", tr("Last sheet")))
    , m_solutions(new QComboBox)
{
    for (QLineEdit* field : {m_first, m_last})
        connect(field, &QLineEdit::textEdited, this, [this] { m_isTyped = true; });
    m_solutions->setObjectName(QStringLiteral("solutions"));
    m_solutions->addItem(tr("none"), int(Solutions::None));
    m_solutions->addItem(tr("answers alone"), int(Solutions::Answers));
    m_solutions->addItem(tr("worked out"), int(Solutions::WorkedOut));
    auto* print = new QPushButton(tr("&Print…"));
    print->setObjectName(QStringLiteral("print"));
    auto* pdf = new QPushButton(tr("Save as P&DF…"));
    pdf->setObjectName(QStringLiteral("pdf"));
    connect(print, &QPushButton::clicked, this, &SheetChoice::printWanted);
    connect(pdf, &QPushButton::clicked, this, &SheetChoice::pdfWanted);

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(closeSpace);
    row->addWidget(labelOf(tr("Shee&ts"), m_first));
    row->addWidget(m_first);
    row->addWidget(labelOf(tr("to", "from a sheet to another"), m_last));
    row->addWidget(m_last);
    row->addSpacing(groupSpace);
    row->addWidget(labelOf(tr("Solut&ions"), m_solutions));
    row->addWidget(m_solutions);
    row->addSpacing(groupSpace);
    row->addWidget(namedPaperChoice());
    row->addStretch();
    row->addWidget(print);
    row->addWidget(pdf);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_solutions, print, pdf})
        widget->setMinimumHeight(targetHeight_px);
}

void SheetChoice::follow(std::uint64_t sheet)
{
    if (m_isTyped)
        return;
    m_first->setText(QString::number(sheet));
    m_last->setText(QString::number(sheet));
}

Result<std::pair<std::uint64_t, std::uint64_t>> SheetChoice::sheets() const
{
    bool isFirst = false, isLast = false;
    const std::uint64_t first = m_first->text().trimmed().toULongLong(&isFirst);
    const std::uint64_t last = m_last->text().trimmed().toULongLong(&isLast);
    if (!isFirst || !isLast)
        return failure(phrase("“{0}” to “{1}” are not sheet numbers. Enter two whole numbers, such as 1 to 24.",
            m_first->text().toStdString(), m_last->text().toStdString()));
    if (last < first)
        return failure(phrase("The last sheet comes before the first. Type the smaller number first."));
    if (last - first >= mostSheets)
        return failure(phrase("That is more than {0} sheets. Print them in parts.", Figure{double(mostSheets), 0}));
    return std::pair(first, last);
}

Solutions SheetChoice::solutions() const { return Solutions(m_solutions->currentData().toInt()); }

}  // namespace firn::app
