// SPDX-License-Identifier: MIT
//
// Work beside the window's thread. The latest question wins: asking again, or letting go, stops
// what is being worked on, and so does the end.
#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

#include <QtGlobal>

namespace tripoise {

template <typename Question> class Beside {
public:
    /// Called on the other thread; `stop` says that nobody waits for it any more.
    using Work = std::function<void(quint64 number, Question, const std::stop_token& stop)>;

    explicit Beside(Work work)
        : m_work(std::move(work)), m_thread([this](const std::stop_token& quit) { run(quit); })
    {
    }
    ~Beside()
    {
        m_thread.request_stop(); // first: what waits is not begun any more
        const std::lock_guard lock(m_mutex);
        m_current.request_stop();
    }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    /// Number of the question, counting up.
    quint64 ask(Question question)
    {
        const std::lock_guard lock(m_mutex);
        m_waiting = std::move(question);
        m_current.request_stop();
        m_asked.notify_one();
        return ++m_number;
    }
    /// What was asked last is not wanted any more.
    void letGo()
    {
        const std::lock_guard lock(m_mutex);
        m_waiting.reset();
        m_current.request_stop();
    }

private:
    void run(const std::stop_token& quit)
    {
        while (true) {
            std::optional<Question> question;
            quint64 number = 0;
            std::stop_token stop;
            {
                std::unique_lock lock(m_mutex);
                m_asked.wait(lock, quit, [this] { return m_waiting.has_value(); });
                if (quit.stop_requested()) // whatever waits
                    return;
                question = std::exchange(m_waiting, std::nullopt);
                number = m_number;
                m_current = std::stop_source();
                stop = m_current.get_token();
            }
            m_work(number, std::move(*question), stop);
        }
    }

    Work m_work;
    std::mutex m_mutex;
    std::condition_variable_any m_asked;
    std::optional<Question> m_waiting;
    quint64 m_number = 0;
    std::stop_source m_current;
    std::jthread m_thread; // last, so that it stops before what it uses goes
};

} // namespace tripoise
