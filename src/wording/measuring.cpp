// SPDX-License-Identifier: MIT
#include "wording/measuring.h"

#include "wording/words.h"

namespace tripoise {

QString datumOf(Quantity quantity)
{
    switch (quantity) {
    case Quantity::Stature: return Words::tr("floor to the top of the head, barefoot");
    case Quantity::Inseam: return Words::tr("floor to the crotch, barefoot");
    case Quantity::SternalNotchHeight:
        return Words::tr("floor to the notch above the breastbone, barefoot");
    case Quantity::AcromialHeight:
        return Words::tr("floor to the bony tip of the shoulder, barefoot");
    case Quantity::TrochanterionHeight:
        return Words::tr("floor to the bony knob at the side of the hip, barefoot");
    case Quantity::KneeHeight:
        return Words::tr("floor to the middle of the kneecap, standing, barefoot");
    case Quantity::AnkleHeight: return Words::tr("floor to the outer ankle bone, barefoot");
    case Quantity::SittingHeight: return Words::tr("seat to the top of the head");
    case Quantity::KneeHeightSitting:
        return Words::tr("floor to the top of the knee, seated, barefoot");
    case Quantity::ButtockKnee:
        return Words::tr("back of the buttock to the front of the knee, seated");
    case Quantity::UpperArm: return Words::tr("bony tip of the shoulder to the elbow");
    case Quantity::Forearm: return Words::tr("elbow to the wrist");
    case Quantity::Hand: return Words::tr("wrist crease to the tip of the middle finger");
    case Quantity::WristToGrip: return Words::tr("wrist to the middle of a rod held in the fist");
    case Quantity::ElbowRearToGrip:
        return Words::tr("back of the bent elbow to the middle of a rod held in the fist");
    case Quantity::Foot: return Words::tr("heel to the longest toe, barefoot, standing");
    case Quantity::BallOfFoot: return Words::tr("heel to the joint of the big toe, barefoot");
    case Quantity::Biacromial: return Words::tr("bony tip to bony tip of the shoulders");
    case Quantity::HipBreadth: return Words::tr("widest across the hips, standing");
    case Quantity::Span: return Words::tr("finger tip to finger tip, arms stretched out");
    case Quantity::Mass: return Words::tr("in light clothes, without shoes");
    case Quantity::ArmToGrip:
        return Words::tr("bony tip of the shoulder to the middle of a rod held in the fist");
    }
    return {};
}

QString howToTake(Quantity quantity)
{
    switch (quantity) {
    case Quantity::Stature:
        return Words::tr(
            "Heels, seat and back against a wall, eyes level. Lay a book on the head, its "
            "spine square to the wall, and mark under it.");
    case Quantity::Inseam:
        return Words::tr(
            "Back to a wall, feet a hand apart. Pull a book up between the legs as firmly as "
            "a saddle presses, its spine square to the wall, and mark its top. Take it "
            "twice.");
    case Quantity::SternalNotchHeight:
        return Words::tr("Standing upright against the wall; feel for the hollow between the "
                         "collarbones and mark level with its lowest point.");
    case Quantity::AcromialHeight:
        return Words::tr(
            "Arms hanging. Follow the collarbone outwards to the flat bony end and mark "
            "level with its top.");
    case Quantity::TrochanterionHeight:
        return Words::tr(
            "Let the rider lift the knee a little and feel at the side of the hip for the "
            "knob that moves; mark its top with both feet on the floor.");
    case Quantity::KneeHeight: return Words::tr("Leg straight, muscles loose.");
    case Quantity::AnkleHeight:
        return Words::tr("To the point of the ankle bone that stands out most.");
    case Quantity::SittingHeight:
        return Words::tr("On a hard stool, back against the wall, eyes level; a book on the head.");
    case Quantity::KneeHeightSitting:
        return Words::tr(
            "Knee and ankle at right angles; a book laid on the thigh just behind the knee.");
    case Quantity::ButtockKnee:
        return Words::tr(
            "Back against the wall, knee at a right angle; to a board held against the knee.");
    case Quantity::UpperArm:
        return Words::tr("Elbow bent at a right angle; along the outside of the arm to the outer "
                         "bone of the elbow.");
    case Quantity::Forearm:
        return Words::tr(
            "Elbow bent, palm inwards; from the outer bone of the elbow to the bone at the "
            "thumb's side of the wrist.");
    case Quantity::Hand: return Words::tr("Hand flat, fingers together, on the palm's side.");
    case Quantity::WristToGrip:
        return Words::tr("Wrist straight, a pencil held as one holds a bar.");
    case Quantity::ElbowRearToGrip:
        return Words::tr("Elbow at a right angle against a wall, a pencil upright in the fist.");
    case Quantity::Foot:
        return Words::tr(
            "Heel against a wall, weight on the foot; mark in front of the longest toe.");
    case Quantity::BallOfFoot:
        return Words::tr("Heel against a wall, weight on the foot; to the middle of the joint that "
                         "stands out at the inner side.");
    case Quantity::Biacromial:
        return Words::tr("From behind, shoulders loose; straight across, not along the back.");
    case Quantity::HipBreadth:
        return Words::tr("Feet together, straight across, between two boards.");
    case Quantity::Span:
        return Words::tr(
            "Back to a wall, arms level; mark both middle fingers and measure between.");
    case Quantity::Mass: return Words::tr("It counts for the load limits of bicycle and parts.");
    case Quantity::ArmToGrip:
        return Words::tr(
            "Arm straight at the side, a pencil held in the fist as one holds a bar; along "
            "the arm to the middle of the pencil.");
    }
    return {};
}

} // namespace tripoise
