// SPDX-License-Identifier: MIT
//
// Two set-ups side by side: rows of a label, a value each, and whether they differ.
#pragma once

#include "decision/rows_model.h"
#include "wording/setup_rows.h"

namespace tripoise {

/// A line of the table.
struct SetupLine {
    Q_GADGET
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString meaning MEMBER meaning)
    Q_PROPERTY(QString first MEMBER first)
    Q_PROPERTY(QString second MEMBER second)
    Q_PROPERTY(bool differs MEMBER differs)
    Q_PROPERTY(bool part MEMBER part)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString label;
    QString meaning;
    QString first;
    QString second;
    bool differs = false;
    bool part = false;
    QString spoken; ///< the whole line, for those who do not see it

    bool operator==(const SetupLine&) const = default;
};

class SetupTable : public ListOf<SetupLine, RowsModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a table of one of its kinds")
    Q_PROPERTY(QString firstTitle READ firstTitle NOTIFY titlesChanged)
    Q_PROPERTY(QString secondTitle READ secondTitle NOTIFY titlesChanged)

public:
    using ListOf::ListOf;

    [[nodiscard]] QString firstTitle() const { return m_firstTitle; }
    [[nodiscard]] QString secondTitle() const { return m_secondTitle; } ///< empty with one column

signals:
    void titlesChanged();

protected:
    void tell(const std::vector<SetupRow>& rows, const QString& firstTitle,
              const QString& secondTitle);

private:
    QString m_firstTitle;
    QString m_secondTitle;
};

} // namespace tripoise
