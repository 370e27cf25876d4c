// SPDX-License-Identifier: MIT
//
// What every command does with files and streams. No character that a terminal would obey gets out
// of here: see wording/visible.h.
#pragma once

#include "base/problem.h"

#include <QString>

#include <cstdio>
#include <string>
#include <variant>

namespace tripoise::command {

/// Whether all of it was written.
bool say(FILE* stream, const QString& text);
inline bool say(FILE* stream, const std::string& text)
{
    return say(stream, QString::fromStdString(text));
}
/// A message of one line, whatever is in it.
void complain(const QString& line);

/// Every problem on standard error, one a line.
void report(const QString& file, const Problems& problems);

/// A file's bytes, or why it cannot be read; "-" is standard input. `wanted` tells what should
/// stand in it ("table"), empty for a fitting.
[[nodiscard]] std::variant<std::string, Problem> bytesOf(const QString& path,
                                                         const std::string& wanted = {});

} // namespace tripoise::command
