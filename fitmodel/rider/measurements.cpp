// SPDX-License-Identifier: MIT
#include "rider/measurements.h"

#include <algorithm>
#include <cassert>
#include <numbers>

namespace tripoise {

PooledReading pooled(const Measurement& measurement, const TapeTable& tape)
{
    assert(!measurement.readings.empty());
    std::vector<double> readings = measurement.readings;
    std::sort(readings.begin(), readings.end()); // rounding, too, must not depend on the order
    const double count = static_cast<double>(readings.size());
    double mean = 0.0;
    for (const double reading : readings)
        mean += reading / count;
    if (measurement.sd)
        return {mean, *measurement.sd * *measurement.sd};

    const double sd = tape.of(measurement.quantity).sd;
    double squares = tape.priorDegreesOfFreedom * sd * sd;
    for (const double reading : readings)
        squares += (reading - mean) * (reading - mean);
    return {mean, squares / (tape.priorDegreesOfFreedom + count - 1.0) / count};
}

bool readingsDisagree(const Measurement& measurement, const TapeTable& tape)
{
    const auto [lowest, highest] =
        std::minmax_element(measurement.readings.begin(), measurement.readings.end());
    constexpr double deviations = 3.0;
    return *highest - *lowest > deviations * std::numbers::sqrt2 * tape.of(measurement.quantity).sd;
}

} // namespace tripoise
