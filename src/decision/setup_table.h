// SPDX-License-Identifier: MIT
//
// Two set-ups side by side: rows of a label, a value each, and whether they differ.
#pragma once

#include "decision/rows_model.h"
#include "wording/setup_rows.h"

namespace tripoise {

class SetupTable : public RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a table of one of its kinds")
    Q_PROPERTY(QString firstTitle READ firstTitle NOTIFY titlesChanged)
    Q_PROPERTY(QString secondTitle READ secondTitle NOTIFY titlesChanged)

public:
    enum Role { Label = Qt::UserRole + 1, Meaning, First, Second, Differs, Part, Spoken };

    using RowsModel::RowsModel;

    [[nodiscard]] QString firstTitle() const { return m_firstTitle; }
    [[nodiscard]] QString secondTitle() const { return m_secondTitle; } ///< empty with one column

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void titlesChanged();

protected:
    void tell(const std::vector<SetupRow>& rows, const QString& firstTitle,
              const QString& secondTitle);

private:
    struct Row {
        QString label;
        QString meaning;
        QString first;
        QString second;
        bool differs = false;
        bool part = false;
        QString spoken; ///< the whole line, for those who do not see it

        bool operator==(const Row&) const = default;
    };

    std::vector<Row> m_rows;
    QString m_firstTitle;
    QString m_secondTitle;
};

} // namespace tripoise
