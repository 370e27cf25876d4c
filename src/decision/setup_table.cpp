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
    const auto spoken = [&](const SetupRow& row) {
        if (row.said.size() < 2)
            return Words::tr("%1: %2", "a line of a set-up").arg(row.label, row.said.value(0));
        return row.differs()
                   ? Words::tr("%1 differs: %2 %3, %4 %5", "a line of two set-ups: size, value")
                         .arg(row.label, firstTitle, row.said[0], secondTitle, row.said[1])
                   : Words::tr("%1: both %2", "a line of two set-ups").arg(row.label, row.said[0]);
    };
    std::vector<Row> next;
    for (const SetupRow& row : rows)
        next.push_back({row.label, row.meaning, unbroken(row.said.value(0)),
                        unbroken(row.said.value(1)), row.differs(), row.part, spoken(row)});
    replace(m_rows, std::move(next));
    if (firstTitle != m_firstTitle || secondTitle != m_secondTitle) {
        m_firstTitle = firstTitle;
        m_secondTitle = secondTitle;
        emit titlesChanged();
    }
}

} // namespace tripoise
