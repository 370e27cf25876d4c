// SPDX-License-Identifier: MIT
#include "session/solver.h"

namespace tripoise {

Solver::Solver(const Tables& tables, Deliver deliver)
    : m_tables(tables), m_deliver(std::move(deliver)),
      m_thread([this](const std::stop_token& quit) { run(quit); })
{
}

Solver::~Solver()
{
    m_thread.request_stop(); // first: what waits is not begun any more
    const std::lock_guard lock(m_mutex);
    m_current.request_stop();
}

quint64 Solver::ask(const Fitting& fitting)
{
    const std::lock_guard lock(m_mutex);
    m_waiting = fitting;
    m_current.request_stop();
    m_asked.notify_one();
    return ++m_question;
}

void Solver::run(const std::stop_token& quit)
{
    Solution last;
    while (true) {
        Fitting fitting;
        quint64 question = 0;
        std::stop_token stop;
        {
            std::unique_lock lock(m_mutex);
            m_asked.wait(lock, quit, [this] { return m_waiting.has_value(); });
            if (quit.stop_requested()) // whatever waits
                return;
            fitting = *std::exchange(m_waiting, std::nullopt);
            question = m_question;
            m_current = std::stop_source();
            stop = m_current.get_token();
        }
        Solution solution = solve(fitting, m_tables, last, stop);
        if (stop.stop_requested())
            continue;
        last = solution;
        m_deliver(question, std::move(solution));
    }
}

} // namespace tripoise
