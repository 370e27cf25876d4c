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
QStringList leftBehind(const QStringList& except)
{
    QStringList names;
    const QDir drafts(store::folder(QStringLiteral("drafts")));
    for (const QFileInfo& file :
         drafts.entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Time)) {
        const QString name = file.completeBaseName();
        QLockFile lock(pathOf(name, ".lock"));
        lock.setStaleLockTime(0); // stale only when its program is gone
        if (!except.contains(name) && lock.tryLock())
            names << name;
    }
    return names;
}

QString freshName()
{
    return QUuid::createUuid().toString(QUuid::Id128);
}

} // namespace

Drafts::Drafts(Written written) : m_written(std::move(written))
{
    m_writer.setMaxThreadCount(1); // one after the other
    own(freshName());
}

Drafts::~Drafts() = default;

bool Drafts::own(const QString& name)
{
    auto lock = std::make_unique<QLockFile>(pathOf(name, ".lock"));
    lock->setStaleLockTime(0);
    const bool alone = lock->tryLock();
    if (!alone && lock->error() == QLockFile::LockFailedError)
        return false; // another program was quicker
    m_name = name;
    m_lock = std::move(lock);
    return true;
}

std::optional<LeftOver> Drafts::takeOver(const QString& origin)
{
    for (const QString& name : left()) {
        if ((!origin.isEmpty() && originOf(name) != origin) || !own(name))
            continue;
        return LeftOver{store::read(pathOf(name, ".json")).bytes, originOf(name)};
    }
    return std::nullopt;
}

bool Drafts::anyLeft() const
{
    return !left().isEmpty();
}

QStringList Drafts::left() const
{
    return leftBehind(QStringList(m_damaged) << m_name);
}

QString Drafts::setAside()
{
    const QString draft = pathOf(m_name, ".json");
    const QString kept =
        QDir(store::folder(QStringLiteral("damaged"))).filePath(QFileInfo(draft).fileName());
    const bool moved = QFile::rename(draft, kept);
    if (moved)
        QFile::remove(pathOf(m_name, ".origin"));
    m_damaged << m_name;
    own(freshName());
    return moved ? kept : draft;
}

void Drafts::write(const QByteArray& bytes, const QString& origin)
{
    m_writer.clear(); // what has not been begun is old now
    m_writer.start([bytes, origin, name = m_name, this] {
        auto failure = store::write(pathOf(name, ".origin"), origin.toUtf8());
        if (!failure)
            failure = store::write(pathOf(name, ".json"), bytes);
        m_written(failure);
    });
}

void Drafts::drop()
{
    m_writer.clear();
    m_writer.waitForDone();
    QFile::remove(pathOf(m_name, ".json"));
    QFile::remove(pathOf(m_name, ".origin"));
}

} // namespace tripoise
