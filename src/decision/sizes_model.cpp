// SPDX-License-Identifier: MIT
#include "decision/sizes_model.h"

#include "wording/choice_words.h"
#include "wording/size_words.h"
#include "wording/words.h"

#include <algorithm>
#include <utility>

namespace tripoise {

void SizesModel::renew()
{
    std::vector<SizeRow> rows;
    const auto& word = fitting().choices.size;
    if (const Solution* answer = solution()) {
        for (const Candidate& candidate : answer->advice.candidates) {
            SizeRow row;
            row.frame = int(candidate.size);
            row.name = sizeLabel(answer->prepared->sizes[candidate.size].frame, *answer->prepared);
            row.rank = candidate.rank;
            row.broken = !fitsAtAll(candidate.fit.state);
            row.shown = &candidate == shown();
            row.beside = &candidate == beside();
            row.chosen = word && word->is(answer->prepared->sizes[candidate.size].frame);
            row.mark = row.broken ? QString() : rankSign(candidate.rank);
            row.spoken = row.broken ? unfitSize(row.name, candidate.fit.state)
                                    : rankedSize(row.name, candidate.rank);
            rows.push_back(row);
        }
        std::sort(rows.begin(), rows.end(),
                  [](const SizeRow& a, const SizeRow& b) { return a.frame < b.frame; });
    }
    replace(m_rows, std::move(rows));
}

void SizesModel::choose(int row)
{
    if (!session() || row >= count())
        return;
    Fitting next = fitting();
    std::optional<ChosenSize> size;
    if (row >= 0) {
        const FrameSize& frame =
            solution()->prepared->sizes[std::size_t(m_rows[std::size_t(row)].frame)].frame;
        size = {frame.model, frame.size};
    }
    chooseSize(next.choices, std::move(size));
    edit(std::move(next), sizeChosenStep(), QStringLiteral("choices/size"));
    session()->look(-1, -1); // what was chosen, and the advised one beside it
}

int SizesModel::pinned(int frame) const
{
    const auto followed = session()->followedCandidate();
    const bool unasked = frame >= 0 && followed
                         && solution()->advice.candidates[*followed].size == std::size_t(frame);
    return unasked ? -1 : frame;
}

void SizesModel::show(int row)
{
    if (!session() || row < 0 || row >= count())
        return;
    const int frame = m_rows[std::size_t(row)].frame;
    const int beside =
        frame == session()->askedBeside() ? session()->askedShown() : session()->askedBeside();
    session()->look(pinned(frame), beside);
}

void SizesModel::putNextBeside()
{
    const auto now =
        std::find_if(m_rows.begin(), m_rows.end(), [](const SizeRow& row) { return row.beside; });
    if (now == m_rows.end())
        return;
    auto next = now;
    do
        next = std::next(next) == m_rows.end() ? m_rows.begin() : std::next(next);
    while (next->shown);
    putBeside(int(next - m_rows.begin()));
}

void SizesModel::putBeside(int row)
{
    if (!session() || row < 0 || row >= count())
        return;
    const int frame = m_rows[std::size_t(row)].frame;
    const int shown = frame == session()->shownFrame() ? pinned(session()->besideFrame())
                                                       : session()->askedShown();
    session()->look(shown, frame);
}

} // namespace tripoise
