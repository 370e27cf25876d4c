// SPDX-License-Identifier: MIT
//
// What to look at: limits that are broken, on any size, and what is worth telling about the rider
// and the size looked at.
#pragma once

#include "decision/rows_model.h"

namespace tripoise {

/// One finding.
struct CheckRow {
    Q_GADGET
    Q_PROPERTY(QString told MEMBER told)
    Q_PROPERTY(QString level MEMBER level)
    Q_PROPERTY(QString levelWord MEMBER levelWord)
    Q_PROPERTY(QString heading MEMBER heading)
    Q_PROPERTY(bool first MEMBER first)

public:
    QString told;
    QString level; ///< "note", "caution" or "limit"
    QString levelWord;
    QString
        heading; ///< over the first of those that belong together; empty where there is one sort
    bool first = false; ///< one of the few that are told before all else
    Severity severity = Severity::Note;

    bool operator==(const CheckRow&) const = default;
};

class ChecksModel : public ListOf<CheckRow, RowsModel> {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int limitCount READ limitCount NOTIFY counted)
    Q_PROPERTY(QString summary READ summary NOTIFY counted)
    Q_PROPERTY(int laterCount READ laterCount NOTIFY counted)

public:
    using ListOf::ListOf;

    [[nodiscard]] int limitCount() const { return m_limitCount; }
    [[nodiscard]] QString summary() const { return m_summary; } ///< of those not told first
    [[nodiscard]] int laterCount() const { return m_laterCount; }

signals:
    void counted();

protected:
    void renew() override;

private:
    int m_limitCount = 0;
    int m_laterCount = 0;
    QString m_summary;
};

} // namespace tripoise
