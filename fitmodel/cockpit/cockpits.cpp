// SPDX-License-Identifier: MIT
#include "cockpit/cockpits.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tripoise {
namespace {

// Clamps and steerers are made to a tenth of a millimetre; 31.8 and 31.75 are one size.
constexpr double diameterTolerance = 0.15;
constexpr double partsPerMm = 100.0; // spacer totals are told apart to a hundredth

bool sameDiameter(double a, double b)
{
    return std::abs(a - b) <= diameterTolerance;
}

} // namespace

std::vector<double> spacerTotals(const std::vector<double>& pieces, double mostMm)
{
    std::set<long long> totals{0};
    const auto most = std::llround(mostMm * partsPerMm);
    for (const double piece : pieces) {
        const auto height = std::llround(piece * partsPerMm);
        std::vector<long long> taller;
        for (const long long total : totals)
            if (total + height <= most)
                taller.push_back(total + height);
        totals.insert(taller.begin(), taller.end());
    }
    std::vector<double> result;
    for (const long long total : totals)
        result.push_back(static_cast<double>(total) / partsPerMm);
    return result;
}

Angle effectiveAngle(const Stem& stem, bool turned)
{
    return turned ? flipped(stem).angle : stem.angle;
}

bool clampsMatch(const Stem& stem, const Bar& bar, const PartDefaults& defaults)
{
    return sameDiameter(stem.barClampMm.value_or(defaults.barClampMm),
                        bar.barClampMm.value_or(defaults.barClampMm));
}

bool steererMatches(const Stem& stem, double steererMm, const PartDefaults& defaults)
{
    return sameDiameter(stem.steererMm.value_or(defaults.stemSteererMm), steererMm);
}

std::vector<MountedStem> mountedStems(const Stock& stock, double steererMm,
                                      const PartDefaults& defaults)
{
    std::vector<MountedStem> mounted;
    const auto alike = [&](const MountedStem& a, const MountedStem& b) {
        const Stem& first = stock.stems[a.stem];
        const Stem& second = stock.stems[b.stem];
        return first.lengthMm == second.lengthMm
               && effectiveAngle(first, a.flipped) == effectiveAngle(second, b.flipped)
               && first.barClampMm.value_or(defaults.barClampMm)
                      == second.barClampMm.value_or(defaults.barClampMm)
               && first.clampHeightMm.value_or(defaults.clampHeightMm)
                      == second.clampHeightMm.value_or(defaults.clampHeightMm);
    };
    const auto add = [&](const MountedStem& candidate) {
        for (const MountedStem& known : mounted)
            if (alike(known, candidate))
                return;
        mounted.push_back(candidate);
    };
    for (const bool turned : {false, true}) {
        for (std::size_t i = 0; i < stock.stems.size(); ++i) {
            const Stem& stem = stock.stems[i];
            if (stem.inStock && steererMatches(stem, steererMm, defaults)
                && (!turned || stem.reversible))
                add({i, turned});
        }
    }
    return mounted;
}

} // namespace tripoise
