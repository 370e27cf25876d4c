// SPDX-License-Identifier: MIT
//
// A geometry table read and closed, as the command line writes it.
#pragma once

#include "table/read_table.h"

#include <QString>

#include <optional>
#include <string>

namespace tripoise::command {

enum class TableFormat { Text, Json, Csv };

/// By its name; text where none is asked for.
[[nodiscard]] std::optional<TableFormat> tableFormat(const QString& name);

[[nodiscard]] std::string tableText(const ReadTable& read, TableFormat format);

} // namespace tripoise::command
