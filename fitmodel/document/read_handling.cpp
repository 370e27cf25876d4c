// SPDX-License-Identifier: MIT
//
// assets/segments.json and assets/handling.json
#include "document/figures.h"
#include "document/words.h"

namespace tripoise::document {
namespace {

constexpr double mm3PerM3 = 1e9;
constexpr std::size_t longestNames = 200;

void readSegmentRows(Fields group, SegmentRows& to)
{
    for (std::size_t i = 0; i < segmentKeys.size(); ++i)
        if (auto one = group.needObject(segmentKeys[i]))
            to.rows[i] = {figure(*one, "mass"), figure(*one, "centre")};
    to.headOfStature = figure(group, "head_of_stature");
    to.wristAlongForearm = figure(group, "wrist_along_forearm");
}

void readBicycle(Fields file, BicycleTable& to)
{
    if (auto shares = file.needObject("mass_share"))
        for (std::size_t i = 0; i < bicyclePartKeys.size(); ++i)
            to.share[i] = figure(*shares, bicyclePartKeys[i]);
    to.frontGyration = figure(file, "front_gyration");
    to.rearGyration = figure(file, "rear_gyration");
    to.fittingsAboveAxleMm = figure(file, "fittings_above_axle_mm");
    to.gravityMmS2 = figure(file, "gravity_mm_s2");
}

void readCarrier(Fields& carriers, std::string_view key, Carrier& to)
{
    auto one = carriers.needObject(key);
    if (!one)
        return;
    to = {figure(*one, "ahead_mm"), figure(*one, "above_mm"), figure(*one, "out_mm"),
          figure(*one, "gyration_mm"), one->flag("steered", false)};
    (void)one->need("steered");
}

void readToe(Fields file, ToeTable& to)
{
    to.ballAheadOfSpindleMm = figure(file, "ball_ahead_of_spindle_mm");
    to.boxAboveSoleMm = figure(file, "box_above_sole_mm");
    to.breadthOfLength = figure(file, "breadth_of_length");
    to.leanInTightTurnDeg = figure(file, "lean_in_tight_turn_deg");
    to.checkRoomMm = figure(file, "check_room_mm");
    if (auto least = file.needObject("least_clearance_mm"))
        for (const auto& [key, standard] : standardWords)
            to.leastClearanceMm[indexOf(standard)] = figure(*least, key);
}

void readClearance(Fields file, ClearanceTable& to)
{
    to.wantedHeelMm = figure(file, "wanted_heel_mm");
    to.wantedKneeMm = figure(file, "wanted_knee_mm");
    to.shoeBehindHeelMm = figure(file, "shoe_behind_heel_mm");
    to.kneeRoundMm = figure(file, "knee_round_mm");
    to.barTubeMm = figure(file, "bar_tube_mm");
    to.turnedBarDeg = figure(file, "turned_bar_deg");
    to.barBeyondPalmMm = figure(file, "bar_beyond_palm_mm");
    to.hipLeansOutMm = figure(file, "hip_leans_out_mm");
    to.tiptoeDeg = figure(file, "tiptoe_deg");
}

void readRims(Fields file, std::vector<RimSize>& to)
{
    const auto& rows = file.needList("rows", anyCount);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        Fields row(rows[i], joined(file.pathOf("rows"), i), file.report());
        to.push_back({figure(row, "bead_seat_mm"), row.text("names", longestNames),
                      row.flag("common", true)});
    }
}

} // namespace

void readSegments(Fields file, SegmentTable& to)
{
    if (auto female = file.needObject("female"))
        readSegmentRows(*female, to.female);
    if (auto male = file.needObject("male"))
        readSegmentRows(*male, to.male);
    to.densityKgPerMm3 = figure(file, "density_kg_m3") / mm3PerM3;
    to.hipJointHalfMm = figure(file, "hip_joint_half_mm");
    to.headLeansBack = figure(file, "head_leans_back");
}

void readHandling(Fields file, HandlingTables& to)
{
    if (auto bicycle = file.needObject("bicycle"))
        readBicycle(*bicycle, to.bicycle);
    if (auto carriers = file.needObject("carriers")) {
        readCarrier(*carriers, "front", to.carriers.front);
        readCarrier(*carriers, "rear", to.carriers.rear);
    }
    if (auto bag = file.needObject("rear_bag"))
        to.rearBag = {figure(*bag, "setback_mm"), figure(*bag, "depth_mm"),
                      figure(*bag, "bottom_above_axle_mm")};
    if (auto balance = file.needObject("balance"))
        to.balance = {figure(*balance, "pedal_pulse"),
                      figure(*balance, "least_front_share"),
                      figure(*balance, "rider_back_on_saddle_mm"),
                      figure(*balance, "braking_to_count_on_g"),
                      figure(*balance, "climb_to_count_on"),
                      figure(*balance, "descent_told_of")};
    if (auto advice = file.needObject("steering_advice"))
        to.steering = {range(*advice, "head_angle_deg"), range(*advice, "axis_height_share")};
    if (auto toe = file.needObject("toe"))
        readToe(*toe, to.toe);
    if (auto clearance = file.needObject("clearance"))
        readClearance(*clearance, to.clearance);
    if (auto rims = file.needObject("rims"))
        readRims(*rims, to.rims);
    if (auto tyres = file.needObject("tyres"))
        to.tyresMm = tyres->numbers("widths_mm", anyCount, anyNumber);
}

} // namespace tripoise::document
