// SPDX-License-Identifier: MIT
//
// What is being worked on, written away as it changes, so that it outlives a crash.
#pragma once

#include <QLockFile>
#include <QString>

#include <memory>
#include <optional>

namespace tripoise {

struct LeftOver {
    QByteArray bytes;
    QString origin; ///< the file it was a version of; empty for none
};

/// The drafts of one running program. Each has a lock, so that two programs at once keep apart.
class Drafts {
public:
    Drafts();

    /// The newest draft that a program left behind when it ended before saving; from now on it is
    /// this program's own. With an origin, that file's draft alone.
    [[nodiscard]] std::optional<LeftOver> takeOver(const QString& origin = {});
    /// Whether there is any left behind.
    [[nodiscard]] bool anyLeft() const;

    void write(const QByteArray& bytes, const QString& origin);
    void drop();

private:
    void own(const QString& name);

    QString m_name;
    std::unique_ptr<QLockFile> m_lock;
};

} // namespace tripoise
