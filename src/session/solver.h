// SPDX-License-Identifier: MIT
//
// Answers fittings away from the window's thread; an answer to an older question is never
// delivered.
#pragma once

#include "session/beside.h"
#include "session/solution.h"

namespace tripoise {

class Solver {
public:
    /// `deliver` is called on the solver's own thread.
    using Deliver = std::function<void(quint64 question, Solution)>;
    Solver(const Tables& tables, Deliver deliver);

    /// Number of the question, counting up.
    quint64 ask(const Fitting& fitting) { return m_beside.ask(fitting); }

private:
    const Tables& m_tables;
    Deliver m_deliver;
    Solution m_last; ///< of the other thread
    Beside<Fitting> m_beside;
};

} // namespace tripoise
