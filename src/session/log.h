// SPDX-License-Identifier: MIT
//
// What went wrong in the window, for whoever is asked about it: messages of the toolkit, in a file
// of the program's own folder that never grows beyond two of these. Nothing of a fitting gets there
// but the name of a file that a message speaks of.
#pragma once

#include <QString>

namespace tripoise::log {

inline constexpr qint64 mostBytes = 256 * 1024; // then the file becomes the older one

[[nodiscard]] QString path(); ///< "log.txt"; the older one is "log.old.txt" beside it
/// From here on; standard error gets them too.
void begin();

} // namespace tripoise::log
