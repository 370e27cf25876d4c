// SPDX-License-Identifier: MIT
#include "session/folder_model.h"

#include "session/opening.h"
#include "session/recents.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace tripoise {
namespace {

constexpr qsizetype mostRecentPlaces = 3;

QString standard(QStandardPaths::StandardLocation location)
{
    return QStandardPaths::writableLocation(location);
}

/// Where the disks are that a person plugs in.
QStringList plugged()
{
    QStringList disks;
    const QString user = QDir::home().dirName();
    for (const QString& above : {QStringLiteral("/media/") + user,
                                 QStringLiteral("/run/media/") + user, QStringLiteral("/Volumes")})
        for (const QFileInfo& disk :
             QDir(above).entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name))
            disks << disk.filePath();
    return disks;
}

} // namespace

void FolderModel::begin(Purpose purpose, const QUrl& folder, const QString& name)
{
    const QStringList fittings{QStringLiteral("json")};
    m_forFolder = purpose == Folder;
    m_suffixes = m_forFolder            ? QStringList()
                 : purpose == Save      ? fittings
                 : purpose == SaveSheet ? QStringList{QStringLiteral("pdf")}
                 : purpose == OpenTable ? tableSuffixes()
                                        : fittings + tableSuffixes();
    m_saving = purpose == Save || purpose == SaveSheet;
    m_offered = name;
    m_typed.clear();
    go(folder.toLocalFile());
    setTyped(m_saving ? freeName(name) : QString());
}

void FolderModel::go(const QString& folder)
{
    QDir dir(folder);
    while (!dir.exists() && !dir.isRoot()) // deleted meanwhile
        dir.setPath(QFileInfo(dir.absolutePath()).path());
    m_folder = QDir::cleanPath(dir.absolutePath());
    std::vector<FolderRow> rows;
    for (const QFileInfo& each :
         dir.entryInfoList(QDir::Dirs | QDir::Files | QDir::NoDotAndDotDot,
                           QDir::DirsFirst | QDir::Name | QDir::IgnoreCase | QDir::LocaleAware))
        if (each.isDir() || fits(each.fileName()))
            rows.push_back({each.fileName(), each.isDir()});
    replace(m_rows, std::move(rows));
    emit changed();
}

void FolderModel::goUp()
{
    go(QFileInfo(m_folder).path());
}

QStringList FolderModel::places() const
{
    QStringList places{QDir::homePath(), standard(QStandardPaths::DocumentsLocation)};
    const QStringList files = recents::all();
    for (const QString& file : files.mid(0, mostRecentPlaces))
        places << QFileInfo(file).path();
    places << plugged();
    places.removeDuplicates();
    places.removeIf([](const QString& place) { return !QFileInfo(place).isDir(); });
    return places;
}

QString FolderModel::nameOf(const QString& place) const
{
    if (place == QDir::homePath())
        return tr("Home");
    if (place == standard(QStandardPaths::DocumentsLocation))
        return tr("Documents");
    return QDir(place).isRoot() ? place : QDir(place).dirName();
}

void FolderModel::setTyped(const QString& text)
{
    if (m_typed == text)
        return;
    m_typed = text;
    emit changed();
}

QString FolderModel::meant() const
{
    const QString text = m_typed.trimmed();
    if (text == QLatin1String("~") || text.startsWith(QLatin1String("~/")))
        return QDir::cleanPath(QDir::homePath() + text.mid(1));
    return QDir::cleanPath(QDir(m_folder).absoluteFilePath(text));
}

/// A name that only lacks the suffix of a file is the file's first, where one is saved.
bool FolderModel::meansFolder() const
{
    const QString text = m_typed.trimmed();
    return !text.isEmpty()
           && (text.endsWith(QLatin1Char('/')) || text.endsWith(QLatin1String("..")) || !m_saving)
           && QFileInfo(meant()).isDir();
}

QString FolderModel::path() const
{
    if (m_forFolder)
        return m_typed.trimmed().isEmpty() ? m_folder : meant();
    if (m_typed.trimmed().isEmpty())
        return {};
    const QString path = meant();
    const bool whole = fits(path) || (!m_saving && QFileInfo(path).isFile());
    return whole ? path : path + QLatin1Char('.') + m_suffixes.constFirst();
}

QString FolderModel::message() const
{
    const QString file = path();
    if (m_forFolder)
        return QFileInfo(file).isDir() ? QString() : tr("There is no folder %1.").arg(file);
    if (file.isEmpty() || meansFolder())
        return {};
    const QFileInfo info(file);
    if (!QFileInfo(info.path()).isDir())
        return tr("There is no folder %1.").arg(info.path());
    if (info.isDir())
        return tr("%1 is a folder.").arg(file);
    return m_saving || info.exists() ? file : tr("There is no file %1.").arg(file);
}

bool FolderModel::ready() const
{
    return m_forFolder ? message().isEmpty()
                       : !path().isEmpty() && (meansFolder() || message() == path());
}

bool FolderModel::enter()
{
    if (!meansFolder())
        return false;
    const QString there = meant();
    setTyped(m_saving ? m_offered : QString());
    go(there);
    return true;
}

bool FolderModel::fits(const QString& name) const
{
    return m_suffixes.contains(QFileInfo(name).suffix(), Qt::CaseInsensitive);
}

QString FolderModel::freeName(const QString& name) const
{
    const QFileInfo wanted(name);
    QString found = name;
    for (int i = 2; QFileInfo::exists(QDir(m_folder).filePath(found)); ++i)
        found =
            QStringLiteral("%1-%2.%3").arg(wanted.completeBaseName()).arg(i).arg(wanted.suffix());
    return found;
}

} // namespace tripoise
