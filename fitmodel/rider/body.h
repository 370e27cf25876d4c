// SPDX-License-Identifier: MIT
//
// The rider as links: segment lengths between joint centres, from the survey's skin landmarks.
//
// What a saddle carries is the crotch, not the trochanter: who has the trochanter higher above the
// crotch than the average man sits as much lower under the same hip. Saddle heights foretold from
// the inseam alone are within 11.5 mm (Gatti 2021, R2 0.97, the same for both sexes); the
// trochanter over the crotch differs by 16 mm among women and 19 among men (ANSUR II), and by 8
// between them.
//
// Shoulder centre below the acromion after de Leva 1996 (J Biomech 29:1223, about a tenth of the
// upper arm, from memory); hip centre at trochanter height. Thigh and shank together are sound,
// their split is the least certain part.
#pragma once

#include "rider/posterior.h"

namespace tripoise {

/// The constants of the body model (assets/body.json).
struct BodyModel {
    double shoulderBelowAcromion = 0.0; ///< share of the upper arm
    double trunkChord = 0.0;            ///< riding trunk, a share of the standing one
    double heelToAnkle = 0.0;           ///< ankle's place along the foot, share from the heel
    double midHipAboveSaddleMm = 0.0;   ///< of the average man, for the trunk
    double legHipAboveSaddleMm = 0.0;   ///< the same for the leg; calibrated
    double tuberosityAheadMm = 0.0;     ///< of the knee centre
    double shortestLinkMm = 0.0;        ///< no measurement makes a limb vanish
};

struct Body {
    double statureMm = 0.0;
    double inseamMm = 0.0;
    double thighMm = 0.0;
    double shankMm = 0.0;
    double hipHigherMm = 0.0; ///< above the saddle than the average man's (trochanter over crotch)
    double ankleHeightMm = 0.0;
    double ankleToBallMm = 0.0; ///< along the foot
    double footMm = 0.0;
    double ballMm = 0.0;  ///< heel to ball
    double trunkMm = 0.0; ///< mid-hip to shoulder centre, the riding chord
    double upperArmMm = 0.0;
    double forearmMm = 0.0; ///< elbow to the centre of the grip
    double biacromialMm = 0.0;
    double headMm = 0.0; ///< acromion to the top of the head
    double massKg = 0.0;

    [[nodiscard]] double shoulderHalfBreadthMm() const { return 0.5 * biacromialMm; }
};

[[nodiscard]] Body bodyFrom(const BaseVector& base, const BodyModel& model);

} // namespace tripoise
