// SPDX-License-Identifier: MIT
//
// The geometry tables of a text read and closed, as the command line writes it.
#pragma once

#include "table/read_table.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace tripoise::command {

enum class TableFormat { Text, Json, Csv };

/// By its name; text where none is asked for.
[[nodiscard]] std::optional<TableFormat> tableFormat(const QString& name);

[[nodiscard]] std::string tablesText(const std::vector<ReadTable>& read, TableFormat format);

} // namespace tripoise::command
