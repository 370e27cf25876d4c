// SPDX-License-Identifier: MIT
//
// What is left of somebody in the program's own folders.
#pragma once

#include "app/own_folders.h"

#include <QDirIterator>

namespace tripoise::test {

/// All files anywhere in a folder that hold a text, or have it in their path.
inline QStringList filesHolding(const QByteArray& text, const QString& folder)
{
    QStringList found;
    for (QDirIterator each(folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
         each.hasNext();)
        if (each.next();
            bytesOf(each.filePath()).contains(text) || each.filePath().toUtf8().contains(text))
            found << each.filePath();
    return found;
}

} // namespace tripoise::test
