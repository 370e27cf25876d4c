// SPDX-License-Identifier: MIT
//
// Answers fittings away from the window's thread. The latest question wins: asking again stops what
// is being worked out, and an answer to an older question is never delivered.
#pragma once

#include "session/solution.h"

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

#include <QtGlobal>

namespace tripoise {

class Solver {
public:
    /// `deliver` is called on the solver's own thread.
    using Deliver = std::function<void(quint64 question, Solution)>;
    Solver(const Tables& tables, Deliver deliver);
    ~Solver();
    Solver(const Solver&) = delete;
    Solver& operator=(const Solver&) = delete;

    /// Number of the question, counting up.
    quint64 ask(const Fitting& fitting);

private:
    void run(const std::stop_token& quit);

    const Tables& m_tables;
    Deliver m_deliver;
    std::mutex m_mutex;
    std::condition_variable_any m_asked;
    std::optional<Fitting> m_waiting;
    quint64 m_question = 0;
    std::stop_source m_current;
    std::jthread m_thread; // last, so that it stops before what it uses goes
};

} // namespace tripoise
