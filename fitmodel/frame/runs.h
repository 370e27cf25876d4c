// SPDX-License-Identifier: MIT
//
// The run of a model's sizes: what one size is expected to read, seen from the others.
//
// The sizes of a model step evenly: the second difference of a column is small. Between two
// neighbours the expected value lies on the line through them, beyond the last on the line through
// the last two; its sd is what the second differences of the other sizes vary, shrunk towards what
// is ordinary for the column.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tripoise::frame {

struct RunPoint {
    double place = 0.0; ///< along the run, neighbours about 1 apart
    double value = 0.0;
};

struct Evenness {
    double spread = 0.0;   ///< ordinary sd of the second difference
    double weight = 0.0;   ///< sizes that this is worth
    double rounding = 0.0; ///< sd of a value by rounding
};

struct Expected {
    double value = 0.0;
    double sd = 0.0;
};

/// Of `point`, from the others; nothing where they are fewer than two. Points in order of place.
[[nodiscard]] std::optional<Expected> expectedAt(std::size_t point, std::span<const RunPoint> run,
                                                 const Evenness& evenness);

/// Where the sizes lie along the run: by their numbers where all are numbers that rise, else one by
/// one.
[[nodiscard]] std::vector<double> placesOf(const std::vector<std::string>& sizes);

} // namespace tripoise::frame
