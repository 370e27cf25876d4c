// SPDX-License-Identifier: MIT
//
// The program a second time, as another process: a test starts itself and talks to it line by line.
#pragma once

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QTest>

#include <csignal>
#include <cstdio>

namespace tripoise::test {

class SecondProgram {
public:
    explicit SecondProgram(const QStringList& arguments)
    {
        m_program.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        m_program.start(QCoreApplication::applicationFilePath(), arguments);
    }
    ~SecondProgram() { kill(); }
    SecondProgram(const SecondProgram&) = delete;
    SecondProgram& operator=(const SecondProgram&) = delete;

    void say(const QByteArray& line)
    {
        m_program.write(line + '\n');
        m_program.waitForBytesWritten(answerWithinMs);
    }
    /// The next line it says; null when it ended or says nothing.
    [[nodiscard]] QByteArray hear()
    {
        QElapsedTimer timer;
        timer.start();
        while (!m_program.canReadLine())
            if (timer.elapsed() > answerWithinMs || !m_program.waitForReadyRead(answerWithinMs))
                return {};
        return m_program.readLine().trimmed();
    }
    /// In the middle of whatever it does; the last whole line that it said and nobody heard.
    QByteArray kill()
    {
        if (m_program.state() == QProcess::NotRunning)
            return {};
        ::kill(pid_t(m_program.processId()), SIGKILL);
        m_program.waitForFinished(answerWithinMs);
        QByteArray last;
        while (m_program.canReadLine())
            last = m_program.readLine().trimmed();
        return last;
    }

private:
    static constexpr int answerWithinMs = 20'000;
    QProcess m_program;
};

/// What the second program says and hears.
inline void answer(const QByteArray& line)
{
    std::printf("%s\n", line.constData());
    std::fflush(stdout);
}
inline QByteArray nextOrder()
{
    char line[4096];
    return std::fgets(line, sizeof line, stdin) ? QByteArray(line).trimmed() : QByteArray();
}

} // namespace tripoise::test
