// SPDX-License-Identifier: MIT
#include "session/store.h"

#include "document/json_text.h"

#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStandardPaths>

#ifdef Q_OS_UNIX
#include <fcntl.h>
#include <unistd.h>
#endif

namespace tripoise::store {
namespace {

/// The name in its folder reaches the disk as well.
void syncFolder(const QString& path)
{
#ifdef Q_OS_UNIX
    const int folder = ::open(QFile::encodeName(QFileInfo(path).absolutePath()).constData(),
                              O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return;
    ::fsync(folder);
    ::close(folder);
#else
    Q_UNUSED(path)
#endif
}

/// A disk that fills up takes a part first, and says why with the next.
bool writeAll(QSaveFile& file, const QByteArray& bytes)
{
    qint64 at = 0;
    while (at < bytes.size()) {
        const qint64 taken = file.write(bytes.constData() + at, bytes.size() - at);
        if (taken <= 0)
            return false;
        at += taken;
    }
    return true;
}

QString stamp()
{
    return QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyyMMdd'T'HHmmsszzz'Z'"));
}

} // namespace

QString folder(const QString& name)
{
    const QDir base(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    const QString path = name.isEmpty() ? base.path() : base.filePath(name);
    QDir().mkpath(path);
    return path;
}

std::optional<QString> write(const QString& path, const QByteArray& bytes)
{
    // Unbuffered, since QSaveFile (Qt 6.4) does not notice when the last of a buffer finds no room,
    // and would put the cut-off file in the place of the whole one.
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered) || !writeAll(file, bytes)
        || !file.commit())
        return file.errorString();
    syncFolder(path);
    return std::nullopt;
}

Read read(const QString& path)
{
    QFile file(path);
    if (QFileInfo(path).isDir())
        return {{}, QFile::tr("Is a directory"), false};
    if (!file.open(QIODevice::ReadOnly))
        return {{}, file.errorString(), false};
    if (file.size() > qint64(mostBytes)) // not even read
        return {{}, {}, true};
    Read result{file.read(mostBytes + 1), {}, false};
    if (file.error() != QFileDevice::NoError)
        result.failure = file.errorString();
    return result;
}

QString historyOf(const QString& path)
{
    const QByteArray hash = QCryptographicHash::hash(QFileInfo(path).absoluteFilePath().toUtf8(),
                                                     QCryptographicHash::Sha1)
                                .toHex()
                                .left(12);
    return folder(QStringLiteral("history/%1").arg(QLatin1String(hash)));
}

bool keepHistory(const QString& path)
{
    if (!QFileInfo::exists(path))
        return true;
    const Read old = read(path);
    if (!old.failure.isEmpty() || old.tooLarge)
        return false;
    QDir kept(historyOf(path));
    const QStringList names = kept.entryList(QDir::Files, QDir::Name);
    if (old.bytes.isEmpty()
        || (!names.isEmpty() && read(kept.filePath(names.last())).bytes == old.bytes))
        return true;
    if (write(kept.filePath(stamp() + QStringLiteral(".json")), old.bytes))
        return false;
    for (qsizetype i = 0; i + mostKept <= names.size(); ++i)
        kept.remove(names[i]);
    return true;
}

QString setAside(const QString& path)
{
    const Read damaged = read(path);
    if (!damaged.failure.isEmpty() || damaged.tooLarge)
        return {};
    const QDir kept(folder(QStringLiteral("damaged")));
    for (const QString& name : kept.entryList(QDir::Files, QDir::Name | QDir::Reversed))
        if (name.endsWith(QFileInfo(path).fileName())
            && read(kept.filePath(name)).bytes == damaged.bytes)
            return kept.filePath(name);
    const QString copy = kept.filePath(stamp() + QLatin1Char('-') + QFileInfo(path).fileName());
    return write(copy, damaged.bytes) ? QString() : copy;
}

} // namespace tripoise::store
