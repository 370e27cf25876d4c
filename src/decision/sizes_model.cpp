// SPDX-License-Identifier: MIT
#include "decision/sizes_model.h"

#include "wording/size_words.h"
#include "wording/words.h"

namespace tripoise {

int SizesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant SizesModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Name: return row.name;
    case Rank: return row.rank;
    case Mark: return row.mark;
    case Spoken: return row.spoken;
    case Broken: return row.broken;
    case Shown: return row.shown;
    case Beside: return row.beside;
    default: return {};
    }
}

QHash<int, QByteArray> SizesModel::roleNames() const
{
    return {{Name, "name"},     {Rank, "rank"},   {Mark, "mark"},    {Spoken, "spoken"},
            {Broken, "broken"}, {Shown, "shown"}, {Beside, "beside"}};
}

void SizesModel::renew()
{
    std::vector<Row> rows;
    if (const Solution* answer = solution()) {
        for (const Candidate& candidate : answer->advice.candidates) {
            Row row;
            row.frame = int(candidate.size);
            row.name = sizeLabel(answer->prepared->sizes[candidate.size].frame, *answer->prepared);
            row.rank = candidate.rank;
            row.broken = !fitsAtAll(candidate.fit.state);
            row.shown = &candidate == shown();
            row.beside = &candidate == beside();
            row.mark = row.broken ? QString() : rankSign(candidate.rank);
            row.spoken = row.broken ? unfitSize(row.name, candidate.fit.state)
                                    : rankedSize(row.name, candidate.rank);
            rows.push_back(row);
        }
        std::sort(rows.begin(), rows.end(),
                  [](const Row& a, const Row& b) { return a.frame < b.frame; });
    }
    replace(m_rows, std::move(rows));
}

int SizesModel::pinned(int frame) const
{
    const Advice& advice = solution()->advice;
    const bool advised = frame >= 0 && advice.leading().size == std::size_t(frame);
    return advised ? -1 : frame;
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
