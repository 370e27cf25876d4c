// SPDX-License-Identifier: MIT
#include "cockpit/cockpits.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
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

/// A quill is of one piece with its stem.
bool turns(const Stem& stem)
{
    return !stem.quillMm || stem.joint == StemJoint::QuillAdaptor;
}

} // namespace

std::vector<double> spacerTotals(const std::vector<double>& pieces, double mostMm)
{
    // Which totals are made, by hundredths; each piece adds its height to those made before it.
    const auto most = std::max(0LL, std::llround(mostMm * partsPerMm));
    std::vector<bool> made(static_cast<std::size_t>(most) + 1, false);
    made[0] = true;
    for (const double piece : pieces) {
        const auto height = std::llround(piece * partsPerMm);
        for (long long total = most; total >= height; --total)
            if (made[static_cast<std::size_t>(total - height)])
                made[static_cast<std::size_t>(total)] = true;
    }
    std::vector<double> result;
    for (std::size_t total = 0; total < made.size(); ++total)
        if (made[total])
            result.push_back(static_cast<double>(total) / partsPerMm);
    return result;
}

std::size_t totalsUpTo(const std::vector<double>& totals, double mostMm)
{
    const double most = static_cast<double>(std::llround(mostMm * partsPerMm)) / partsPerMm;
    return static_cast<std::size_t>(std::upper_bound(totals.begin(), totals.end(), most)
                                    - totals.begin());
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

bool steererMatches(const Stem& stem, const Steerer& steerer, const PartDefaults& defaults)
{
    if (stem.quillMm || steerer.quillMm)
        return stem.quillMm && steerer.quillMm && sameDiameter(*stem.quillMm, *steerer.quillMm);
    return sameDiameter(stem.steererMm.value_or(defaults.stemSteererMm), steerer.outsideMm);
}

std::optional<Stem> adapted(const Stem& stem, const Steerer& steerer, const PartDefaults& defaults)
{
    if (stem.quillMm || steererMatches(stem, steerer, defaults))
        return std::nullopt;
    for (const SteererAdaptor& adaptor : defaults.adaptors) {
        Stem on = stem;
        if (adaptor.on.quillMm) {
            on.quillMm = adaptor.on.quillMm;
            on.joint = StemJoint::QuillAdaptor;
        } else {
            on.steererMm = adaptor.on.outsideMm;
            on.joint = StemJoint::Shim;
        }
        if (sameDiameter(stem.steererMm.value_or(defaults.stemSteererMm), adaptor.clampMm)
            && steererMatches(on, steerer, defaults))
            return on;
    }
    return std::nullopt;
}

std::vector<MountedStem> mountedStems(const Stock& stock, const Steerer& steerer,
                                      const PartDefaults& defaults)
{
    std::vector<MountedStem> mounted;
    std::set<std::array<double, 4>> known;
    const auto add = [&](const MountedStem& candidate) {
        const Stem& stem = stock.stems[candidate.stem];
        if (known
                .insert({stem.lengthMm, effectiveAngle(stem, candidate.flipped).rad(),
                         stem.barClampMm.value_or(defaults.barClampMm),
                         stem.clampHeightMm.value_or(defaults.clampHeightMm)})
                .second)
            mounted.push_back(candidate);
    };
    for (const bool inStock : {true, false})
        for (const bool turned : {false, true})
            for (std::size_t i = 0; i < stock.stems.size(); ++i) {
                const Stem& stem = stock.stems[i];
                if (stem.inStock == inStock && steererMatches(stem, steerer, defaults)
                    && (!turned || (stem.reversible && turns(stem))))
                    add({i, turned});
            }
    return mounted;
}

std::vector<double> spacerPieces(const std::vector<double>& pieces, double totalMm)
{
    const auto hundredths = [](double mm) { return std::lround(partsPerMm * mm); };
    const long total = hundredths(totalMm);
    if (total <= 0)
        return {};
    std::map<long, std::vector<double>> fewest{{0, {}}};
    for (const double piece : pieces) {
        // From the largest down, so that a piece is used once.
        std::vector<std::pair<long, std::vector<double>>> made;
        for (const auto& [sum, of] : fewest) {
            const long next = sum + hundredths(piece);
            const auto known = fewest.find(next);
            if (next > total || (known != fewest.end() && known->second.size() <= of.size() + 1))
                continue;
            made.emplace_back(next, of);
            made.back().second.push_back(piece);
        }
        for (auto& [sum, of] : made)
            fewest[sum] = std::move(of);
    }
    const auto found = fewest.find(total);
    if (found == fewest.end())
        return {totalMm};
    std::sort(found->second.rbegin(), found->second.rend());
    return found->second;
}

} // namespace tripoise
