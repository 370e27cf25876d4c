// SPDX-License-Identifier: MIT
#include "decision/uses_model.h"

#include "wording/sections.h"
#include "wording/words.h"

namespace tripoise {

void UsesModel::renew()
{
    std::vector<SetupRow> rows;
    QString firstTitle, secondTitle;
    Told told;
    m_order.clear();
    const Candidate* candidate = shown();
    if (candidate && candidate->best) {
        const Prepared& prepared = *solution()->prepared;
        const auto byShare = usesByShare(*candidate, solution()->fitting.riding.mix);
        told.heading = usesHeading(*candidate, prepared);
        for (const UseSetup* use : byShare) {
            m_order.push_back(use->use);
            told.uses << nameOf(use->use);
        }
        if (byShare.size() < 2) {
            told.hand = oneUseSentence();
        } else {
            const auto place = [this](const std::optional<Use>& use, int otherwise) {
                const auto at = std::find(m_order.begin(), m_order.end(), use);
                return at == m_order.end() ? otherwise : int(at - m_order.begin());
            };
            told.first = place(m_first, 0);
            told.second = place(m_second, told.first == 1 ? 0 : 1);
            if (told.second == told.first)
                told.second = told.first == 0 ? 1 : 0;
            const UseSetup& one = *byShare[std::size_t(told.first)];
            const UseSetup& other = *byShare[std::size_t(told.second)];
            const Columns columns{&one.advised, &other.advised};
            rows = setupRows(columns, solution()->advice, prepared);
            told.hand = unbroken(handSentence(one, other));
            told.differences = differencesSentence(rows);
            rows.push_back(ownBackRow(columns, Telling::Briefly));
            firstTitle = onlyUse(one.use);
            secondTitle = onlyUse(other.use);
        }
    }
    tell(rows, firstTitle, secondTitle);
    if (told != m_told) {
        m_told = std::move(told);
        emit this->told();
    }
}

void UsesModel::chooseFirst(int use)
{
    if (use < 0 || use >= int(m_order.size()) || use == m_told.first)
        return;
    if (use == m_told.second && m_told.first >= 0)
        m_second = m_order[std::size_t(m_told.first)];
    m_first = m_order[std::size_t(use)];
    renew();
}

void UsesModel::chooseSecond(int use)
{
    if (use < 0 || use >= int(m_order.size()) || use == m_told.second)
        return;
    if (use == m_told.first && m_told.second >= 0)
        m_first = m_order[std::size_t(m_told.second)];
    m_second = m_order[std::size_t(use)];
    renew();
}

} // namespace tripoise
