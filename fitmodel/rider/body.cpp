// SPDX-License-Identifier: MIT
#include "rider/body.h"

#include <algorithm>

namespace tripoise {

Body bodyFrom(const BaseVector& base, const BodyModel& model)
{
    const auto of = [&base](Quantity quantity) { return base(static_cast<int>(quantity)); };
    const auto link = [&model](double lengthMm) {
        return std::max(lengthMm, model.shortestLinkMm);
    };
    const double upperArm = of(Quantity::UpperArm);
    const double shoulderDrop = model.shoulderBelowAcromion * upperArm;

    Body body;
    body.statureMm = of(Quantity::Stature);
    body.inseamMm = of(Quantity::Inseam);
    body.thighMm = link(of(Quantity::TrochanterionHeight) - of(Quantity::KneeHeight));
    body.shankMm = link(of(Quantity::KneeHeight) - of(Quantity::AnkleHeight));
    body.hipHigherMm =
        of(Quantity::TrochanterionHeight) - of(Quantity::Inseam) - model.midHipAboveSaddleMm;
    body.ankleHeightMm = of(Quantity::AnkleHeight);
    body.footMm = of(Quantity::Foot);
    body.ballMm = of(Quantity::BallOfFoot);
    body.ankleToBallMm = body.ballMm - model.heelToAnkle * body.footMm;
    body.trunkMm =
        link(model.trunkChord
             * (of(Quantity::AcromialHeight) - shoulderDrop - of(Quantity::TrochanterionHeight)));
    body.upperArmMm = link(upperArm - shoulderDrop);
    body.forearmMm = link(of(Quantity::Forearm) + of(Quantity::WristToGrip));
    body.biacromialMm = of(Quantity::Biacromial);
    body.headMm = body.statureMm - of(Quantity::AcromialHeight);
    body.massKg = of(Quantity::Mass);
    return body;
}

} // namespace tripoise
