#include "versions/version_model.h"

#include "bench/tool_tip.h"
#include "document/version_edits.h"
#include "gauges/wording.h"

#include <QFont>
#include <algorithm>

namespace firn::app {

namespace {

constexpr int indent = 4;  // blanks for each step away from the straight history

/// Whether the same lines stand in the same order, so that a list need not start anew.
bool areSameLines(const std::vector<Version>& versions, const std::vector<PlacedVersion>& placed,
    const std::vector<Version>& others, const std::vector<PlacedVersion>& otherPlaced)
{
    return std::ranges::equal(placed, otherPlaced, [&](const PlacedVersion& one, const PlacedVersion& other) {
        return one.depth == other.depth && versions[one.version].id == others[other.version].id;
    });
}

}  // namespace

VersionModel::VersionModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent)
    , m_document(document)
{
    connect(&document, &Document::changed, this, &VersionModel::follow);
    follow();
}

void VersionModel::follow()
{
    const Recipe& recipe = m_document.recipe();
    if (m_own != m_document.ownIngredients()) {
        m_own = m_document.ownIngredients();
        m_figures.clear();
    }
    const bool isStillAsKept = isAsKept(recipe);
    if (m_versions == recipe.versions && m_onBench == recipe.basedOn && m_isAsKept == isStillAsKept)
        return;
    std::vector<PlacedVersion> placed = history(recipe);
    const bool isSame = areSameLines(m_versions, m_placed, recipe.versions, placed);
    if (!isSame)
        beginResetModel();
    m_versions = recipe.versions;
    m_placed = std::move(placed);
    m_onBench = recipe.basedOn;
    m_isAsKept = isStillAsKept;
    std::erase_if(m_figures, [&recipe](const auto& each) { return !versionNamed(recipe, each.first); });
    if (!isSame)
        endResetModel();
    else if (!m_placed.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

const Version& VersionModel::versionAt(int row) const { return m_versions.at(m_placed.at(std::size_t(row)).version); }

int VersionModel::rowOf(const std::string& id) const
{
    const auto found =
        std::ranges::find_if(m_placed, [&](const PlacedVersion& placed) { return m_versions[placed.version].id == id; });
    return found == m_placed.end() ? -1 : int(found - m_placed.begin());
}

int VersionModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_placed.size()); }

int VersionModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : FreezingColumn + 1; }

const VersionModel::Figures& VersionModel::figuresOf(const Version& version) const
{
    Figures& figures = m_figures[version.id];
    if (!figures.sugars.isEmpty() && figures.of == version.recipe)
        return figures;
    figures.of = version.recipe;
    const Analysis analysis = analyse(version.recipe, m_document.catalogue(), conditionsOf(version.recipe));
    const bool isEmpty = analysis.mix.isEmpty();
    figures.sugars = isEmpty ? tr("none", "figure") : percentText(analysis.shares.sugars);
    const auto& freezingPoint = analysis.freezing.freezingPoint;
    figures.freezing = isEmpty || !freezingPoint ? tr("none", "figure") : degrees(freezingPoint->temperature);
    return figures;
}

QString VersionModel::textAt(const Version& version, int column) const
{
    switch (column) {
    case NameColumn:
        return nameOf(version);
    case BenchColumn:
        return version.id != m_onBench ? QString() : m_isAsKept ? tr("as kept") : tr("changed since");
    case DateColumn:
        return version.date.empty() ? QString() : dateText(version.date);
    case SugarsColumn:
        return figuresOf(version).sugars;
    case FreezingColumn:
        return figuresOf(version).freezing;
    default:
        return QString::fromStdString(version.note);
    }
}

QString VersionModel::tipAt(const Version& version, int column) const
{
    const QString text = textAt(version, column);
    if (column != NameColumn || version.basedOn.empty())
        return text;
    return text + u'\n' + tr("made from “%1”").arg(nameOfVersion(m_document.recipe(), version.basedOn));
}

QVariant VersionModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const Version& version = versionAt(index.row());
    const int column = index.column();
    switch (role) {
    case Qt::DisplayRole: {
        const std::size_t depth = column == NameColumn ? m_placed[std::size_t(index.row())].depth : 0;
        // A list has one line for a note.
        return QString(qsizetype(depth) * indent, u' ') + textAt(version, column).simplified();
    }
    case Qt::EditRole:
        if (column == DateColumn)
            return QDate::fromString(QString::fromStdString(version.date.substr(0, 10)), Qt::ISODate);
        return column == NameColumn ? QString::fromStdString(version.name) : textAt(version, column);
    case Qt::ToolTipRole:
        return toolTipText(tipAt(version, column));
    case Qt::AccessibleTextRole:
        return textAt(version, column);
    case Qt::TextAlignmentRole:
        return int(Qt::AlignVCenter | (column == SugarsColumn || column == FreezingColumn ? Qt::AlignRight : Qt::AlignLeft));
    case Qt::FontRole: {
        QFont font;
        font.setBold(column == NameColumn && version.id == m_onBench);
        return font;
    }
    default:
        return {};
    }
}

QVariant VersionModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (section == SugarsColumn || section == FreezingColumn ? Qt::AlignRight : Qt::AlignLeft));
    if (role != Qt::DisplayRole)
        return {};
    const QStringList titles{tr("Version"), tr("On the bench"), tr("Kept"), tr("Note"), tr("Sugars"), tr("Freezes from")};
    return titles.value(section);
}

bool VersionModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    if (!index.isValid() || role != Qt::EditRole)
        return false;
    const std::string id = versionAt(index.row()).id;
    if (index.column() == NameColumn)
        renameVersion(m_document, id, value.toString().trimmed().toStdString());
    else if (index.column() == NoteColumn)
        changeVersionNote(m_document, id, value.toString().toStdString());
    else if (index.column() == DateColumn)
        changeVersionDate(m_document, id, value.toDate());
    else
        return false;
    return true;
}

Qt::ItemFlags VersionModel::flags(const QModelIndex& index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    const bool isTyped = index.column() == NameColumn || index.column() == DateColumn || index.column() == NoteColumn;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | (isTyped ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

}  // namespace firn::app
