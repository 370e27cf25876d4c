// SPDX-License-Identifier: MIT
//
// Every field of a document, once: its key, its member, what can be believed of it, how it is
// typed. Limits are wide enough for anything that is built for grown riders, narrow enough that a
// slip of the pen or of the unit falls outside; they refuse typing errors and recommend nothing.
// Common practice, no source.
#pragma once

#include "document/older.h"
#include "document/own_rows.h"
#include "document/plausible.h"
#include "document/rows.h"

namespace tripoise::document {

// ---- a size of a frame

template <> struct FieldTable<Geometry> {
    using G = Geometry;
    static constexpr Typed angle{0.5, 2};
    static constexpr std::tuple rows{
        number("stack_mm", &G::stackMm, {300, 900, "mm"}),
        number("reach_mm", &G::reachMm, {200, 650, "mm"}),
        number("seat_angle_deg", &G::seatAngleDeg, {60, 85, "deg"}, angle,
               "effective, at the rider's saddle height"),
        number("head_angle_deg", &G::headAngleDeg, {55, 85, "deg"}, angle),
        number("head_tube_mm", &G::headTubeMm, {40, 400, "mm"}),
        number("seat_tube_mm", &G::seatTubeMm, {200, 900, "mm"}, {},
               "centre to the top of the tube"),
        number("top_tube_effective_mm", &G::topTubeEffectiveMm, {350, 800, "mm"}, {},
               "horizontal, head-tube top centre to the seat axis"),
        number("chainstay_mm", &G::chainstayMm, {300, 700, "mm"}, {},
               "one length, or both ends of an adjustable dropout"),
        number("bb_drop_mm", &G::bbDropMm, {-100, 150, "mm"}, {}, "below the axles"),
        number("wheelbase_mm", &G::wheelbaseMm, {700, 1500, "mm"}, {},
               "at the forward end of an adjustable dropout"),
        number("front_centre_mm", &G::frontCentreMm, {400, 900, "mm"}, {},
               "bottom bracket to front axle, straight"),
        number("fork_length_mm", &G::forkLengthMm, {250, 650, "mm"}, {},
               "crown seat to axle, straight"),
        number("fork_offset_mm", &G::forkOffsetMm, {0, 120, "mm"}, {},
               "perpendicular to the steering axis"),
        number("standover_mm", &G::standoverMm, {400, 1100, "mm"}, {}, "from the ground")};
    static constexpr bool refusesUnknown = true;
    static void agree(const Geometry& geometry, const std::string& path, Report& report);
    static void describe(Json& schema);
};

template <> struct FieldTable<Wheel> {
    static constexpr std::tuple rows{
        number("bead_seat_mm", &Wheel::beadSeatMm, plausible::beadSeat, {1, 0}),
        number("max_tyre_mm", &Wheel::maxTyreMm, plausible::tyre)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Mudguard> {
    static constexpr std::tuple rows{
        number("gap_mm", &Mudguard::gapMm, {0, 80, "mm"}, {1, 0}),
        number("width_mm", &Mudguard::widthMm, {0, 150, "mm"}, {1, 0})};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Mounting> {
    static constexpr std::tuple rows{
        number("tyre_mm", &Mounting::tyreMm, plausible::tyre),
        number("bead_seat_mm", &Mounting::beadSeatMm, plausible::beadSeat, {1, 0}),
        object("mudguard", &Mounting::mudguard)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Headset> {
    using H = Headset;
    static constexpr Limits stack{0, 80, "mm"};
    static constexpr std::tuple rows{
        number("upper_mm", &H::upperMm, stack),
        number("lower_mm", &H::lowerMm, stack),
        number("steerer_mm", &H::steererMm, plausible::diameter, {0.1, 1}),
        number("steerer_length_mm", &H::steererLengthMm, {80, 600, "mm"}, {1, 0}),
        word("material", &H::material, materialWords),
        number("max_spacers_mm", &H::maxSpacersMm, {0, 150, "mm"}, {1, 0}),
        number("quill_mm", &H::quillMm, plausible::quill, {0.1, 1})};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Post> {
    static constexpr Limits insertion{20, 300, "mm"};
    static constexpr std::tuple rows{
        number("diameter_mm", &Post::diameterMm, plausible::diameter, {0.1, 1}),
        number("length_mm", &Post::lengthMm, {80, 600, "mm"}, {10, 0}),
        number("offset_mm", &Post::offsetMm, {-50, 80, "mm"}, {1, 0}),
        number("insertion_mm", &Post::insertionMm, insertion, {1, 0}),
        number("frame_insertion_mm", &Post::frameInsertionMm, insertion, {1, 0})};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<AsSold> {
    static constexpr std::tuple rows{number("stem_mm", &AsSold::stemMm, plausible::stemLength),
                                     number("bar_mm", &AsSold::barWidthMm, plausible::barWidth),
                                     number("crank_mm", &AsSold::crankMm, plausible::crank),
                                     number("tyre_mm", &AsSold::tyreMm, plausible::tyre)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<FrameSize> {
    using F = FrameSize;
    static constexpr std::tuple rows{
        text("model", &F::model),
        sizeName("size", &F::size),
        neededObject("geometry", &F::geometry),
        ObjectRow<F, Wheel>{"wheel", &F::wheel, false, readOlderWheel},
        object("mounting", &F::mounting, "of this size alone; otherwise the bicycle's"),
        object("headset", &F::headset),
        object("post", &F::post),
        number("rider_height_mm", &F::riderHeightMm, {1200, 2300, "mm"}, {}, "by the maker"),
        object("as_sold", &F::asSold),
        number("max_system_kg", &F::maxSystemKg, {40, 400, "kg"}, {1, 0}),
        number("mass_kg", &F::massKg, {1, 80, "kg"}, {0.5, 1}),
        number("price", &F::price, {0, 1e9, ""}, {10, 2})};
    static constexpr bool refusesUnknown = false;
    static constexpr const char* definition = "size";
};

// ---- parts

template <> struct FieldTable<Stem> {
    static constexpr std::tuple rows{
        number("length_mm", &Stem::lengthMm, plausible::stemLength, {10, 0}),
        number("angle_deg", &Stem::angle, plausible::stemAngle),
        flag("reversible", &Stem::reversible),
        number("bar_clamp_mm", &Stem::barClampMm, plausible::diameter, {0.1, 1}),
        number("steerer_mm", &Stem::steererMm, plausible::diameter, {0.1, 1}),
        number("clamp_height_mm", &Stem::clampHeightMm, {15, 100, "mm"}, {1, 0}),
        flag("in_stock", &Stem::inStock),
        number("quill_mm", &Stem::quillMm, plausible::quill, {0.1, 1}),
        number("raise_mm", &Stem::raiseMm, {0, 150, "mm"}, {5, 0}),
        text("id", &Stem::id)};
    static constexpr bool refusesUnknown = true;
};

template <> struct FieldTable<Bar> {
    static constexpr std::tuple rows{
        text("name", &Bar::name),
        word("kind", &Bar::kind, barKindWords, true),
        number("width_mm", &Bar::widthMm, plausible::barWidth, {10, 0}),
        number("backsweep_deg", &Bar::backsweepDeg, {-10, 90, "deg"}, {1, 0}),
        number("rise_mm", &Bar::riseMm, {-100, 250, "mm"}, {1, 0}),
        number("grip_back_mm", &Bar::gripBackMm, {-100, 350, "mm"}, {1, 0}),
        number("reach_mm", &Bar::reachMm, {0, 200, "mm"}, {1, 0}),
        number("drop_mm", &Bar::dropMm, {0, 250, "mm"}, {1, 0}),
        number("hood_forward_mm", &Bar::hoodForwardMm, {-30, 100, "mm"}, {1, 0}),
        number("hood_up_mm", &Bar::hoodUpMm, {-50, 120, "mm"}, {1, 0}),
        number("bar_clamp_mm", &Bar::barClampMm, plausible::diameter, {0.1, 1}),
        text("id", &Bar::id)};
    static constexpr bool refusesUnknown = true;
};

template <> struct FieldTable<Saddle> {
    static constexpr std::tuple rows{
        number("length_mm", &Saddle::lengthMm, plausible::saddleLength),
        number("stack_mm", &Saddle::stackMm, {10, 200, "mm"}),
        number("rail_travel_mm", &Saddle::railTravelMm, {0, 150, "mm"})};
    static constexpr bool refusesUnknown = true;
};

template <> struct FieldTable<Pedal> {
    static constexpr std::tuple rows{number("stack_mm", &Pedal::stackMm, {-20, 60, "mm"}),
                                     number("lateral_mm", &Pedal::lateralMm, {60, 250, "mm"})};
    static constexpr bool refusesUnknown = true;
};

template <> struct FieldTable<Stock> {
    static constexpr std::tuple rows{
        list("stems", &Stock::stems, {1, mostStems}),
        numberList("spacers_mm", &Stock::spacersMm, {0, mostSpacerPieces}, {0.5, 60, "mm"}),
        numberList("cranks_mm", &Stock::cranksMm, {0, mostCranks}, plausible::crank, {2.5, 1}),
        list("bars", &Stock::bars, {1, mostBars})};
    static constexpr bool refusesUnknown = true;
};

template <> struct FieldTable<Bicycle> {
    using B = Bicycle;
    static constexpr std::tuple rows{
        number("tyre_mm", &B::tyreMm, plausible::tyre),
        number("bead_seat_mm", &B::beadSeatMm, plausible::beadSeat, {1, 0},
               "where it is not the size's own rim"),
        object("mudguard", &B::mudguard),
        word("bar_kind", &B::barKind, barKindWords),
        number("crank_mm", &B::crankMm, plausible::crank, {2.5, 1}, "fitted already"),
        object("saddle", &B::saddle),
        object("pedal", &B::pedal)};
    static constexpr bool refusesUnknown = true;
};

// ---- rider, riding, today

template <> struct FieldTable<Shoe> {
    static constexpr std::tuple rows{number("sole_mm", &Shoe::soleMm, {0, 60, "mm"}),
                                     number("length_mm", &Shoe::lengthMm, {200, 400, "mm"})};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Rider> {
    using R = Rider;
    static constexpr std::tuple rows{
        text("label", &R::label),
        word("sex", &R::sex, sexWords),
        word("flexibility", &R::flexibility, flexibilityWords),
        number("straight_leg_raise_deg", &R::straightLegRaiseDeg, {20, 130, "deg"}),
        flag("bends_freely", &R::bendsFreely),
        object("shoe", &R::shoe),
        word("heel_habit", &R::heelHabit, heelHabitWords),
        text("notes", &R::notes, longestNotes),
        OwnRow<R>{"measurements", readMeasurements, writeMeasurements, checkMeasurements,
                  measurementsSchema, true}};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Luggage> {
    static constexpr Limits load{0, 100, "kg"};
    static constexpr std::tuple rows{numberOrZero("front", &Luggage::frontKg, load),
                                     numberOrZero("rear", &Luggage::rearKg, load)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Riding> {
    using R = Riding;
    static constexpr std::tuple rows{OwnRow<R>{"mix", readMix, writeMix, checkMix, mixSchema, true},
                                     flag("traffic", &R::traffic, true),
                                     flag("foot_retention", &R::footRetention, true),
                                     object("luggage_kg", &R::luggage),
                                     word("feet_down", &R::feetDown, feetDownWords),
                                     word("sold_under", &R::soldUnder, standardWords)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<CurrentBike> {
    using C = CurrentBike;
    static constexpr std::tuple rows{
        word("use", &C::use, useWords),
        word("bar_kind", &C::barKind, barKindWords),
        number("saddle_height_mm", &C::saddleHeightMm, plausible::saddleHeight),
        number("saddle_setback_mm", &C::saddleSetbackMm, plausible::saddleSetback),
        number("grip_reach_mm", &C::gripReachMm, plausible::gripReach),
        number("grip_height_mm", &C::gripHeightMm, plausible::gripHeight),
        number("saddle_length_mm", &C::saddleLengthMm, plausible::saddleLength),
        number("nose_setback_mm", &C::noseSetbackMm, plausible::noseSetback),
        number("nose_to_bar_mm", &C::noseToBarMm, plausible::noseToBar),
        number("bar_below_saddle_mm", &C::barBelowSaddleMm, plausible::barBelowSaddle),
        number("crank_mm", &C::crankMm, plausible::crank, {2.5, 1}),
        word("ridden", &C::ridden, riddenWords),
        flag("comfortable", &C::comfortable, true),
        wordList("complaints", &C::complaints, &C::otherComplaints, complaintWords,
                 {0, mostComplaints})};
    static constexpr bool refusesUnknown = false;
};

// ---- choices

template <> struct FieldTable<ChosenSize> {
    static constexpr std::tuple rows{text("model", &ChosenSize::model),
                                     sizeName("size", &ChosenSize::size)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Trial> {
    using T = Trial;
    static constexpr std::tuple rows{
        text("model", &T::model),
        sizeName("size", &T::size),
        number("saddle_height_mm", &T::saddleHeightMm, plausible::saddleHeight),
        number("saddle_setback_mm", &T::saddleSetbackMm, plausible::saddleSetback),
        number("grip_reach_mm", &T::gripReachMm, plausible::gripReach),
        number("grip_height_mm", &T::gripHeightMm, plausible::gripHeight)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Choices> {
    using C = Choices;
    static constexpr std::tuple rows{
        OwnRow<C>{"weights", readFactors, writeFactors, checkFactors, factorsSchema},
        OwnRow<C>{"trial", readTrial, writeTrial, checkTrial, trialSchema},
        OwnRow<C>{"setup", readOwnSetup, writeOwnSetup, checkOwnSetup, trialSchema},
        object("size", &C::size, "chosen by the builder; it need not be among the frames any more"),
        text("reason", &C::reason),
        word("position", &C::position, positionWords),
        flag("toe_overlap_told", &C::toeTold),
        draftList("unfinished_frames", &C::unfinished, {0, mostFrames})};
    static constexpr bool refusesUnknown = false;
};

// ---- handed over and seen again

template <> struct FieldTable<AsBuilt> {
    using A = AsBuilt;
    static constexpr std::tuple rows{
        text("model", &A::model),
        sizeName("size", &A::size),
        day("date", &A::date),
        number("saddle_height_mm", &A::saddleHeightMm, plausible::saddleHeight),
        number("nose_setback_mm", &A::noseSetbackMm, plausible::noseSetback),
        number("bar_below_saddle_mm", &A::barBelowSaddleMm, plausible::barBelowSaddle),
        number("nose_to_bar_mm", &A::noseToBarMm, plausible::noseToBar),
        number("stem_mm", &A::stemMm, plausible::stemLength, {10, 0}),
        number("stem_angle_deg", &A::stemAngleDeg, plausible::stemAngle, {1, 1}, "as mounted"),
        number("spacers_mm", &A::spacersMm, {0, 150, "mm"}, {5, 1}, "under the stem"),
        number("crank_mm", &A::crankMm, plausible::crank, {2.5, 1}),
        text("notes", &A::notes, longestNotes)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Moved> {
    static constexpr Limits way{-60, 60, "mm"};
    static constexpr std::tuple rows{numberOrZero("saddle_up_mm", &Moved::saddleUpMm, way),
                                     numberOrZero("saddle_back_mm", &Moved::saddleBackMm, way),
                                     numberOrZero("bar_up_mm", &Moved::barUpMm, way),
                                     numberOrZero("bar_back_mm", &Moved::barBackMm, way),
                                     word("step", &Moved::step, changeWords),
                                     text("part", &Moved::part)};
    static constexpr bool refusesUnknown = false;
};

template <> struct FieldTable<Visit> {
    using V = Visit;
    static constexpr std::tuple rows{
        day("date", &V::date),
        wordList("says", &V::says, &V::otherSays, complaintWords, {0, mostComplaints}),
        object("changed", &V::changed), text("notes", &V::notes, longestNotes)};
    static constexpr bool refusesUnknown = false;
};

// ---- the whole

template <> struct FieldTable<Fitting> {
    using F = Fitting;
    static constexpr std::tuple rows{neededObject("rider", &F::rider),
                                     neededObject("riding", &F::riding),
                                     object("bicycle", &F::bicycle),
                                     list("frames", &F::frames, {1, mostFrames}),
                                     ObjectRow<F, Stock>{"stock", &F::stock, true, readOlderStock},
                                     object("current", &F::current),
                                     object("choices", &F::choices),
                                     object("as_built", &F::asBuilt),
                                     optionalList("visits", &F::visits, {0, mostVisits}),
                                     text("id", &F::id)};
    static constexpr bool refusesUnknown = false;
    static void agree(const Fitting& fitting, const std::string& path, Report& report);
};

} // namespace tripoise::document
