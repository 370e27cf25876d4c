// SPDX-License-Identifier: MIT
//
// The candidates in the order of their table, to choose which two are looked at and which is built.
#pragma once

#include "decision/rows_model.h"

namespace tripoise {

/// A size, as it is called, and what it is taken for.
struct SizeRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(int rank MEMBER rank)
    Q_PROPERTY(QString mark MEMBER mark)
    Q_PROPERTY(QString spoken MEMBER spoken)
    Q_PROPERTY(bool broken MEMBER broken)
    Q_PROPERTY(bool shown MEMBER shown)
    Q_PROPERTY(bool beside MEMBER beside)
    Q_PROPERTY(bool chosen MEMBER chosen)

public:
    QString name;
    int rank = 0;
    QString mark;   ///< rank as a sign; empty where a limit is broken
    QString spoken; ///< name, rank and limits, for those who do not see it
    bool broken = false;
    bool shown = false;
    bool beside = false;
    bool chosen = false; ///< by the builder
    int frame = 0;       ///< index into the fitting's frames

    bool operator==(const SizeRow&) const = default;
};

class SizesModel : public ListOf<SizeRow, RowsModel> {
    Q_OBJECT
    QML_ELEMENT

public:
    using ListOf::ListOf;

    /// The size of a row is drawn whole. What was asked to stand beside it stays, or takes the
    /// place that falls free where it is the same; what stands there unasked goes on following the
    /// advice.
    Q_INVOKABLE void show(int row);
    Q_INVOKABLE void putBeside(int row);
    /// The one after what stands beside it now, round and round.
    Q_INVOKABLE void putNextBeside();
    /// The builder's word; -1 takes it back.
    Q_INVOKABLE void choose(int row);

protected:
    void renew() override;

private:
    /// -1 for the frame that is looked at unasked, so that it goes on being followed.
    [[nodiscard]] int pinned(int frame) const;
};

} // namespace tripoise
