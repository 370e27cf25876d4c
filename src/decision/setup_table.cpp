// SPDX-License-Identifier: MIT
#include "decision/setup_table.h"

#include "wording/words.h"

namespace tripoise {

int SetupTable::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant SetupTable::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Label: return row.label;
    case Meaning: return row.meaning;
    case First: return row.first;
    case Second: return row.second;
    case Differs: return row.differs;
    case Part: return row.part;
    case Spoken: return row.spoken;
    default: return {};
    }
}

QHash<int, QByteArray> SetupTable::roleNames() const
{
    return {{Label, "label"},     {Meaning, "meaning"}, {First, "first"},  {Second, "second"},
            {Differs, "differs"}, {Part, "part"},       {Spoken, "spoken"}};
}

void SetupTable::tell(const std::vector<SetupRow>& rows, const QString& firstTitle,
                      const QString& secondTitle)
{
    std::vector<Row> next;
    for (const SetupRow& row : rows)
        next.push_back({row.label, row.meaning, unbroken(row.said.value(0)),
                        unbroken(row.said.value(1)), row.differs(), row.part,
                        setupSpoken(row, firstTitle, secondTitle)});
    replace(m_rows, std::move(next));
    if (firstTitle != m_firstTitle || secondTitle != m_secondTitle) {
        m_firstTitle = firstTitle;
        m_secondTitle = secondTitle;
        emit titlesChanged();
    }
}

} // namespace tripoise
