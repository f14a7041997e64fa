// The versions of the recipe: keeping what is on the bench, going back, copying from, and asking for a comparison.
#pragma once

#include "document/document.h"

#include <QWidget>

class QLineEdit;
class QPushButton;
class QTreeView;

namespace firn::app {

class InkLabel;
class VersionModel;

class VersionsPanel : public QWidget {
    Q_OBJECT

public:
    /// The document must outlive the panel.
    explicit VersionsPanel(Document& document, QWidget* parent = nullptr);

    /// The caret into the name under which the bench is kept next.
    void askForName();

    /// Ids of the chosen versions, from the top.
    QStringList chosen() const;

public slots:
    /// Keeps what is on the bench under the name and with the note that are typed.
    void keep();
    void goBack();
    void copyRows();
    void remove();

signals:
    /// What came of it, in a sentence.
    void said(const QString& sentence);
    /// Versions that are to be held beside each other, by their ids.
    void compareWanted(const QStringList& ids);

protected:
    void changeEvent(QEvent* event) override;

private:
    void buildList();
    QWidget* buttons();
    void follow();
    void enable();
    void fitToFont();
    void rememberTyping();
    void recallTyping();

    Document& m_document;
    VersionModel* m_model;
    QLineEdit* m_name;
    QLineEdit* m_note;
    QPushButton* m_keep;
    InkLabel* m_hint;
    QTreeView* m_list;
    QPushButton* m_goBack;
    QPushButton* m_copy;
    QPushButton* m_compare;
    QPushButton* m_delete;
    std::string m_wanted;  // id of the version to choose once the list has it
};

}  // namespace firn::app
