// SPDX-License-Identifier: MIT
#include "decision/rows_model.h"

namespace tripoise {

void RowsModel::sessionSet()
{
    on(&Session::answerChanged, this, &RowsModel::renew);
    emit sessionChanged();
    renew();
}

const Solution* RowsModel::solution() const
{
    return session() && session()->solution().prepared ? &session()->solution() : nullptr;
}

const Candidate* RowsModel::candidate(const std::optional<std::size_t>& index) const
{
    return solution() && index ? &solution()->advice.candidates[*index] : nullptr;
}

const Candidate* RowsModel::shown() const
{
    return session() ? candidate(session()->shownCandidate()) : nullptr;
}

const Candidate* RowsModel::beside() const
{
    return session() ? candidate(session()->besideCandidate()) : nullptr;
}

} // namespace tripoise
