// SPDX-License-Identifier: MIT
#include "decision/setup_model.h"

#include "wording/words.h"

namespace tripoise {

void SetupModel::renew()
{
    std::vector<SetupRow> rows;
    QString first, second, differences;
    if (const Candidate* one = shown()) {
        const Prepared& prepared = *solution()->prepared;
        const auto title = [&](const Candidate& candidate) {
            return sizeLabel(prepared.sizes[candidate.size].frame, prepared);
        };
        const auto advised = [](const Candidate& candidate) {
            return candidate.best ? &*candidate.best : nullptr;
        };
        Columns columns{advised(*one)};
        first = title(*one);
        if (const Candidate* other = beside()) {
            columns.push_back(advised(*other));
            second = title(*other);
        }
        rows = setupRows(columns, solution()->advice, prepared);
        if (!second.isEmpty())
            differences = differencesSentence(rows);
        for (SetupRow& row : backRows(columns, Telling::Briefly))
            rows.push_back(std::move(row));
    }
    tell(rows, first, second);
    if (differences != m_differences) {
        m_differences = differences;
        emit differencesChanged();
    }
}

} // namespace tripoise
