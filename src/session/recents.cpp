// SPDX-License-Identifier: MIT
#include "session/recents.h"

#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace tripoise::recents {
namespace {

const QString key = QStringLiteral("recents");

/// The names of riders stand in the paths: nobody else reads them.
void put(const QStringList& paths)
{
    QSettings settings;
    settings.setValue(key, paths);
    settings.sync();
    QFile::setPermissions(settings.fileName(), QFile::ReadOwner | QFile::WriteOwner);
}

} // namespace

QStringList all()
{
    return QSettings().value(key).toStringList().mid(0, most);
}

void remember(const QString& path)
{
    QStringList paths = all();
    paths.removeAll(path);
    paths.prepend(path);
    put(paths.mid(0, most));
}

void forget(const QString& path)
{
    QStringList paths = all();
    if (paths.removeAll(path) > 0)
        put(paths);
}

QString folderBeside(const QString& path)
{
    const QFileInfo folder(QFileInfo(path).absolutePath());
    return !path.isEmpty() && folder.isDir()
               ? folder.filePath()
               : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

} // namespace tripoise::recents
