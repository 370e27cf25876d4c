// SPDX-License-Identifier: MIT
//
// A number that can be typed about something: how it is read off it and written to it, what can be
// believed of it, and what stands in for it until it is typed. A list of these describes a form.
#pragma once

#include "advice/tables.h"
#include "base/estimate.h"
#include "document/limits.h"

#include <optional>

namespace tripoise {

template <typename Whole> struct EntryOf {
    const char* key = nullptr; ///< its name in words is asked for by this
    Limits limits;
    double step = 1.0;
    int decimals = 0;
    bool needed = false; ///< cannot be taken away again
    std::optional<double> (*read)(const Whole&) = nullptr;
    void (*write)(Whole&, std::optional<double>) = nullptr;
    /// What is used while it is not typed, derived or assumed.
    std::optional<Estimate> (*standIn)(const Whole&, const Tables&) = nullptr;
};

} // namespace tripoise
