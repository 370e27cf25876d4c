// SPDX-License-Identifier: MIT
#include "session/drafts.h"

#include "session/store.h"

#include <QDir>
#include <QUuid>

namespace tripoise {
namespace {

QString pathOf(const QString& name, const char* suffix)
{
    return QDir(store::folder(QStringLiteral("drafts"))).filePath(name + QLatin1String(suffix));
}

QString originOf(const QString& name)
{
    return QString::fromUtf8(store::read(pathOf(name, ".origin")).bytes);
}

/// Names of the drafts that nobody works on, newest first.
QStringList leftBehind(const QString& except)
{
    QStringList names;
    const QDir drafts(store::folder(QStringLiteral("drafts")));
    for (const QFileInfo& file :
         drafts.entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Time)) {
        const QString name = file.completeBaseName();
        QLockFile lock(pathOf(name, ".lock"));
        lock.setStaleLockTime(0); // stale only when its program is gone
        if (name != except && lock.tryLock())
            names << name;
    }
    return names;
}

} // namespace

Drafts::Drafts()
{
    own(QUuid::createUuid().toString(QUuid::Id128));
}

void Drafts::own(const QString& name)
{
    m_name = name;
    m_lock = std::make_unique<QLockFile>(pathOf(name, ".lock"));
    m_lock->setStaleLockTime(0);
    m_lock->tryLock();
}

std::optional<LeftOver> Drafts::takeOver(const QString& origin)
{
    for (const QString& name : leftBehind(m_name)) {
        if (!origin.isEmpty() && originOf(name) != origin)
            continue;
        const LeftOver left{store::read(pathOf(name, ".json")).bytes, originOf(name)};
        own(name);
        return left;
    }
    return std::nullopt;
}

bool Drafts::anyLeft() const
{
    return !leftBehind(m_name).isEmpty();
}

void Drafts::write(const QByteArray& bytes, const QString& origin)
{
    if (store::write(pathOf(m_name, ".origin"), origin.toUtf8())
        || store::write(pathOf(m_name, ".json"), bytes))
        qWarning("the draft could not be kept");
}

void Drafts::drop()
{
    QFile::remove(pathOf(m_name, ".json"));
    QFile::remove(pathOf(m_name, ".origin"));
}

} // namespace tripoise
