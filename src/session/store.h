// SPDX-License-Identifier: MIT
//
// Files that are never left half written or lost: a copy of what stands somewhere is kept before
// anything takes its place, and a damaged file is set aside as a copy. Copies lie in the program's
// own folder, which nobody else can look into.
#pragma once

#include "session/whole_file.h"

#include <QDateTime>
#include <QLockFile>

#include <memory>
#include <vector>

namespace tripoise::store {

using Read = whole_file::Read;
using whole_file::read;

/// The program's own folder for data; made when missing, and its owner's alone.
[[nodiscard]] QString folder(const QString& name = {});
/// Its file system has no modes: others can look into it.
[[nodiscard]] bool isOpenToOthers();
/// Removes what killed programs left in it and copies beyond the most that are kept, and takes away
/// what others may do there.
void tidy();

/// Puts a file of the program's own in its place, whatever stood there. What the system said when
/// that failed; then the file is as it was.
[[nodiscard]] std::optional<QString> write(const QString& path, const QByteArray& bytes);

/// What the caller of `save` knows, and wants.
struct Over {
    bool anything = false;  ///< else nothing may stand there
    QByteArray known{};     ///< what the caller itself read or wrote there
    bool keepsKnown = true; ///< a copy of that too
    whole_file::Access access{};
};
/// A file of the program's own, whatever stands there.
[[nodiscard]] inline Over overOwn(const QByteArray& known = {}, bool keepsKnown = true)
{
    return {true, known, keepsKnown, whole_file::ownAccess};
}
struct Saved {
    enum class State {
        Done,
        Taken,   ///< something stands there, and nothing may
        NotKept, ///< no copy of what stands there can be kept
        Failed
    };
    State state = State::Failed;
    QString why{};             ///< what the system said; after `Done`, against synchronising
    bool foreign = false;      ///< something else than was known stood there; a copy is kept
    bool severalNames = false; ///< the file had other names; they keep what it held
    bool tooOpen = false;      ///< the file system has no modes: others may read it
};
/// Puts bytes in a file's place once a copy of what stands there is kept. Unless `Done`, the file
/// is as it was. What another program puts there at the same moment is kept too.
[[nodiscard]] Saved save(const QString& path, const QByteArray& bytes, const Over& over);

/// Keeps a copy of what a file holds, at most `mostKept` of each file. What the system said when
/// there is something to be kept and it is not.
inline constexpr int mostKept = 20;
[[nodiscard]] std::optional<QString> keepHistory(const QString& path);
[[nodiscard]] QString historyOf(const QString& path);    ///< the folder of a file's copies
[[nodiscard]] QStringList copiesOf(const QString& path); ///< their paths, oldest first
[[nodiscard]] QDateTime keptAt(const QString& copy);     ///< when, by its name

struct History {
    QString origin; ///< the file; empty where it is not known any more
    QString folder;
    QStringList copies; ///< at least one
};
[[nodiscard]] std::vector<History> histories(); ///< of all files

/// Moves a file to a name that nothing bears, with its copies. False where that failed.
[[nodiscard]] bool move(const QString& from, const QString& to);

/// A lock file, taken where no other program has it, even on this value's own thread; it goes with
/// its value and with its program.
[[nodiscard]] std::unique_ptr<QLockFile> lock(const QString& lockFile);
/// The lock of a file that is worked on, whatever the way to it.
[[nodiscard]] std::unique_ptr<QLockFile> lockOf(const QString& path);
[[nodiscard]] inline bool isOfAnother(const QLockFile& lock)
{
    return lock.error() == QLockFile::LockFailedError;
}

/// Keeps damaged bytes, once, as a copy of the file of that path, at most `mostKept` of all files.
/// Where to; empty when that failed.
[[nodiscard]] QString setAside(const QString& path, const QByteArray& bytes);
[[nodiscard]] QString setAside(const QString& path);
[[nodiscard]] QStringList setAsideOf(const QString& path); ///< the copies' paths
[[nodiscard]] QStringList setAside();                      ///< of all files

/// Removes what a killed program left beside a file, once nothing in it is lost by that.
void clearLeftParts(const QString& path);

} // namespace tripoise::store
