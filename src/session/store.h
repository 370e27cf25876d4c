// SPDX-License-Identifier: MIT
//
// Files that are never left half written or lost: writes are atomic and reach the disk, what stood
// there before stays as dated history, a damaged file is set aside as a copy.
#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

namespace tripoise::store {

/// The program's own folder for data; made when missing.
[[nodiscard]] QString folder(const QString& name = {});

/// Empty when all of it is on the disk under its name, else what the system said. A failure leaves
/// the file as it was.
[[nodiscard]] std::optional<QString> write(const QString& path, const QByteArray& bytes);

struct Read {
    QByteArray bytes;
    QString failure; ///< what the system said; empty when it was read
    bool tooLarge = false;
};
[[nodiscard]] Read read(const QString& path);

/// Keeps a copy of a file's contents under the moment's date, at most `mostKept` of each file.
/// False when there is something to be kept and it is not.
inline constexpr int mostKept = 20;
bool keepHistory(const QString& path);
[[nodiscard]] QString historyOf(const QString& path); ///< the folder of a file's history
/// Copies a damaged file, once, where nobody trips over it; where to, or empty when that failed.
[[nodiscard]] QString setAside(const QString& path);

} // namespace tripoise::store
