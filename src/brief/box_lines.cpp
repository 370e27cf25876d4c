// SPDX-License-Identifier: MIT
#include "brief/box_lines.h"

#include "cockpit/cockpits.h"

#include <tuple>

namespace tripoise {

bool Stems::before(const Stem& a, const Stem& b)
{
    const auto order = [](const Stem& stem) {
        return std::tuple(stem.barClampMm.value_or(0.0), stem.angle.rad(), stem.lengthMm);
    };
    return order(a) < order(b);
}

bool Bars::before(const Bar& a, const Bar& b)
{
    return std::tie(a.kind, a.widthMm, a.name) < std::tie(b.kind, b.widthMm, b.name);
}

bool fitsNoSteerer(const Stem& stem, const std::vector<Steerer>& steerers,
                   const PartDefaults& defaults)
{
    return !steerers.empty()
           && std::none_of(steerers.begin(), steerers.end(), [&](const Steerer& steerer) {
                  return steererMatches(stem, steerer, defaults)
                         || adapted(stem, steerer, defaults);
              });
}

bool clampsNoBar(const Stem& stem, const Stock& fitting, const PartDefaults& defaults)
{
    return !fitting.bars.empty()
           && std::none_of(fitting.bars.begin(), fitting.bars.end(),
                           [&](const Bar& bar) { return clampsMatch(stem, bar, defaults); });
}

bool clampedByNone(const Bar& bar, const Stock& fitting, const PartDefaults& defaults)
{
    bool any = false;
    for (const Stem& stem : fitting.stems) {
        if (!stem.inStock)
            continue;
        if (clampsMatch(stem, bar, defaults))
            return false;
        any = true;
    }
    return any;
}

} // namespace tripoise
