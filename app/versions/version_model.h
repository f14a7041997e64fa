// The recipe's versions as a list reads them: each under the one that it was made from, with its main figures.
#pragma once

#include "document/document.h"
#include "recipe/versions.h"

#include <QAbstractTableModel>
#include <unordered_map>

namespace firn::app {

class VersionModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { NameColumn, BenchColumn, DateColumn, NoteColumn, SugarsColumn, FreezingColumn };

    explicit VersionModel(Document& document, QObject* parent = nullptr);

    const Version& versionAt(int row) const;
    /// -1 if there is no such version.
    int rowOf(const std::string& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Figures {
        Recipe of;
        QString sugars;
        QString freezing;
    };

    void follow();
    const Figures& figuresOf(const Version& version) const;
    QString textAt(const Version& version, int column) const;
    /// Says beside a name why it stands where it stands.
    QString tipAt(const Version& version, int column) const;

    Document& m_document;
    std::vector<Version> m_versions;
    std::vector<PlacedVersion> m_placed;
    std::string m_onBench;  // id of the version that the bench is based on
    bool m_isAsKept = false;
    std::vector<Ingredient> m_own;
    mutable std::unordered_map<std::string, Figures> m_figures;  // worked out when a line comes into view
};

}  // namespace firn::app
