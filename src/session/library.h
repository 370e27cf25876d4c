// SPDX-License-Identifier: MIT
//
// The frames a shop keeps: one frame file for each model, in the program's own folder.
#pragma once

#include "frame/geometry.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace tripoise::library {

struct KeptFrame {
    std::string model;
    QString path;
    std::vector<FrameSize> sizes;

    bool operator==(const KeptFrame&) const = default;
};

/// By name. A file that cannot be read is passed over and stays where it is.
[[nodiscard]] std::vector<KeptFrame> all();

/// Sizes that were kept before stay, those of the same name are replaced; what the file held stays
/// as history. What the system said when that failed.
[[nodiscard]] std::optional<QString> keep(const std::string& model, std::vector<FrameSize> sizes);

/// What the file held stays as history. What the system said when that failed.
[[nodiscard]] std::optional<QString> forget(const QString& path);

} // namespace tripoise::library
