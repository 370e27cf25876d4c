// SPDX-License-Identifier: MIT
#include "session/whole_file.h"

#include "document/json_text.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRandomGenerator>

#include <algorithm>
#include <cerrno>
#include <cstdio>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace tripoise::whole_file {
namespace {

constexpr int mostLinks = 40; // as many as Linux follows

QByteArray encoded(const QString& path)
{
    return QFile::encodeName(path);
}

/// A file descriptor that is closed.
class Descriptor {
public:
    explicit Descriptor(int file) : m_file(file) {}
    ~Descriptor()
    {
        if (m_file >= 0)
            ::close(m_file);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    operator int() const { return m_file; }

private:
    int m_file;
};

/// Not every file system can synchronise everything; that is no failure.
bool synchronised(int file)
{
    return ::fsync(file) == 0 || errno == EINVAL || errno == ENOTSUP;
}

bool unsupported(int error)
{
    return error == EINVAL || error == ENOSYS || error == ENOTSUP || error == EPERM;
}

/// The name in its folder reaches the disk as well.
bool folderSynchronised(const QString& path)
{
    const Descriptor folder(::open(encoded(QFileInfo(path).absolutePath()).constData(),
                                   O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    return folder >= 0 && synchronised(folder);
}

int renamed(const QString& from, const QString& to, [[maybe_unused]] unsigned flags)
{
    if (flags == 0)
        return ::rename(encoded(from).constData(), encoded(to).constData());
#ifdef RENAME_EXCHANGE
    return ::renameat2(AT_FDCWD, encoded(from).constData(), AT_FDCWD, encoded(to).constData(),
                       flags);
#else
    errno = ENOSYS;
    return -1;
#endif
}
#ifdef RENAME_EXCHANGE
constexpr unsigned noReplace = RENAME_NOREPLACE;
constexpr unsigned bothWays = RENAME_EXCHANGE;
#else
constexpr unsigned noReplace = 1;
constexpr unsigned bothWays = 2;
#endif

QString partsOf(const QString& fileName)
{
    const QByteArray hash =
        QCryptographicHash::hash(fileName.toUtf8(), QCryptographicHash::Sha1).toHex().left(12);
    return QStringLiteral(".tripoise-%1-").arg(QLatin1String(hash));
}

} // namespace

QString notOrdinary()
{
    return QFile::tr("not an ordinary file");
}

Read read(const QString& path)
{
    const QByteArray name = encoded(path);
    struct stat status {};
    if (::stat(name.constData(), &status) == 0 && !S_ISREG(status.st_mode))
        return {{}, S_ISDIR(status.st_mode) ? QFile::tr("Is a directory") : notOrdinary(), false};
    // A pipe that is put there meanwhile does not hold it up.
    const int descriptor = ::open(name.constData(), O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC);
    QFile file;
    if (descriptor < 0
        || !file.open(descriptor, QIODevice::ReadOnly | QIODevice::Unbuffered,
                      QFileDevice::AutoCloseHandle))
        return {{}, qt_error_string(errno), false};
    if (file.size() > qint64(mostBytes)) // not even read
        return {{}, {}, true};
    Read result{file.read(file.size() + 1), {}, false};
    if (file.error() != QFileDevice::NoError)
        return {{}, file.errorString(), false};
    return result;
}

QString targetOf(const QString& path)
{
    QString target = QFileInfo(path).absoluteFilePath();
    for (int i = 0; i < mostLinks && QFileInfo(target).isSymLink(); ++i)
        target = QFileInfo(target).symLinkTarget();
    return target;
}

Found find(const QString& path)
{
    struct stat status {};
    if (::stat(encoded(path).constData(), &status) != 0)
        return {};
    return {true, S_ISREG(status.st_mode), status.st_nlink > 1, status.st_mode & 0777,
            status.st_gid};
}

Part::Part(const QString& target, const QByteArray& bytes, Access access) : m_target(target)
{
    const Found before = find(target);
    if (before.any && ::faccessat(AT_FDCWD, encoded(target).constData(), W_OK, AT_EACCESS) != 0) {
        fail(); // a folder would let it be replaced all the same
        return;
    }
    mode_t mode = before.any && !access.own ? access.most & before.mode : access.most;
    if (!make(before.any ? 0600 : mode)) {
        fail();
        return;
    }
    m_own = true;
    struct stat status {};
    if (before.any && !access.own && ::fstat(m_file, &status) == 0 && status.st_gid != before.group
        && ::fchown(m_file, uid_t(-1), before.group) != 0)
        mode &= ~mode_t(070); // it would be another group's
    if (before.any || access.own)
        (void)::fchmod(m_file, mode); // some file systems refuse: what came of it counts
    m_tooOpen = ::fstat(m_file, &status) == 0 && (status.st_mode & 0777 & ~mode) != 0;
    if (!fill(bytes) || !synchronised(m_file))
        fail();
}

Part::~Part()
{
    if (m_own)
        ::unlink(encoded(m_path).constData());
    if (m_file >= 0)
        ::close(m_file);
}

void Part::fail()
{
    m_failure = qt_error_string(errno);
}

/// A name that is nobody's, locked as long as this program lives, so that what a killed one left
/// behind can be told.
bool Part::make(mode_t mode)
{
    const QFileInfo target(m_target);
    const QString beginning = target.absolutePath() + QLatin1Char('/') + partsOf(target.fileName());
    for (;;) {
        const quint32 number = QRandomGenerator::global()->generate();
        m_path = beginning + QStringLiteral("%1").arg(number, 8, 16, QLatin1Char('0'));
        m_file = ::open(encoded(m_path).constData(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
        if (m_file < 0 && errno == EEXIST)
            continue;
        if (m_file < 0)
            return false;
        (void)::flock(m_file, LOCK_EX | LOCK_NB);
        struct stat status {};
        if (::fstat(m_file, &status) != 0 || status.st_nlink > 0)
            return true;
        ::close(m_file); // cleared away before it was locked
    }
}

bool Part::fill(const QByteArray& bytes) const
{
    for (qsizetype at = 0; at < bytes.size();) {
        const ssize_t taken =
            ::write(m_file, bytes.constData() + at, std::size_t(bytes.size() - at));
        if (taken < 0 && errno != EINTR)
            return false;
        at += std::max<ssize_t>(taken, 0);
    }
    return true;
}

Placed Part::placed(bool done)
{
    if (!done) {
        const int error = errno;
        fail();
        return error == EEXIST ? Placed::Taken : error == ENOENT ? Placed::Gone : Placed::Failed;
    }
    m_own = m_gaveBack;
    if (!folderSynchronised(m_target))
        fail();
    return Placed::Done;
}

Placed Part::putWhereNothingIs()
{
    if (renamed(m_path, m_target, noReplace) == 0)
        return placed(true);
    if (!unsupported(errno))
        return placed(false);
    if (::link(encoded(m_path).constData(), encoded(m_target).constData()) == 0) {
        ::unlink(encoded(m_path).constData());
        return placed(true);
    }
    if (!unsupported(errno))
        return placed(false);
    errno = EEXIST; // nothing better on this file system
    return placed(!find(m_target).any && renamed(m_path, m_target, 0) == 0);
}

Placed Part::putOver()
{
    return placed(renamed(m_path, m_target, 0) == 0);
}

Placed Part::exchange()
{
    m_gaveBack = renamed(m_path, m_target, bothWays) == 0;
    return m_gaveBack || !unsupported(errno) ? placed(m_gaveBack) : putOver();
}

QStringList leftParts(const QString& folder, const QString& fileName)
{
    QStringList left;
    const QDir dir(folder);
    const QString beginning = fileName.isEmpty() ? QStringLiteral(".tripoise-") : partsOf(fileName);
    for (const QString& name :
         dir.entryList({beginning + QLatin1Char('*')}, QDir::Files | QDir::Hidden)) {
        const QString path = dir.filePath(name);
        const Descriptor file(::open(encoded(path).constData(), O_RDONLY | O_NONBLOCK | O_CLOEXEC));
        if (file >= 0 && ::flock(file, LOCK_EX | LOCK_NB) == 0)
            left << path;
    }
    return left;
}

} // namespace tripoise::whole_file
