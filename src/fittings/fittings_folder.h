// SPDX-License-Identifier: MIT
//
// The folder that the fittings of a shop lie in, one file each, and the names the program gives
// them: rider and date.
#pragma once

#include <QCoreApplication>
#include <QDate>
#include <QString>

#include <optional>
#include <string>

namespace tripoise::fittings {

/// As the builder chose it; else "Tripoise" among the documents.
[[nodiscard]] QString folder();
[[nodiscard]] QString ordinaryFolder();
void setFolder(const QString& folder);
/// Makes the ordinary one. One that was chosen and is gone stays gone: its disk may be away.
void makeFolder(const QString& folder);
/// Whether a file lies in the folder itself.
[[nodiscard]] bool isIn(const QString& path);

class FileNames {
    Q_DECLARE_TR_FUNCTIONS(FileNames)

public:
    /// Without number and suffix: "anna-s-2026-11-27".
    [[nodiscard]] static QString stemFor(const std::string& rider, const QDate& date);
    /// The same for a file that was named for the rider as called before, with its own date;
    /// nothing for another name.
    [[nodiscard]] static std::optional<QString>
    renewed(const QString& path, const std::string& before, const std::string& rider);
    /// The path with that stem, and a number from 2 on.
    [[nodiscard]] static QString path(const QString& folder, const QString& stem, int number);
};

} // namespace tripoise::fittings
