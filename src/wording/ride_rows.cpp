// SPDX-License-Identifier: MIT
#include "wording/ride_rows.h"

#include "wording/words.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

QString dash()
{
    return QStringLiteral("–");
}

template <typename Say>
SetupRow rowOf(const QString& label, const QString& meaning, const RideColumns& columns, Say&& say)
{
    SetupRow row{label, meaning, {}, false};
    for (const Ride* column : columns)
        row.said << (column ? say(*column) : dash());
    return row;
}

/// Of a figure that may be absent.
template <typename Value, typename Say> QString orDash(const std::optional<Value>& value, Say&& say)
{
    return value ? say(*value) : dash();
}

bool anyOf(const RideColumns& columns, bool (*holds)(const Ride&))
{
    return std::any_of(columns.begin(), columns.end(),
                       [holds](const Ride* ride) { return ride && holds(*ride); });
}

bool touches(const Ride& ride)
{
    return ride.toe && ride.toe->touches.has_value();
}

QString touching(const Ride& ride)
{
    if (!touches(ride))
        return Words::tr("never", "the shoe touches the front wheel");
    const QString from = Words::tr("from %1 on", "the shoe touches, steered so far")
                             .arg(degrees(ride.toe->touches->from.deg()));
    if (!ride.touchingTurn)
        return from;
    return Words::tr("%1, below %2", "steered so far, ridden below a speed")
        .arg(from, speed(ride.touchingTurn->speedMmS));
}

QString bothWays(double straight, double turned)
{
    return Words::tr("%1, turned %2", "knee to bar: bar straight, bar turned")
        .arg(mm(straight), mm(turned));
}

QString fromGround(double mmAbove)
{
    return mmAbove > 0.0 ? Words::tr("%1 short", "a foot, of the ground").arg(mm(mmAbove))
                         : Words::tr("reaches", "a foot, the ground");
}

QString withLeft(const SystemWeight& weight)
{
    if (!weight.leftKg)
        return mass(weight.massKg);
    return *weight.leftKg < 0.0 ? Words::tr("%1, %2 too much", "weight of all, over the limit")
                                      .arg(mass(weight.massKg), mass(-*weight.leftKg))
                                : Words::tr("%1, %2 left", "weight of all, up to the limit")
                                      .arg(mass(weight.massKg), mass(*weight.leftKg));
}

QString fromTo(double low, double high)
{
    return Words::tr("%1 mm").arg(range(low, high));
}

QString clearanceOf(const ToeClearance& toe)
{
    return partMm(toe.clearanceMm);
}

} // namespace

QString toeRoom(const std::optional<ToeOverlap>& toe)
{
    if (!toe)
        return Words::tr("beside the wheel", "where the shoe passes");
    if (std::abs(toe->overlapMm) < leastToldMm)
        return Words::tr("just touching", "shoe and front wheel");
    return toe->overlapMm > 0.0
               ? Words::tr("%1 overlap", "shoe and front wheel").arg(mm(toe->overlapMm))
               : Words::tr("%1 clear", "shoe and front wheel").arg(mm(-toe->overlapMm));
}

QString toeSentence(const Ride& ride)
{
    if (!ride.toe)
        return Words::tr("The shoe passes beside the front wheel at every angle.");
    if (!touches(ride))
        return Words::tr("Over all angles of bar and crank %1 are left straight ahead of the shoe.")
            .arg(mm(std::max(0.0, -ride.toe->overlapMm)));
    return Words::tr(
               "Over all angles of bar and crank the shoe would have to go %1 straight back to "
               "stay clear; it touches %2.",
               "a length; from an angle on, at a speed")
        .arg(mm(ride.toe->overlapMm), touching(ride));
}

QString steadySpeeds(const SelfStability& stability)
{
    if (!stability.steady)
        return Words::tr("at no speed", "steady by itself");
    const double from = stability.weaveMmS.value_or(0.0);
    return stability.capsizeMmS ? speeds(from, *stability.capsizeMmS)
                                : Words::tr("from %1 on", "steady by itself").arg(speed(from));
}

