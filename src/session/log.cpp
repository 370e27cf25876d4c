// SPDX-License-Identifier: MIT
#include "session/log.h"

#include "session/store.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QMutex>

namespace tripoise::log {
namespace {

QtMessageHandler before = nullptr;
QMutex oneAtATime;

const char* levelOf(QtMsgType type)
{
    switch (type) {
    case QtDebugMsg: return "debug";
    case QtInfoMsg: return "info";
    case QtWarningMsg: return "warning";
    case QtCriticalMsg: return "critical";
    case QtFatalMsg: return "fatal";
    }
    return "";
}

void write(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    {
        const QMutexLocker lock(&oneAtATime);
        const QString file = path();
        if (QFileInfo(file).size() > mostBytes) {
            const QString older = QFileInfo(file).path() + QStringLiteral("/log.old.txt");
            QFile::remove(older);
            QFile::rename(file, older);
        }
        QFile log(file);
        if (log.open(QIODevice::WriteOnly | QIODevice::Append)) {
            log.setPermissions(QFile::ReadOwner | QFile::WriteOwner);
            const QString when = QDateTime::currentDateTimeUtc().toString(Qt::ISODate);
            log.write(QStringLiteral("%1 %2 %3\n")
                          .arg(when, QLatin1String(levelOf(type)), message.left(2000))
                          .toUtf8());
        }
    }
    if (before)
        before(type, context, message);
}

} // namespace

QString path()
{
    return store::folder() + QStringLiteral("/log.txt");
}

void begin()
{
    before = qInstallMessageHandler(write);
}

} // namespace tripoise::log
