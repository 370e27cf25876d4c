// SPDX-License-Identifier: MIT
//
// The file that a fitting stands in, watched: whether it still holds what was read or written here,
// and whether another window works on it.
#pragma once

#include "session/store.h"

#include <QByteArray>
#include <QFileSystemWatcher>
#include <QLockFile>
#include <QTimer>

#include <memory>

namespace tripoise {

class OpenFile : public QObject {
    Q_OBJECT

public:
    explicit OpenFile(QObject* parent = nullptr);

    /// From now on this file, which held these bytes a moment ago; no path for none.
    void hold(const QString& path, const QByteArray& bytes);

    /// This program is writing to it: what stands there is judged afterwards.
    void setBeingWritten(bool written) { m_beingWritten = written; }

    [[nodiscard]] const QString& path() const { return m_path; }
    /// Another window had it first.
    [[nodiscard]] bool isOpenElsewhere() const { return m_lock && store::isOfAnother(*m_lock); }
    [[nodiscard]] bool is(const QString& path) const; ///< the same file, whatever the way to it
    [[nodiscard]] bool gone() const { return m_gone; }
    [[nodiscard]] const QByteArray& bytes() const { return m_bytes; } ///< what it held
    /// Whether something else stands there now. Read anew: its time may be what it was.
    [[nodiscard]] bool changed() const;
    /// Whether it holds no longer what it held, as far as was noticed.
    [[nodiscard]] bool astray() const { return m_gone || m_changed; }

signals:
    void vanished();
    void cameBack();
    void changedByAnother();

private:
    void watch();
    void look();

    QString m_path;
    QByteArray m_bytes;
    std::unique_ptr<QLockFile> m_lock;
    bool m_gone = false;
    bool m_changed = false;
    bool m_beingWritten = false;
    QTimer m_lookSoon;
    QFileSystemWatcher m_watcher;
};

} // namespace tripoise
