// SPDX-License-Identifier: MIT
#pragma once

#include "advice/advise.h"
#include "document/fitting.h"

#include <string>

namespace tripoise::command {

/// The decision as a JSON document, `tables` with the fitting's weights; fields whose computation
/// does not exist yet are absent.
[[nodiscard]] std::string adviceJson(const Fitting& fitting, const Advice& advice,
                                     const Prepared& prepared, const Tables& tables);

} // namespace tripoise::command
