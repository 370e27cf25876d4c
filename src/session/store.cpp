// SPDX-License-Identifier: MIT
#include "session/store.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

#include <algorithm>
#include <cerrno>

namespace tripoise::store {
namespace {

using State = Saved::State;
using whole_file::ownAccess;
using whole_file::Part;
using whole_file::Placed;

constexpr QFile::Permissions ownFolder = QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner;
constexpr QFile::Permissions ownFile = QFile::ReadOwner | QFile::WriteOwner;
constexpr QFile::Permissions others = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup
                                      | QFile::ReadOther | QFile::WriteOther | QFile::ExeOther;
constexpr int mostTries = 100; // while others write to the same file all the time
constexpr int digits = 8;
constexpr int longestName = 50; // of a file, in the name of its copy
const QString dateFormat = QStringLiteral("-yyyyMMdd'T'HHmmsszzz'Z'"); // UTC
const QString damagedName = QStringLiteral("damaged");
const QString historyName = QStringLiteral("history");
const QString originSuffix = QStringLiteral(".origin");

void permit(const QString& path, QFile::Permissions wanted)
{
    if ((QFileInfo(path).permissions() & (ownFolder | others)) != wanted)
        QFile::setPermissions(path, wanted);
}

QDir dataFolder()
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
}

/// A folder that is its owner's alone, whatever the umask; with the one above, where that is named
/// for the program too.
void makeOwn(const QString& path)
{
    const QFileInfo above(QFileInfo(path).path());
    const QString organisation = QCoreApplication::organizationName();
    if (!organisation.isEmpty() && above.fileName() == organisation && above.path() != path)
        makeOwn(above.filePath());
    else
        QDir().mkpath(above.filePath());
    QDir().mkdir(path, ownFolder);
    if (QFileInfo(path).isDir())
        permit(path, ownFolder);
}

QString hashOf(const QString& path)
{
    const QByteArray target = whole_file::targetOf(path).toUtf8();
    const QByteArray hash = QCryptographicHash::hash(target, QCryptographicHash::Sha1);
    return QLatin1String(hash.toHex().left(12));
}

QStringList numbered(const QDir& folder)
{
    return folder.entryList({QStringLiteral("[0-9]*")}, QDir::Files, QDir::Name);
}

void removeOldest(const QDir& folder)
{
    const QStringList names = numbered(folder);
    for (qsizetype i = 0; i + mostKept < names.size(); ++i)
        QFile::remove(folder.filePath(names[i]));
}

/// The same for copies, of which several programs may keep the same at once: those do not count.
void removeOldCopies(const QDir& folder)
{
    QStringList names = numbered(folder);
    std::reverse(names.begin(), names.end());
    QList<QByteArray> known;
    for (const QString& name : names) {
        const Read copy = read(folder.filePath(name));
        const bool again = known.contains(copy.bytes);
        if (again || known.size() >= mostKept)
            QFile::remove(folder.filePath(name));
        else
            known << copy.bytes;
    }
}

struct Added {
    QString path;
    QString failure; ///< what the system said
};

/// The next file in a folder of numbered ones: their order is that of the numbers, whatever the
/// clock says, and one that another program takes meanwhile is left to it. The date is for people.
Added add(const QDir& folder, const QString& suffix, const QByteArray& bytes)
{
    const QStringList names = numbered(folder);
    int number = names.isEmpty() ? 0 : names.last().left(digits).toInt();
    const QString date = QDateTime::currentDateTimeUtc().toString(dateFormat);
    for (;;) {
        const QString path = folder.filePath(
            QStringLiteral("%1").arg(++number, digits, 10, QLatin1Char('0')) + date + suffix);
        Part part(path, bytes, ownAccess);
        if (part.failure())
            return {{}, *part.failure()};
        const Placed placed = part.putWhereNothingIs();
        if (placed == Placed::Taken)
            continue;
        if (placed != Placed::Done || part.failure())
            return {{}, *part.failure()};
        return {path, {}};
    }
}

QStringList pathsIn(const QDir& folder)
{
    QStringList paths = numbered(folder);
    for (QString& path : paths)
        path = folder.filePath(path);
    return paths;
}

QString whyUnread(const Read& read)
{
    return read.tooLarge ? qt_error_string(EFBIG) : read.failure;
}

/// Why these bytes of a file cannot be kept; nothing where they are.
std::optional<QString> keep(const QString& target, const QByteArray& bytes)
{
    const QStringList copies = copiesOf(target);
    if (bytes.isEmpty())
        return std::nullopt;
    const QString name = historyName + QLatin1Char('/') + hashOf(target);
    const QDir kept(folder(name));
    if (!copies.isEmpty() && read(copies.last()).bytes == bytes) {
        if (copies.size() > mostKept) // one who was to remove the oldest was killed
            removeOldCopies(kept);
        return std::nullopt;
    }
    const QString origin = dataFolder().filePath(name + originSuffix);
    if (read(origin).bytes != target.toUtf8()) // by which it is found when the rider is deleted
        if (const auto failure = write(origin, target.toUtf8()))
            return failure;
    const Added added = add(kept, QStringLiteral(".json"), bytes);
    if (added.path.isEmpty())
        return added.failure;
    removeOldCopies(kept);
    return std::nullopt;
}

/// Nothing where another program was quicker and it is to be tried again.
std::optional<Saved> trySaving(const QString& target, const QByteArray& bytes, const Over& over)
{
    const whole_file::Found found = whole_file::find(target);
    if (found.any && !found.ordinary)
        return Saved{State::Failed, whole_file::notOrdinary()};
    if (found.any && !over.anything)
        return Saved{State::Taken};
    Saved saved{State::Done};
    saved.severalNames = found.severalNames;
    const auto failureToKeep = [&](const Read& old) {
        saved.foreign = saved.foreign
                        || (!old.bytes.isEmpty() && old.bytes != over.known && old.bytes != bytes);
        const QString why = whyUnread(old);
        if (!why.isEmpty())
            return std::optional(why);
        return over.keepsKnown || old.bytes != over.known ? keep(target, old.bytes) : std::nullopt;
    };
    Read before;
    if (found.any) {
        before = read(target);
        if (const auto why = failureToKeep(before))
            return Saved{State::NotKept, *why};
    }
    Part part(target, bytes, over.access);
    if (part.failure())
        return Saved{State::Failed, *part.failure()};
    saved.tooOpen = part.tooOpen();
    if (found.any && read(target).bytes != before.bytes)
        return std::nullopt;
    switch (found.any ? part.exchange() : part.putWhereNothingIs()) {
    case Placed::Taken:
    case Placed::Gone: return std::nullopt;
    case Placed::Failed: return Saved{State::Failed, *part.failure()};
    case Placed::Done: break;
    }
    saved.why = part.failure().value_or(QString());
    if (!part.gaveBack())
        return saved;
    const Read displaced = read(part.path());
    if (displaced.bytes == before.bytes && displaced.failure.isEmpty())
        return saved;
    const auto why = failureToKeep(displaced); // written there in this very moment
    if (!why)
        return saved;
    (void)part.exchange();
    if (read(part.path()).bytes != bytes)
        part.leave();
    return Saved{State::NotKept, *why};
}

} // namespace

