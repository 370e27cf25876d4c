// SPDX-License-Identifier: MIT
//
// The command line: no display needed. Standard output holds the result alone; problems go to
// standard error, one a line.
#pragma once

#include <QStringList>

namespace tripoise {

enum ExitCode {
    Done = 0,
    CommandWrong = 2,
    InputWrong = 3,
    NothingFits = 4, ///< no size fits; the result is still written
};

// `arguments` are without the program's name.

[[nodiscard]] int runCommand(const QStringList& arguments);
/// Whether they ask for the window: no word, or a fitting's file alone.
[[nodiscard]] bool opensWindow(const QStringList& arguments);

} // namespace tripoise
