// SPDX-License-Identifier: MIT
#include "board/readout.h"

#include "drawing/labels.h"
#include "wording/findings.h"
#include "wording/trial_words.h"
#include "wording/words.h"

namespace tripoise {
namespace {

JointReadout readout(const JointAngle& angle)
{
    JointReadout readout;
    readout.label = jointName(angle.joint);
    readout.text = jointValue(angle);
    readout.range = jointRange(angle);
    readout.place = rangePlaceName(angle.place());
    readout.nearEdge = angle.place() == RangePlace::NearEdge;
    readout.outside = angle.place() == RangePlace::Outside;
    return readout;
}

/// Told by the joints themselves.
bool isOfAJoint(FindingCode code)
{
    return code == FindingCode::TrunkOutOfRange || code == FindingCode::ArmTrunkOutOfRange
           || code == FindingCode::KneeOutOfRange;
}

} // namespace

Readouts readoutsOf(const Scene& scene)
{
    Readouts readouts;
    const SideView& view = scene.view();
    if (!view.drawn)
        return readouts;
    readouts.description = drawingDescription(view);
    if (view.rider)
        for (const JointAngle& angle : view.rider->angles)
            readouts.joints << QVariant::fromValue(readout(angle));
    if (!scene.tried())
        return readouts;
    const Tried& tried = *scene.tried();
    const QString pulled = pulledSentence(tried, scene.advised()->setup);
    readouts.pulled = unbroken(scene.ownSetup() ? chosenSentence(pulled) : pulled);
    readouts.carry = unbroken(wouldCarrySentence(tried));
    readouts.nearest = unbroken(nearestSentence(tried, *scene.prepared()));
    readouts.steering = unbroken(steeringSentence(tried));
    const Ride* ride = scene.ride();
    if (ride)
        readouts.room = unbroken(roomSentence(tried, *ride));
    if (ride && ride->balance && tried.load)
        readouts.load = unbroken(loadSentence(*tried.load, *ride->balance));
    for (const Finding& finding : tried.findings)
        if (finding.severity != Severity::Note && !isOfAJoint(finding.code))
            readouts.findings << QVariant::fromValue(
                FindingReadout{sentence(finding), finding.severity == Severity::Limit});
    return readouts;
}

} // namespace tripoise
