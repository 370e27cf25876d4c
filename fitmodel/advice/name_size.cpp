// SPDX-License-Identifier: MIT
#include "advice/name_size.h"

#include "advice/assess.h"

#include <algorithm>
#include <tuple>

namespace tripoise {

namespace {

/// What a part cures is no limit of the size; what none cures bars it.
void toOrder(SizeAnswer& answer, const Skeleton& skeleton)
{
    std::erase_if(answer.limits, [&](const Finding& broken) {
        if (broken.code != FindingCode::PostTooShort)
            return false;
        answer.fit.postMmToOrder = skeleton.postLengthMm + broken.numbers[1] - broken.numbers[0];
        return true;
    });
    if (answer.setup && !answer.setup->stem.inStock)
        answer.fit.stem = answer.setup->stem;
    const bool adaptor = answer.setup && answer.setup->stem.joint != StemJoint::Direct;
    if (answer.fit.stem || answer.fit.postMmToOrder || adaptor)
        answer.fit.state = FitState::WithParts;
    if (!answer.limits.empty())
        answer.fit.state = FitState::Barred;
}

} // namespace

Naming nameSize(const Basis& basis, const std::stop_token& stop)
{
    const std::vector<PreparedSize>& prepared = basis.prepared.sizes;
    Naming naming;
    naming.searches.reserve(prepared.size());
    for (std::size_t i = 0; i < prepared.size() && !stop.stop_requested(); ++i) {
        SizeSearch& search = naming.searches.emplace_back(basis, prepared[i], stop);
        SizeAnswer answer;
        answer.size = i;
        answer.fit = fitOf(prepared[i], basis);
        answer.choice = search.best(basis.tables.weights.points);
        if (answer.choice) {
            answer.setup = search.setupOf(*answer.choice);
            answer.limits = limitsOf(*answer.setup, prepared[i], basis);
        } else {
            answer.limits.push_back({FindingCode::NoCockpitFits, Severity::Limit, {}, {}, {}});
        }
        if (fitsAtAll(answer.fit.state))
            toOrder(answer, prepared[i].skeleton);
        naming.sizes.push_back(std::move(answer));
    }
    // Names last, so that the order of the candidates never decides.
    const auto key = [&prepared](const SizeAnswer& answer) {
        const FrameSize& frame = prepared[answer.size].frame;
        return std::tuple(!answer.choice, classOf(answer.fit.state),
                          answer.choice ? answer.choice->points : 0.0,
                          std::string_view(frame.model), std::string_view(frame.size));
    };
    std::sort(naming.sizes.begin(), naming.sizes.end(),
              [&key](const SizeAnswer& a, const SizeAnswer& b) { return key(a) < key(b); });
    return naming;
}

} // namespace tripoise