std::vector<SetupRow> rideRows(const RideColumns& columns)
{
    std::vector<SetupRow> rows;
    rows.push_back(rowOf(
        Words::tr("shoe to front wheel"),
        Words::tr("Shoe to tyre or mudguard over the whole turn of cranks and bar, where they come "
                  "nearest. Real shoes differ by some 10 mm."),
        columns, [](const Ride& ride) { return toeRoom(ride.toe); }));
    if (anyOf(columns, touches))
        rows.push_back(rowOf(
            Words::tr("touches when steered"),
            Words::tr("How far the bar has to be turned while pedalling before the shoe touches, "
                      "and how fast a rider goes who turns so tightly."),
            columns, touching));
    rows.push_back(rowOf(
        Words::tr("steady by itself"),
        Words::tr("Between these speeds the bicycle keeps itself upright, hands off, worked out "
                  "with estimated masses. It compares sizes and certifies nothing."),
        columns, [](const Ride& ride) { return orDash(ride.stability, steadySpeeds); }));
    rows.push_back(rowOf(Words::tr("front wheel carries"),
                         Words::tr("Of rider, bicycle and luggage together, seated."), columns,
                         [](const Ride& ride) {
                             return orDash(ride.balance, [](const Balance& balance) {
                                 return percent(balance.frontShare());
                             });
                         }));
    rows.push_back(rowOf(
        Words::tr("front wheel lifts, climbing"),
        Words::tr("The gradient from which pedalling hard in the saddle lifts the front wheel."),
        columns, [](const Ride& ride) {
            return orDash(ride.grades, [](const Grades& g) {
                return Words::tr("from %1 on", "a gradient").arg(percent(g.liftsUnderPedalling));
            });
        }));
    if (anyOf(columns, [](const Ride& ride) { return ride.heelToBag.has_value(); }))
        rows.push_back(
            rowOf(Words::tr("heel to rear bag"),
                  Words::tr("To a large side bag hung as far back as an ordinary carrier lets it."),
                  columns, [](const Ride& ride) {
                      return orDash(ride.heelToBag,
                                    [](const OverTurn& heel) { return mm(heel.clearanceMm); });
                  }));
    rows.push_back(rowOf(
        Words::tr("knee to bar"),
        Words::tr("Over the turn of the cranks, the bar straight, and turned as for turning round "
                  "in a narrow lane."),
        columns, [](const Ride& ride) {
            return bothWays(ride.kneeToBar.clearanceMm, ride.kneeToTurnedBar.clearanceMm);
        }));
    rows.push_back(rowOf(
        Words::tr("tiptoe, seated"),
        Words::tr("Whether the ball of the foot reaches the ground from the saddle, the bicycle "
                  "upright."),
        columns, [](const Ride& ride) { return fromGround(ride.foot.tiptoeMm); }));
    return rows;
}

std::vector<SetupRow> rideFigureRows(const RideColumns& columns)
{
    std::vector<SetupRow> rows;
    const auto add = [&](const QString& label, const QString& meaning, auto&& say) {
        rows.push_back(rowOf(label, meaning, columns, say));
    };
    add(Words::tr("trail"),
        Words::tr("How far the front wheel touches the ground behind the steering axis. More holds "
                  "a line, less turns in quicker."),
        [](const Ride& ride) { return partMm(ride.steering.trailMm); });
    add(Words::tr("trail, square to the axis"),
        Words::tr("The lever by which the ground turns the wheel straight."),
        [](const Ride& ride) { return partMm(ride.steering.mechanicalTrailMm); });
    add(Words::tr("wheel flop"),
        Words::tr("How strongly the bar falls to one side when it is turned at walking pace."),
        [](const Ride& ride) { return partMm(ride.steering.flopMm); });
    add(Words::tr("grips ahead of steering axis"),
        Words::tr("Square to the axis. A longer stem moves the grips forward: the bar then swings "
                  "sideways as it turns."),
        [](const Ride& ride) { return mm(ride.grips.aheadMm); });
    add(Words::tr("hands' lever"),
        Words::tr("From steering axis to grip. Longer turns slower for the same movement."),
        [](const Ride& ride) { return mm(ride.grips.leverMm); });
    add(Words::tr("front-centre"), Words::tr("Bottom bracket to front axle, straight."),
        [](const Ride& ride) { return partMm(ride.steering.frontCentreMm); });
    add(Words::tr("wheelbase"), Words::tr("At both ends of an adjustable dropout."),
        [](const Ride& ride) {
            return fromTo(ride.steering.wheelbaseMm, ride.steering.wheelbaseLongMm);
        });
    add(Words::tr("chainstay"), Words::tr("At both ends of an adjustable dropout."),
        [](const Ride& ride) {
            return fromTo(ride.steering.chainstayMm, ride.steering.chainstayLongMm);
        });
    add(Words::tr("bottom-bracket height"), Words::tr("Its middle from the ground."),
        [](const Ride& ride) { return partMm(ride.steering.bbHeightMm); });
    add(Words::tr("pedal meets ground at"),
        Words::tr("Lean at which the lower pedal touches; at least 25°."), [](const Ride& ride) {
            return Words::tr("%1 of lean").arg(degrees(ride.pedalLean.deg()));
        });
    add(Words::tr("pedal to front wheel, level"),
        Words::tr("As the standards measure it: middle of the pedal straight ahead to where tyre "
                  "or mudguard turns, crank level. The shoe is not in it."),
        [](const Ride& ride) { return orDash(ride.toeClearance, clearanceOf); });
    add(Words::tr("the same at any crank angle"), Words::tr("The least over the turn."),
        [](const Ride& ride) { return orDash(ride.leastToeClearance, clearanceOf); });
    add(Words::tr("over the bars at"),
        Words::tr("The deceleration that lifts the rear wheel, rider seated, on the level."),
        [](const Ride& ride) {
            return orDash(ride.grades, [](const Grades& g) { return gees(g.overTheBarsG); });
        });
    add(Words::tr("over the bars, downhill"),
        Words::tr("The same deceleration on a steep descent."), [](const Ride& ride) {
            return orDash(ride.grades, [](const Grades& g) {
                return Words::tr("%1 at %2", "a deceleration, on a gradient")
                    .arg(gees(g.overTheBarsDownhillG), percent(g.downhill));
            });
        });
    add(Words::tr("front wheel, fully back"),
        Words::tr("What it carries with saddle and rider as far back as they go; 25 % is asked "
                  "for."),
        [](const Ride& ride) { return orDash(ride.frontShareFullyBack, percent); });
    add(Words::tr("hands carry at most"),
        Words::tr("Of the rider's weight, if back and legs held nothing: a coarse upper bound."),
        [](const Ride& ride) { return orDash(ride.handsShareBound, percent); });
    add(Words::tr("rider, bicycle, luggage"),
        Words::tr("Together; what is left of the maker's limit where one is given."),
        [](const Ride& ride) { return orDash(ride.weight, withLeft); });
    add(Words::tr("wheel, outside"),
        Words::tr("Bead seat and twice the tyre; loaded it rolls 1 to 3 % less."),
        [](const Ride& ride) { return partMm(ride.wheelMm); });
    if (anyOf(columns, [](const Ride& ride) { return ride.tyreLeftMm.has_value(); }))
        add(Words::tr("wider tyre possible"), Words::tr("What the maker's limit leaves."),
            [](const Ride& ride) { return orDash(ride.tyreLeftMm, halfMm); });
    add(Words::tr("flat foot, seated"), Words::tr("The bicycle upright."),
        [](const Ride& ride) { return fromGround(ride.foot.flatMm); });
    if (anyOf(columns, [](const Ride& ride) { return ride.foot.straddleMm.has_value(); }))
        add(Words::tr("standover clearance"), Words::tr("In shoes."),
            [](const Ride& ride) { return orDash(ride.foot.straddleMm, mm); });
    return rows;
}

