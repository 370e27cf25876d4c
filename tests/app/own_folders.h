// SPDX-License-Identifier: MIT
//
// Folders of the program's own, away from the user's, new for each test; and ways to stand in for a
// full disk and a missing permission.
#pragma once

#include <QDir>
#include <QFile>
#include <QSettings>
#include <QTemporaryDir>

#include <csignal>
#include <stdexcept>

#include <sys/resource.h>
#include <unistd.h>

namespace tripoise::test {

class OwnFolders {
public:
    OwnFolders() { use(m_folder.path()); }

    /// For this process and those it starts.
    static void use(const QString& folder)
    {
        for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
            qputenv(name, folder.toLocal8Bit());
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, folder);
    }
    [[nodiscard]] QString folder() const { return m_folder.path(); }
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    /// A file with these bytes; its path.
    [[nodiscard]] QString file(const QString& name, const QByteArray& bytes) const
    {
        QFile file(path(name));
        if (!QDir().mkpath(QFileInfo(file).path()) || !file.open(QIODevice::WriteOnly)
            || file.write(bytes) != bytes.size())
            throw std::runtime_error("cannot write " + name.toStdString());
        return file.fileName();
    }

private:
    QTemporaryDir m_folder;
};

inline QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// While it lives, no file grows beyond so many bytes, as on a disk that fills up.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes)
    {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit less{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &less);
    }
    ~FullDisk() { setrlimit(RLIMIT_FSIZE, &m_before); }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    rlimit m_before{};
};

/// While it lives, this process is held to permissions, even when root started it.
class Unprivileged {
public:
    Unprivileged()
    {
        if (m_root)
            m_dropped = seteuid(nobody) == 0;
    }
    ~Unprivileged()
    {
        if (m_dropped && seteuid(0) != 0)
            std::abort();
    }
    Unprivileged(const Unprivileged&) = delete;
    Unprivileged& operator=(const Unprivileged&) = delete;

    [[nodiscard]] bool holds() const { return !m_root || m_dropped; }

private:
    static constexpr uid_t nobody = 65534;
    bool m_root = geteuid() == 0;
    bool m_dropped = false;
};

} // namespace tripoise::test