QString folder(const QString& name)
{
    QString path = dataFolder().path();
    makeOwn(path);
    for (const QString& part : name.split(QLatin1Char('/'), Qt::SkipEmptyParts)) {
        path += QLatin1Char('/') + part;
        makeOwn(path);
    }
    return path;
}

bool isOpenToOthers()
{
    return QFileInfo(folder()).permissions() & others;
}

void tidy()
{
    const QString own = folder();
    QStringList folders{own};
    for (QDirIterator each(own, QDir::Dirs | QDir::NoDotAndDotDot, QDirIterator::Subdirectories);
         each.hasNext();)
        folders << each.next();
    for (const QString& each : folders) {
        permit(each, ownFolder);
        for (const QString& left : whole_file::leftParts(each))
            QFile::remove(left);
        const QDir dir(each);
        for (const QString& name : dir.entryList(QDir::Files | QDir::Hidden))
            permit(dir.filePath(name), ownFile);
    }
    const QDir kept(folder(historyName));
    for (const QString& name : kept.entryList(QDir::Dirs | QDir::NoDotAndDotDot))
        if (kept.rmdir(name)) // nothing is kept of its file any more
            QFile::remove(kept.filePath(name) + originSuffix);
    removeOldest(QDir(folder(damagedName)));
    const QFileInfo settings(QSettings().fileName()); // has the names of the last files
    if (settings.dir().dirName() == QCoreApplication::organizationName()) {
        makeOwn(settings.path());
        if (settings.exists())
            permit(settings.filePath(), ownFile);
    }
}

