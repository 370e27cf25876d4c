// SPDX-License-Identifier: MIT
//
// The candidates in the order of their table, to choose which two are looked at and which is built.
#pragma once

#include "decision/rows_model.h"

namespace tripoise {

class SizesModel : public RowsModel {
    Q_OBJECT
    QML_ELEMENT

public:
    enum Role { Name = Qt::UserRole + 1, Rank, Mark, Spoken, Broken, Shown, Beside, Chosen };

    using RowsModel::RowsModel;

    /// The size of a row is drawn whole. What was asked to stand beside it stays, or takes the
    /// place that falls free where it is the same; what stands there unasked goes on following the
    /// advice.
    Q_INVOKABLE void show(int row);
    Q_INVOKABLE void putBeside(int row);
    /// The one after what stands beside it now, round and round.
    Q_INVOKABLE void putNextBeside();
    /// The builder's word; -1 takes it back.
    Q_INVOKABLE void choose(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

protected:
    void renew() override;

private:
    struct Row {
        int frame = 0; ///< index into the fitting's frames
        QString name;
        int rank = 0;
        QString mark;   ///< rank as a sign; empty where a limit is broken
        QString spoken; ///< name, rank and limits, for those who do not see it
        bool broken = false;
        bool shown = false;
        bool beside = false;
        bool chosen = false; ///< by the builder

        bool operator==(const Row&) const = default;
    };

    /// -1 for the frame that is looked at unasked, so that it goes on being followed.
    [[nodiscard]] int pinned(int frame) const;

    std::vector<Row> m_rows;
};

} // namespace tripoise
