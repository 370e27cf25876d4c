// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include <utility>

namespace tripoise::test {

/// What was warned of since it was last asked; nothing may be.
class Warnings {
public:
    static void gather() { before() = qInstallMessageHandler(&Warnings::take); }
    static QStringList taken() { return std::exchange(list(), {}); }

private:
    static QtMessageHandler& before()
    {
        static QtMessageHandler handler = nullptr;
        return handler;
    }
    static QStringList& list()
    {
        static QStringList warnings;
        return warnings;
    }
    static void take(QtMsgType type, const QMessageLogContext& context, const QString& text)
    {
        if (type != QtDebugMsg && type != QtInfoMsg)
            list() << text;
        before()(type, context, text);
    }
};

} // namespace tripoise::test