QString rideDifference(const Candidate& one, const Candidate& other, const Prepared& prepared)
{
    if (!one.ride || !other.ride)
        return {};
    QStringList ways;
    /// Told in words where the figures of the two are told differently.
    const auto tell = [&](const QString& mine, const QString& theirs, bool more,
                          const QString& ifMore, const QString& ifLess) {
        if (mine != theirs)
            ways << (more ? ifMore : ifLess);
    };
    const QString shoe = toeRoom(one.ride->toe);
    if (const QString otherShoe = toeRoom(other.ride->toe); shoe != otherShoe)
        ways << Words::tr("the shoe %1 instead of %2", "13 mm clear; 5 mm overlap")
                    .arg(shoe, otherShoe);
    const double trail = one.ride->steering.trailMm;
    const double otherTrail = other.ride->steering.trailMm;
    tell(partMm(trail), partMm(otherTrail), trail > otherTrail,
         Words::tr("more trail (it holds its line)"),
         Words::tr("less trail (it turns in quicker)"));
    if (one.ride->stability && other.ride->stability) {
        const QString steady = steadySpeeds(*one.ride->stability);
        const QString otherSteady = steadySpeeds(*other.ride->stability);
        if (steady != otherSteady)
            ways << Words::tr("steady by itself %1 instead of %2", "18–28 km/h; at no speed")
                        .arg(steady, otherSteady);
    }
    if (one.ride->grades && other.ride->grades) {
        const double braking = one.ride->grades->overTheBarsG;
        const double otherBraking = other.ride->grades->overTheBarsG;
        tell(gees(braking), gees(otherBraking), braking > otherBraking,
             Words::tr("harder braking before the rear wheel lifts"),
             Words::tr("less braking before the rear wheel lifts"));
    }
    if (one.ride->balance && other.ride->balance) {
        const double share = one.ride->balance->frontShare();
        const double otherShare = other.ride->balance->frontShare();
        tell(percent(share), percent(otherShare), share > otherShare,
             Words::tr("more of the weight on the front wheel"),
             Words::tr("less of the weight on the front wheel"));
    }
    const QString mine = sizeName(one, prepared, Place::Opening);
    const QString theirs = sizeName(other, prepared);
    if (ways.isEmpty())
        return Words::tr("%1 rides like %2 in all that is worked out here.").arg(mine, theirs);
    return Words::tr("%1 against %2: %3.", "a size, another, how they ride differently")
        .arg(mine, theirs, listed(ways));
}

QString rideDifference(const Advice& advice, const Prepared& prepared)
{
    if (!advice.verdict.other)
        return {};
    return rideDifference(advice.leading(), advice.candidates[*advice.verdict.other], prepared);
}

QString rideCaution()
{
    return Words::tr("Masses are estimated and riders move: these figures compare sizes and "
                     "certify nothing.");
}

QString toeToldWords()
{
    return Words::tr("The rider has been shown where the shoe touches");
}

QString toeToldStep()
{
    return Words::tr("toe shown to the rider", "an edit");
}

} // namespace tripoise
