// SPDX-License-Identifier: MIT
#include "session/open_file.h"

#include <QFileInfo>

#include <utility>

namespace tripoise {
namespace {

constexpr int lookDelayMs = 200; // other programs put a file in place in several steps

} // namespace

OpenFile::OpenFile(QObject* parent) : QObject(parent)
{
    m_lookSoon.setSingleShot(true);
    m_lookSoon.setInterval(lookDelayMs);
    connect(&m_lookSoon, &QTimer::timeout, this, &OpenFile::look);
    const auto lookSoon = [this] { m_lookSoon.start(); };
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, lookSoon);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, lookSoon);
}

void OpenFile::hold(const QString& path, const QByteArray& bytes)
{
    if (m_path != path || isOpenElsewhere()) {
        m_lock.reset(); // first: both paths may lead to one file
        m_lock = path.isEmpty() ? nullptr : store::lockOf(path);
    }
    m_path = path;
    m_bytes = bytes;
    m_gone = !path.isEmpty() && !QFileInfo::exists(path);
    m_changed = false;
    watch();
    if (changed()) // by the time it is watched
        m_lookSoon.start();
}

bool OpenFile::is(const QString& path) const
{
    return path == m_path
           || (QFileInfo::exists(path) && QFileInfo(path) == QFileInfo(m_path)); // through a link
}

bool OpenFile::changed() const
{
    return !m_path.isEmpty() && QFileInfo::exists(m_path) && store::read(m_path).bytes != m_bytes;
}

void OpenFile::watch()
{
    const QStringList before = m_watcher.files() + m_watcher.directories();
    if (!before.isEmpty())
        m_watcher.removePaths(before);
    if (m_path.isEmpty())
        return;
    const QFileInfo file(m_path);
    if (file.exists())
        m_watcher.addPath(m_path);
    else if (QFileInfo::exists(file.absolutePath()))
        m_watcher.addPath(file.absolutePath()); // it may come back
}

void OpenFile::look()
{
    if (m_path.isEmpty())
        return;
    if (m_beingWritten) {
        m_lookSoon.start();
        return;
    }
    const bool wasGone = std::exchange(m_gone, !QFileInfo::exists(m_path));
    m_changed = changed();
    watch();
    if (m_gone && !wasGone)
        emit vanished();
    else if (m_changed)
        emit changedByAnother();
    else if (!m_gone && wasGone)
        emit cameBack();
}

} // namespace tripoise
