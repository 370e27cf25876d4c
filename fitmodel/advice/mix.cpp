// SPDX-License-Identifier: MIT
#include "advice/mix.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tripoise {
namespace {

constexpr Mix twoUses(Use first, double firstShare, Use second, double secondShare)
{
    Mix mix;
    mix.share[indexOf(first)] = firstShare;
    mix.share[indexOf(second)] = secondShare;
    return mix;
}

} // namespace

Mix withShare(const Mix& mix, Use use, double share)
{
    const int whole = 100;
    const int own = int(std::lround(whole * std::clamp(share, 0.0, 1.0)));
    Mix others = mix;
    others.share[indexOf(use)] = 0.0;
    double sum = std::accumulate(others.share.begin(), others.share.end(), 0.0);
    if (sum <= 0.0) {
        others = Mix::only(use == Use::Commuting ? Use::City : Use::Commuting);
        sum = 1.0;
    }
    // The running sum is rounded, not each part, so that nothing is left over.
    Mix made;
    double upTo = 0.0;
    int said = 0;
    for (std::size_t i = 0; i < allUses.size(); ++i) {
        upTo += others.share[i] / sum;
        const int next = int(std::lround((whole - own) * upTo));
        made.share[i] = double(next - said) / whole;
        said = next;
    }
    made.share[indexOf(use)] = double(own) / whole;
    return made;
}

Mix mixOf(UsualMix usual)
{
    switch (usual) {
    case UsualMix::Errands: return Mix::only(Use::City);
    case UsualMix::ToWork: return Mix::only(Use::Commuting);
    case UsualMix::FastToWork: return Mix::only(Use::FastCommuting);
    case UsualMix::WorkAndAway: return twoUses(Use::FastCommuting, 0.7, Use::Touring, 0.3);
    case UsualMix::LongTrips: return Mix::only(Use::Touring);
    case UsualMix::Sport: return twoUses(Use::Road, 0.6, Use::Gravel, 0.4);
    }
    return {};
}

} // namespace tripoise
