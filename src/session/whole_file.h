// SPDX-License-Identifier: MIT
//
// Single files, read and put in place whole or not at all. Only ordinary files: a device or a pipe
// is neither opened nor replaced.
//
// New content is a Part first: a file beside its target under a name of its own, written and
// synchronised, which then takes the target's name in one step of the file system. QSaveFile (Qt
// 6.4) does not report a failed synchronisation, cannot refuse to replace, and does not give back
// what it replaced.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <optional>

#include <sys/types.h>

namespace tripoise::whole_file {

struct Read {
    QByteArray bytes;
    QString failure; ///< what the system said; empty when it was read
    bool tooLarge = false;
};
[[nodiscard]] Read read(const QString& path);

/// Where a path leads through its links; itself where it is none.
[[nodiscard]] QString targetOf(const QString& path);

/// What stands at a path.
struct Found {
    bool any = false;
    bool ordinary = false;
    bool severalNames = false; ///< hard links
    mode_t mode = 0;
    gid_t group = 0;
};
[[nodiscard]] Found find(const QString& path);
[[nodiscard]] QString notOrdinary(); ///< why it is refused

/// Who may read and write a file that is put in place.
struct Access {
    mode_t most = 0666; ///< a file that stood there, or the umask, may allow less
    bool own = false;   ///< `most` whatever the umask
};
inline constexpr Access ownAccess{0600, true};

enum class Placed {
    Done,
    Taken, ///< something stands there
    Gone,  ///< nothing stands there that could be given back
    Failed
};

class Part {
public:
    Part(const QString& target, const QByteArray& bytes, Access access);
    ~Part(); ///< what lies under its own name is removed
    Part(const Part&) = delete;
    Part& operator=(const Part&) = delete;

    /// What the system said. After `Done`: what it said against synchronising the folder.
    [[nodiscard]] const std::optional<QString>& failure() const { return m_failure; }
    [[nodiscard]] const QString& path() const { return m_path; } ///< under its own name
    /// Others may read more than was asked for: the file system has no modes.
    [[nodiscard]] bool tooOpen() const { return m_tooOpen; }

    Placed putWhereNothingIs();
    Placed putOver();
    /// What stood there gets the part's own name; where the file system cannot do that, it is
    /// replaced.
    Placed exchange();
    [[nodiscard]] bool gaveBack() const { return m_gaveBack; }
    void leave() { m_own = false; } ///< what lies under its own name stays there

private:
    void fail();
    [[nodiscard]] bool make(mode_t mode);
    [[nodiscard]] bool fill(const QByteArray& bytes) const;
    [[nodiscard]] Placed placed(bool done);

    QString m_target;
    QString m_path;
    int m_file = -1;
    bool m_own = false; ///< something lies under its own name that is to be removed
    bool m_tooOpen = false;
    bool m_gaveBack = false;
    std::optional<QString> m_failure;
};

/// Parts beside a target that a program left behind when it was killed. Without a file name, of all
/// targets in the folder.
[[nodiscard]] QStringList leftParts(const QString& folder, const QString& fileName = {});

} // namespace tripoise::whole_file
