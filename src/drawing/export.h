// SPDX-License-Identifier: MIT
//
// The side view as a picture file. Written whole or not at all: a failure leaves the file as it
// was. A QGuiApplication must exist (the offscreen platform will do).
#pragma once

#include "drawing/painter.h"

#include <QByteArray>
#include <QSize>

#include <optional>

namespace tripoise {

inline constexpr QSize pictureSize{1600, 1000};

// Empty when the file was written, else what the system said.

[[nodiscard]] std::optional<QString> writeWhole(const QString& path, const QByteArray& bytes);
[[nodiscard]] std::optional<QString> writeSvg(const QString& path, const SideView& view,
                                              const Theme& theme, const DrawingText& text,
                                              QSize size = pictureSize);
[[nodiscard]] std::optional<QString> writePng(const QString& path, const SideView& view,
                                              const Theme& theme, const DrawingText& text,
                                              QSize size = pictureSize);

} // namespace tripoise
