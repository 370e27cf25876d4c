// SPDX-License-Identifier: MIT
//
// A fitting written to its file beside the window's thread, one writing after the other.
#pragma once

#include "document/fitting.h"
#include "session/saving.h"

#include <QThreadPool>

#include <functional>
#include <mutex>
#include <optional>

namespace tripoise {

class Autosave {
public:
    struct Order {
        Fitting fitting;
        QString path;   ///< empty where there is no file yet:
        QString folder; ///< the first free name of this stem in this folder is taken
        QString stem;
        store::Over over;
    };
    struct Written {
        Order order; ///< with its path
        QByteArray text;
        SavedFitting saved;
    };

    /// `done` is called on the other thread after each writing.
    explicit Autosave(std::function<void()> done);

    /// Not while it is busy.
    void begin(Order order);
    [[nodiscard]] bool busy() const { return m_busy; }
    /// What was written, once; with `wait` when it is.
    [[nodiscard]] std::optional<Written> take(bool wait);

private:
    std::function<void()> m_done;
    bool m_busy = false;
    std::mutex m_mutex;
    std::optional<Written> m_written;
    QThreadPool m_writer; // last: it ends before what it uses goes
};

} // namespace tripoise
