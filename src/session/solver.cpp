// SPDX-License-Identifier: MIT
#include "session/solver.h"

namespace tripoise {

Solver::Solver(const Tables& tables, Deliver deliver)
    : m_tables(tables), m_deliver(std::move(deliver)),
      m_beside([this](quint64 question, const Fitting& fitting, const std::stop_token& stop) {
          Solution solution = solve(fitting, m_tables, m_last, stop);
          if (stop.stop_requested())
              return;
          m_last = solution;
          m_deliver(question, std::move(solution));
      })
{
}

} // namespace tripoise
