// SPDX-License-Identifier: MIT
//
// What is being worked on, written away as it changes, so that it outlives a crash. Writing is done
// on another thread, so that a slow disk holds up nobody's hand.
#pragma once

#include <QByteArray>
#include <QLockFile>
#include <QString>
#include <QStringList>
#include <QThreadPool>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace tripoise {

struct LeftOver {
    QByteArray bytes;
    QString origin; ///< the file it was a version of; empty for none
};

/// The draft of one running program. Each has a lock, so that two programs at once keep apart.
class Drafts {
public:
    /// Told, on another thread, after each writing: empty, or what the system said against it.
    using Written = std::function<void(const std::optional<QString>& failure)>;

    explicit Drafts(Written written);
    ~Drafts();
    Drafts(const Drafts&) = delete;
    Drafts& operator=(const Drafts&) = delete;

    /// The newest draft that a program left behind when it ended before saving; from now on it is
    /// this program's own. With an origin, that file's draft alone.
    [[nodiscard]] std::optional<LeftOver> takeOver(const QString& origin = {});
    /// Whether there is any left behind.
    [[nodiscard]] bool anyLeft() const;
    /// Leaves this program's draft where it is for good and goes on with a new one; where it lies.
    [[nodiscard]] QString setAside();

    void write(const QByteArray& bytes, const QString& origin);
    void drop();

    /// A draft that is not this program's.
    struct Other {
        QString name;
        LeftOver content;
        bool running = false; ///< another program works on it
    };
    [[nodiscard]] std::vector<Other> others() const;
    static bool remove(const QString& name); ///< false where it is still there

private:
    bool own(const QString& name); ///< false where another program has it
    [[nodiscard]] QStringList left() const;

    Written m_written;
    QString m_name;
    QStringList m_damaged; ///< not to be taken over again
    std::unique_ptr<QLockFile> m_lock;
    QThreadPool m_writer; // last: it ends before what it uses goes
};

} // namespace tripoise
