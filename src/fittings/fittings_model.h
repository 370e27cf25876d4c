// SPDX-License-Identifier: MIT
//
// The page of the fittings: the folder as a list, newest first, narrowed by what is typed; or the
// earlier versions of one. Files are read beside the window's thread.
#pragma once

#include "fittings/fittings_index.h"
#include "session/beside.h"
#include "session/row_list.h"

namespace tripoise {

class FittingsModel : public RowList {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString folder READ folder NOTIFY changed)
    Q_PROPERTY(QString versionsOf READ versionsOf WRITE setVersionsOf NOTIFY changed)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY changed)
    Q_PROPERTY(QString message READ message NOTIFY changed)
    Q_PROPERTY(bool wrong READ wrong NOTIFY changed)

public:
    enum Role {
        Path = Qt::UserRole + 1,
        Rider,
        Named, ///< it has a rider's name
        Frames,
        Verdict,
        Date,
        Points, ///< for a FramePicture
        Readable
    };

    explicit FittingsModel(QObject* parent = nullptr);

    Q_INVOKABLE void refresh(); ///< looks anew; every text is made anew at once
    [[nodiscard]] QString folder() const;
    /// The path of the one whose versions are listed; empty for the folder.
    [[nodiscard]] const QString& versionsOf() const { return m_versionsOf; }
    void setVersionsOf(const QString& path);
    /// Words and parts of words, each of which a fitting has in rider, frames, date or file's name.
    [[nodiscard]] const QString& search() const { return m_search; }
    void setSearch(const QString& search);
    [[nodiscard]] QString message() const; ///< why there is no list; empty where there is one
    [[nodiscard]] bool wrong() const { return !m_listing.failure.isEmpty(); }
    Q_INVOKABLE int rowOf(const QString& path) const; ///< -1 where it is not listed

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void changed();
    void listed(); ///< rows may stand elsewhere

private:
    struct Row {
        QString path;
        QString rider;
        QString frames;
        QString verdict;
        QString date;
        QList<double> points;
        bool named = true;
        bool readable = true;
        QString found; ///< what is searched

        bool operator==(const Row&) const = default;
    };

    void receive(fittings::Listing listing);
    void say();
    void narrow();

    fittings::Listing m_listing;
    bool m_looked = false;
    QString m_versionsOf;
    QString m_search;
    std::vector<Row> m_all;
    std::vector<Row> m_rows;
    Beside<fittings::Listing> m_beside; // last: its thread ends first
};

} // namespace tripoise
