// SPDX-License-Identifier: MIT
//
// assets/parts.json
#include "document/figures.h"

namespace tripoise::document {
namespace {

void readFrameDefaults(Fields frame, FrameDefaults& to)
{
    to.seatAngleDeg = figure(frame, "seat_angle_deg");
    to.bbDropMm = figure(frame, "bb_drop_mm");
    to.chainstayMm = figure(frame, "chainstay_mm");
    to.forkOffsetMm = figure(frame, "fork_offset_mm");
    to.forkLengthMm = figure(frame, "fork_length_mm");
    to.beadSeatMm = figure(frame, "bead_seat_mm");
    to.tyreMm = figure(frame, "tyre_mm");
    to.mudguardGapMm = figure(frame, "mudguard_gap_mm");
    to.mudguardWidthMm = figure(frame, "mudguard_width_mm");
    to.upperHeadsetMm = figure(frame, "upper_headset_mm");
    to.lowerHeadsetMm = figure(frame, "lower_headset_mm");
    to.steererMm = figure(frame, "steerer_mm");
    to.carbonSpacersMm = figure(frame, "carbon_spacers_mm");
    to.metalSpacersMm = figure(frame, "metal_spacers_mm");
    to.postDiameterMm = figure(frame, "post_diameter_mm");
    to.postLengthMm = figure(frame, "post_length_mm");
    to.postOffsetMm = figure(frame, "post_offset_mm");
    to.postInsertionDiameters = figure(frame, "post_insertion_diameters");
    to.frameInsertionMm = figure(frame, "frame_insertion_mm");
    to.leastExposedPostMm = figure(frame, "least_exposed_post_mm");
    to.bicycleMassKg = figure(frame, "bicycle_mass_kg");
    to.tubeTopBelowHeadTopMm = figure(frame, "tube_top_below_head_top_mm");
}

void readPartDefaults(Fields cockpit, PartDefaults& to)
{
    to.barClampMm = figure(cockpit, "bar_clamp_mm");
    to.stemSteererMm = figure(cockpit, "stem_steerer_mm");
    to.clampHeightMm = figure(cockpit, "clamp_height_mm");
    to.steererBelowClampTopMm = figure(cockpit, "steerer_below_clamp_top_mm");
    to.palmFromBarEndMm = figure(cockpit, "palm_from_bar_end_mm");
    to.straightCentreMm = figure(cockpit, "straight_centre_mm");
    to.flatBacksweepDeg = figure(cockpit, "flat_backsweep_deg");
    to.flatPalmUpMm = figure(cockpit, "flat_palm_up_mm");
    to.sweptGripBackMm = figure(cockpit, "swept_grip_back_mm");
    to.sweptRiseMm = figure(cockpit, "swept_rise_mm");
    to.dropReachMm = figure(cockpit, "drop_reach_mm");
    to.dropDropMm = figure(cockpit, "drop_drop_mm");
    to.hoodForwardMm = figure(cockpit, "hood_forward_mm");
    to.hoodUpMm = figure(cockpit, "hood_up_mm");
    to.topsForwardMm = figure(cockpit, "tops_forward_mm");
    to.topsUpMm = figure(cockpit, "tops_up_mm");
    to.topsHalfWidthMm = figure(cockpit, "tops_half_width_mm");
    to.dropsForwardShare = figure(cockpit, "drops_forward_share");
    to.dropsUpMm = figure(cockpit, "drops_up_mm");
    to.saddleLengthMm = figure(cockpit, "saddle_length_mm");
    to.saddleStackMm = figure(cockpit, "saddle_stack_mm");
    to.railTravelMm = figure(cockpit, "rail_travel_mm");
    to.noseAheadShare = figure(cockpit, "nose_ahead_share");
    to.pedalStackMm = figure(cockpit, "pedal_stack_mm");
    to.pedalLateralMm = figure(cockpit, "pedal_lateral_mm");
    to.pedalWidthMm = figure(cockpit, "pedal_width_mm");
    to.soleMm = figure(cockpit, "sole_mm");
    to.shoeBeyondFootMm = figure(cockpit, "shoe_beyond_foot_mm");
    to.quillRaiseMm = figure(cockpit, "quill_raise_mm");
    to.quillStepMm = figure(cockpit, "quill_step_mm");
    to.leaveSteererLowMm = figure(cockpit, "leave_steerer_low_mm");
    to.leaveSteererHighMm = figure(cockpit, "leave_steerer_high_mm");
    to.leastBarCutMm = figure(cockpit, "least_bar_cut_mm");
    to.soldStemDeg = figure(cockpit, "sold_stem_deg");
    to.soldSpacersMm = figure(cockpit, "sold_spacers_mm");
    to.hosesShortBeyondMm = figure(cockpit, "hoses_short_beyond_mm");
    to.builtSaddleMm = figure(cockpit, "built_saddle_mm");
    to.builtBarMm = figure(cockpit, "built_bar_mm");
    to.builtPartMm = figure(cockpit, "built_part_mm");
    to.builtStemDeg = figure(cockpit, "built_stem_deg");
}

/// Every length with every angle, over and under.
std::vector<Stem> stemsOf(Fields market)
{
    std::vector<Stem> stems;
    (void)market.needList("lengths_mm", anyCount);
    (void)market.needList("angles_deg", anyCount);
    const auto angles = market.numbers("angles_deg", {0, anyCount.most}, anyNumber);
    for (const double length : market.numbers("lengths_mm", {0, anyCount.most}, anyNumber)) {
        for (const double degrees : angles) {
            Stem stem;
            stem.lengthMm = length;
            stem.angle = Angle::degrees(degrees);
            stem.reversible = false;
            stems.push_back(stem);
            if (degrees != 0.0)
                stems.push_back(flipped(stem));
        }
    }
    return stems;
}

} // namespace

void readParts(Fields file, Tables& tables)
{
    if (auto frame = file.needObject("frame"))
        readFrameDefaults(*frame, tables.frame);
    if (auto cockpit = file.needObject("cockpit"))
        readPartDefaults(*cockpit, tables.parts);
    tables.leastPedalLeanDeg = figure(file, "least_pedal_lean_deg");
    const auto& adaptors = file.needList("steerer_adaptors", anyCount);
    for (std::size_t i = 0; i < adaptors.size(); ++i) {
        Fields one(adaptors[i], joined(file.pathOf("steerer_adaptors"), i), file.report());
        tables.parts.adaptors.push_back(
            {{one.number("steerer_mm", anyNumber).value_or(0.0), one.number("quill_mm", anyNumber)},
             figure(one, "clamp_mm")});
    }
    if (auto market = file.needObject("market_stems"))
        tables.marketStems = stemsOf(*market);
}

} // namespace tripoise::document
