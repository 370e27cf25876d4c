// SPDX-License-Identifier: MIT
#include "decision/checks_model.h"

#include "wording/findings.h"
#include "wording/sections.h"
#include "wording/words.h"

namespace tripoise {
namespace {

constexpr int mostToldFirst = 3; // as many as the text of one screen tells

}

void ChecksModel::renew()
{
    std::vector<CheckRow> rows;
    const auto add = [&rows](const QString& heading, const Findings& findings) {
        bool first = true;
        for (const Finding& finding : findings) {
            rows.push_back({unbroken(sentence(finding)), keyOf(finding.severity),
                            severityWord(finding.severity), first ? heading : QString(), false,
                            finding.severity});
            first = false;
        }
    };
    m_limitCount = 0;
    if (const Candidate* size = shown()) {
        const Advice& advice = solution()->advice;
        const Prepared& prepared = *solution()->prepared;
        const auto limits = [&](const Candidate& candidate) {
            m_limitCount += int(candidate.limits.size());
            add(limitsSection(candidate, prepared).heading, candidate.limits);
        };
        limits(*size);
        for (const Candidate& other : advice.candidates)
            if (&other != size)
                limits(other);
        const Findings found = checksOf(advice, *size);
        add(m_limitCount > 0 ? checksSection(advice, *size).heading : QString(), found);
    }
    int told = 0;
    int laterLimits = 0;
    m_laterCount = 0;
    for (CheckRow& row : rows) {
        row.first = row.severity != Severity::Note && told < mostToldFirst;
        ++(row.first ? told : m_laterCount);
        if (!row.first && row.severity == Severity::Limit)
            ++laterLimits;
    }
    replace(m_rows, std::move(rows));
    m_summary = checksSummary(laterLimits, m_laterCount - laterLimits);
    emit counted();
}

} // namespace tripoise