std::optional<QString> write(const QString& path, const QByteArray& bytes)
{
    Part part(whole_file::targetOf(path), bytes, ownAccess);
    if (!part.failure())
        (void)part.putOver();
    return part.failure();
}

Saved save(const QString& path, const QByteArray& bytes, const Over& over)
{
    const QString target = whole_file::targetOf(path);
    for (int i = 0; i < mostTries; ++i)
        if (const auto saved = trySaving(target, bytes, over))
            return *saved;
    return {State::Failed, qt_error_string(EBUSY)};
}

std::optional<QString> keepHistory(const QString& path)
{
    if (!whole_file::find(path).any)
        return std::nullopt;
    const Read old = read(path);
    const QString why = whyUnread(old);
    return why.isEmpty() ? keep(whole_file::targetOf(path), old.bytes) : why;
}

QString historyOf(const QString& path)
{
    return dataFolder().filePath(historyName + QLatin1Char('/') + hashOf(path));
}

QStringList copiesOf(const QString& path)
{
    return pathsIn(historyOf(path));
}

QDateTime keptAt(const QString& copy)
{
    QDateTime when =
        QDateTime::fromString(QFileInfo(copy).completeBaseName().mid(digits), dateFormat);
    when.setTimeSpec(Qt::UTC);
    return when;
}

std::vector<History> histories()
{
    std::vector<History> all;
    const QDir kept(folder(historyName));
    for (const QString& name : kept.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        const QString path = kept.filePath(name);
        const QStringList copies = pathsIn(path);
        if (!copies.isEmpty())
            all.push_back({QString::fromUtf8(read(path + originSuffix).bytes), path, copies});
    }
    return all;
}

bool move(const QString& from, const QString& to)
{
    const QString before = historyOf(from);
    const QString after = historyOf(to);
    if (!QFile::rename(from, to))
        return false;
    if (QDir().rename(before, after)) {
        QFile::remove(before + originSuffix);
        if (const auto failure = write(after + originSuffix, whole_file::targetOf(to).toUtf8()))
            qWarning("%s: %s", qPrintable(after), qPrintable(*failure));
    }
    return true;
}

std::unique_ptr<QLockFile> lock(const QString& lockFile)
{
    auto taken = std::make_unique<QLockFile>(lockFile);
    taken->setStaleLockTime(0); // stale only when its program is gone
    if (taken->tryLock())
        QFile::setPermissions(lockFile, ownFile);
    return taken;
}

std::unique_ptr<QLockFile> lockOf(const QString& path)
{
    return lock(
        QDir(folder(QStringLiteral("open"))).filePath(hashOf(path) + QStringLiteral(".lock")));
}

QString setAside(const QString& path, const QByteArray& bytes)
{
    const QStringList before = setAsideOf(path);
    for (const QString& copy : before)
        if (read(copy).bytes == bytes)
            return copy;
    const QString name = QFileInfo(path).fileName().right(longestName);
    const Added added =
        add(folder(damagedName), QStringLiteral("-%1-%2").arg(hashOf(path), name), bytes);
    removeOldest(folder(damagedName));
    return added.path;
}

QString setAside(const QString& path)
{
    const Read damaged = read(path);
    return whyUnread(damaged).isEmpty() ? setAside(path, damaged.bytes) : QString();
}

QStringList setAside()
{
    return pathsIn(dataFolder().filePath(damagedName));
}

QStringList setAsideOf(const QString& path)
{
    return setAside().filter(QStringLiteral("-%1-").arg(hashOf(path)));
}

void clearLeftParts(const QString& path)
{
    const QFileInfo target(whole_file::targetOf(path));
    for (const QString& left : whole_file::leftParts(target.path(), target.fileName())) {
        const QByteArray bytes = read(left).bytes;
        QStringList known = copiesOf(path) << target.filePath();
        known.removeIf([&](const QString& copy) { return read(copy).bytes != bytes; });
        if (bytes.isEmpty() || !known.isEmpty() || !setAside(path, bytes).isEmpty())
            QFile::remove(left);
    }
}

} // namespace tripoise::store
