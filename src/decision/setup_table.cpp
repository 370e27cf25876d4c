// SPDX-License-Identifier: MIT
#include "decision/setup_table.h"

#include "wording/words.h"

namespace tripoise {

void SetupTable::tell(const std::vector<SetupRow>& rows, const QString& firstTitle,
                      const QString& secondTitle)
{
    std::vector<SetupLine> next;
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
