// SPDX-License-Identifier: MIT
//
// Choices as documents and screens spell them; empty for what is not stated or not known.
#pragma once

#include "cockpit/parts.h"
#include "frame/geometry.h"

#include <QString>

#include <optional>

namespace tripoise {

[[nodiscard]] QString keyOf(BarKind kind);
[[nodiscard]] QString keyOf(const std::optional<SteererMaterial>& material);
[[nodiscard]] std::optional<BarKind> barKindFrom(const QString& key);
[[nodiscard]] std::optional<SteererMaterial> materialFrom(const QString& key);

} // namespace tripoise
