// SPDX-License-Identifier: MIT
#include "handling/segments.h"

namespace tripoise {

SegmentRows rowsFor(const SegmentTable& table, std::optional<Sex> sex)
{
    SegmentRows rows = sex == Sex::Female ? table.female : table.male;
    if (!sex) {
        const auto mean = [](double& into, double other) { into = 0.5 * (into + other); };
        for (std::size_t i = 0; i < rows.rows.size(); ++i) {
            mean(rows.rows[i].mass, table.female.rows[i].mass);
            mean(rows.rows[i].centre, table.female.rows[i].centre);
        }
        mean(rows.headOfStature, table.female.headOfStature);
        mean(rows.wristAlongForearm, table.female.wristAlongForearm);
    }
    // Published shares sum to 1 within their rounding only.
    if (const double sum = rows.sum(); sum > 0.0)
        for (SegmentShare& row : rows.rows)
            row.mass /= sum;
    return rows;
}

} // namespace tripoise
