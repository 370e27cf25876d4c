// SPDX-License-Identifier: MIT
#include "command/console.h"

#include "document/json_text.h"
#include "wording/problems.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QFile>
#include <QFileInfo>

namespace tripoise::command {
namespace {

Problem notReadable(const QString& why, const std::string& wanted)
{
    Problem problem{ProblemCode::NotReadable, {}, why.toStdString(), {}, {}, {}, {}};
    if (!wanted.empty())
        problem.names.push_back(wanted);
    return problem;
}

Problem tooLarge(qint64 size)
{
    return {ProblemCode::TooLarge, {}, std::to_string(size), {}, double(mostBytes), "bytes", {}};
}

} // namespace

bool say(FILE* stream, const QString& text)
{
    const QByteArray bytes = visible(text).toUtf8();
    return std::fwrite(bytes.data(), 1, std::size_t(bytes.size()), stream)
               == std::size_t(bytes.size())
           && std::fflush(stream) == 0;
}

void complain(const QString& line)
{
    say(stderr, visibleLine(line) + QLatin1Char('\n'));
}

void report(const QString& file, const Problems& problems)
{
    for (const Problem& problem : problems)
        complain(Words::tr("%1: %2").arg(file, sentence(problem)));
}

std::variant<std::string, Problem> bytesOf(const QString& path, const std::string& wanted)
{
    QFile file(path);
    if (path == QLatin1String("-")) {
        if (!file.open(stdin, QIODevice::ReadOnly))
            return notReadable(file.errorString(), wanted);
        QByteArray bytes; // a pipe gives what it has so far
        for (QByteArray more = file.read(mostBytes + 1);
             !more.isEmpty() && bytes.size() <= qsizetype(mostBytes);
             more = file.read(mostBytes + 1))
            bytes += more;
        if (bytes.size() > qsizetype(mostBytes))
            return tooLarge(bytes.size());
        return bytes.toStdString();
    }
    if (QFileInfo(path).isDir())
        return notReadable(Words::tr("a folder"), wanted);
    if (!file.open(QIODevice::ReadOnly))
        return notReadable(file.errorString(), wanted);
    if (file.size() > qint64(mostBytes)) // not even read
        return tooLarge(file.size());
    return file.read(mostBytes + 1).toStdString();
}

} // namespace tripoise::command
