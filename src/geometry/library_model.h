// SPDX-License-Identifier: MIT
//
// The frames that the shop keeps, to choose sizes from.
#pragma once

#include "session/library.h"
#include "session/row_list.h"
#include "session/session_holder.h"

#include <set>

namespace tripoise {

class LibraryModel : public RowList, public SessionHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(tripoise::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(QString said READ said NOTIFY saidChanged)
    Q_PROPERTY(int ticked READ ticked NOTIFY tickedChanged)
    Q_PROPERTY(QString addText READ addText NOTIFY tickedChanged)

public:
    enum Role {
        Model = Qt::UserRole + 1,
        Sizes, ///< of { name, figures, ticked }
    };

    using RowList::RowList;

    [[nodiscard]] const QString& said() const { return m_said; }

    /// What is in the folder now; nothing is ticked.
    Q_INVOKABLE void refresh();
    Q_INVOKABLE void tick(int row, int size, bool ticked);
    [[nodiscard]] int ticked() const;
    [[nodiscard]] QString addText() const;
    /// The ticked sizes become candidates; false where there are too many.
    Q_INVOKABLE bool add();
    Q_INVOKABLE void forget(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void sessionChanged();
    void saidChanged();
    void tickedChanged();

private:
    void sessionSet() override;

    struct Row {
        library::KeptFrame frame;
        std::set<std::size_t> ticked;

        bool operator==(const Row&) const = default;
    };

    [[nodiscard]] std::vector<FrameSize> tickedSizes() const;
    void say(const QString& what);

    std::vector<Row> m_rows;
    QString m_said;
};

} // namespace tripoise
