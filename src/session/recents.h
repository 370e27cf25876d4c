// SPDX-License-Identifier: MIT
//
// The files that were opened or saved last, newest first.
#pragma once

#include <QStringList>

namespace tripoise::recents {

inline constexpr qsizetype most = 10;

[[nodiscard]] QStringList all(); ///< paths
void remember(const QString& path);
void forget(const QString& path);
/// The folder of a file, else the one for documents.
[[nodiscard]] QString folderBeside(const QString& path);

} // namespace tripoise::recents
