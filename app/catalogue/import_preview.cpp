#include "catalogue/import_preview.h"

#include "catalogue/ingredient_details.h"
#include "catalogue/ingredient_wording.h"
#include "gauges/type_and_space.h"
#include "gauges/wording.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <set>

namespace firn::app {

namespace {

constexpr int charactersOfList = 40;

/// A heading and the sentences under it; nothing without sentences.
QString section(const QString& heading, const std::vector<Sentence>& sentences)
{
    QStringList lines;
    for (const Sentence& sentence : sentences)
        lines << QStringLiteral("• ") + translated(sentence);
    return lines.isEmpty() ? QString() : heading + u'\n' + lines.join(u'\n');
}

}  // namespace

ImportPreview::ImportPreview(const Pantry& pantry, QWidget* parent)
    : QWidget(parent)
    , m_pantry(pantry)
    , m_summary(new QLabel)
    , m_list(new QListWidget)
    , m_details(new IngredientDetails)
    , m_account(new QLabel)
    , m_keep(new QPushButton)
{
    m_summary->setObjectName(QStringLiteral("importSummary"));
    m_summary->setTextFormat(Qt::PlainText);
    m_summary->setWordWrap(true);
    m_summary->setFont(titleFont(font()));
    m_list->setObjectName(QStringLiteral("imported"));
    m_list->setAccessibleName(tr("Ingredients of the file"));
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setFixedWidth(fontMetrics().averageCharWidth() * charactersOfList);
    connect(m_list, &QListWidget::currentRowChanged, this, &ImportPreview::showOne);
    connect(m_list, &QListWidget::itemChanged, this, &ImportPreview::countChosen);
    m_account->setObjectName(QStringLiteral("importAccount"));
    m_account->setTextFormat(Qt::PlainText);
    m_account->setWordWrap(true);
    m_account->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_keep->setObjectName(QStringLiteral("keepImported"));
    connect(m_keep, &QPushButton::clicked, this, &ImportPreview::keepWanted);
    auto* leave = new QPushButton(tr("Cancel"));
    leave->setObjectName(QStringLiteral("leaveImport"));
    connect(leave, &QPushButton::clicked, this, &ImportPreview::leaveWanted);

    auto* content = new QWidget;
    auto* contentLayout = new QVBoxLayout(content);
    contentLayout->setContentsMargins(0, 0, 0, 0);
    contentLayout->setSpacing(groupSpace);
    contentLayout->addWidget(m_account);
    contentLayout->addWidget(m_details);
    contentLayout->addStretch();
    auto* area = new QScrollArea;
    area->setWidget(content);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    auto* middle = new QHBoxLayout;
    middle->setSpacing(groupSpace);
    middle->addWidget(m_list);
    middle->addWidget(area, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(closeSpace);
    buttons->addWidget(m_keep);
    buttons->addWidget(leave);
    buttons->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(closeSpace);
    layout->addWidget(m_summary);
    layout->addLayout(middle, 1);
    layout->addLayout(buttons);
}

void ImportPreview::show(const QString& fileName, std::vector<ImportedIngredient> imported)
{
    m_imported = std::move(imported);
    m_summary->setText(m_imported.size() == 1 ? tr("One ingredient in %1").arg(fileName)
                                              : tr("%n ingredients in %1", nullptr, int(m_imported.size())).arg(fileName));
    {
        const QSignalBlocker blocker(m_list);
        m_list->clear();
        for (const ImportedIngredient& each : m_imported) {
            const QString name = fromCore(each.ingredient.name);
            auto* item = new QListWidgetItem(each.guessed.empty() ? name : tr("%1 – with guesses").arg(name), m_list);
            item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
            item->setCheckState(Qt::Checked);
        }
    }
    m_list->setCurrentRow(0);
    showOne(0);
    countChosen();
    m_list->setFocus();
}

void ImportPreview::showOne(int row)
{
    const bool isThere = row >= 0 && std::size_t(row) < m_imported.size();
    const ImportedIngredient* imported = isThere ? &m_imported[std::size_t(row)] : nullptr;
    m_details->show(imported ? &imported->ingredient : nullptr, false, tr("There are no ingredients in this file."));
    m_account->setText(imported ? accountOf(*imported) : QString());
}

QString ImportPreview::accountOf(const ImportedIngredient& imported) const
{
    QStringList parts;
    if (const Ingredient* own = m_pantry.ownLike(imported.ingredient))
        parts << tr("It takes the place of your own “%1”.").arg(fromCore(own->name));
    else if (const Ingredient* known = m_pantry.catalogue().find(imported.ingredient.name))
        parts << tr("The catalogue has “%1” already. Recipes that say “%2” will take yours.")
                     .arg(fromCore(known->name), fromCore(imported.ingredient.name));
    parts << section(tr("Guessed, please look at it:"), imported.guessed) << section(tr("Taken from the file:"), imported.mapped)
          << section(tr("In the file, but not used:"), imported.unused);
    parts.removeAll(QString());
    return parts.join(QStringLiteral("\n\n"));
}

void ImportPreview::countChosen()
{
    int count = 0;
    for (int row = 0; row < m_list->count(); ++row)
        count += m_list->item(row)->checkState() == Qt::Checked ? 1 : 0;
    m_keep->setText(count == 1 ? tr("&Keep one ingredient") : tr("&Keep %n ingredients", nullptr, count));
    m_keep->setEnabled(count > 0);
}

std::vector<Ingredient> ImportPreview::chosen() const
{
    std::vector<Ingredient> ingredients;
    std::set<std::string> taken;
    for (int row = 0; row < m_list->count(); ++row) {
        if (m_list->item(row)->checkState() != Qt::Checked)
            continue;
        Ingredient ingredient = m_imported[std::size_t(row)].ingredient;
        // Two of one name in the file cannot both take the place of the same own ingredient.
        const Ingredient* own = m_pantry.ownLike(ingredient);
        ingredient.id = own && taken.insert(own->id).second ? own->id : std::string();
        ingredients.push_back(std::move(ingredient));
    }
    return ingredients;
}

}  // namespace firn::app
