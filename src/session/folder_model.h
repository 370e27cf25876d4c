// SPDX-License-Identifier: MIT
//
// A folder as a list to choose a file from, and what a typed name or path means in it.
#pragma once

#include "session/row_list.h"

#include <QUrl>

namespace tripoise {

/// A file or a folder.
struct FolderRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(bool isFolder MEMBER isFolder)

public:
    QString name;
    bool isFolder = false;

    bool operator==(const FolderRow&) const = default;
};

class FolderModel : public ListOf<FolderRow> {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString folder READ folder NOTIFY changed)
    Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY changed)
    Q_PROPERTY(QUrl url READ url NOTIFY changed)
    Q_PROPERTY(QString message READ message NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)

public:
    using ListOf::ListOf;

    enum Purpose { Open, OpenTable, Save, SaveSheet, Folder };
    Q_ENUM(Purpose)

    /// To save, a name is offered that no file has yet.
    Q_INVOKABLE void begin(Purpose purpose, const QUrl& folder, const QString& name);
    [[nodiscard]] const QString& folder() const { return m_folder; }
    /// The typed text stays as it is.
    Q_INVOKABLE void go(const QString& folder);
    Q_INVOKABLE void goUp();
    Q_INVOKABLE QStringList places() const; ///< folders that are often wanted
    Q_INVOKABLE QString nameOf(const QString& place) const;

    [[nodiscard]] const QString& typed() const { return m_typed; }
    void setTyped(const QString& text); ///< a name, or a path from this folder, home or the root
    [[nodiscard]] QString path() const; ///< of the file that is meant; empty for no text
    [[nodiscard]] QUrl url() const { return QUrl::fromLocalFile(path()); }
    [[nodiscard]] QString message() const; ///< why it cannot be taken, else where it is
    [[nodiscard]] bool ready() const;
    /// Goes there, where a folder is meant; false where a file is.
    Q_INVOKABLE bool enter();

signals:
    void changed();

private:
    [[nodiscard]] QString meant() const; ///< as a path, without a suffix that it lacks
    [[nodiscard]] bool meansFolder() const;
    [[nodiscard]] bool fits(const QString& name) const;
    [[nodiscard]] QString freeName(const QString& name) const;

    QString m_folder;
    QStringList m_suffixes;
    bool m_saving = false;
    bool m_forFolder = false; ///< the folder itself is chosen
    QString m_offered;        ///< the name to save under
    QString m_typed;
};

} // namespace tripoise
