// SPDX-License-Identifier: MIT
//
// The best cockpit and crank for one person on one size: exactly the exhaustive best.
//
// Points of a set-up are the sum of weight x measure over the considerations. All measures but
// posture are cheap; a proven floor under the posture's (posture/upper_body.h, CostFloor) lets most
// cockpits be passed over without solving them, whole stems at a time: the floor is least on a
// stem's line of spacers in closed form. Cranks with bars are looked into in the order of what they
// cost by themselves, until that alone is more than the best. What was solved is kept, so that
// asking again under other weights costs little. Toe overlap depends on the crank and not on the
// cockpit; it is worked out for a crank only once that could still be the best without it.
#pragma once

#include "advice/basis.h"
#include "handling/remedies.h"

#include <optional>
#include <unordered_map>

namespace tripoise {

/// A set-up as the search names it. `points` includes every consideration, as it counts against
/// other sizes.
struct Choice {
    std::size_t crank = 0; ///< index into Prepared::cranksMm
    std::size_t row = 0;   ///< cockpit of the PreparedSize
    double points = 0.0;
};

class SizeSearch {
public:
    /// The references must outlive the search.
    SizeSearch(const Basis& basis, const PreparedSize& size, std::stop_token stop = {});

    /// Empty where the size carries no cockpit, and where it was stopped. Of equals the first by
    /// crank and row.
    [[nodiscard]] std::optional<Choice> best(const PerConsideration<double>& weights);

    /// Measures of any set-up, posture solved exactly.
    [[nodiscard]] PerConsideration<double> measures(const Choice& choice);

    [[nodiscard]] Setup setupOf(const Choice& choice) const;

    [[nodiscard]] const SaddlePlace& saddle(std::size_t crank) const
    {
        return m_cranks[crank].saddle;
    }
    [[nodiscard]] const Point& hip(std::size_t crank) const { return m_cranks[crank].hip; }
    /// Setback the knee asks for, before rails and post had their say.
    [[nodiscard]] double wantedSetbackMm(std::size_t crank) const
    {
        return m_cranks[crank].wantedSetbackMm;
    }
    /// Shoe into the front wheel; 0 where it stays clear.
    [[nodiscard]] double toeOverlapMm(std::size_t crank)
    {
        return std::max(0.0, withToe(m_cranks[crank]).toe->overlapMm);
    }
    /// With what a touching shoe counts as cured.
    [[nodiscard]] std::optional<RemedyKind> toeCure(std::size_t crank)
    {
        return withToe(m_cranks[crank]).toeCure;
    }
    /// What posture's points are multiplied by, against other sizes.
    [[nodiscard]] double againstSizes() const { return m_againstSizes; }
    [[nodiscard]] std::size_t solved() const { return m_solved; } ///< postures solved so far

private:
    /// One way a bar is held, with the floor under its cost around its own best clamp position.
    struct FlooredHold {
        Hold hold;
        Point ideal = Point::Zero(); ///< from the hip
        CostFloor floor;

        [[nodiscard]] double least(const Point& fromHip) const
        {
            return hold.share
                   * hold.ease.of(floor.at(fromHip.x() - ideal.x(), fromHip.y() - ideal.y()));
        }
    };
    /// A bar of the size, whatever the crank.
    struct BarPlan {
        std::vector<FlooredHold> holds; ///< the most frequent first
        double widthMeasure = 0.0;
        double riser = 0.0;    ///< how much of one it is, 0 to 1
        double notPlain = 0.0; ///< where a plain one is wanted
    };
    /// A stem of the size for this rider and riding.
    struct StemPlan {
        double lengthMeasure = 0.0;
        double down = 0.0; ///< how far it points down, 0 to 1
        double steep = 0.0;
        double toOrder = 0.0;
    };
    /// How tall a stack of spacers is, 0 to 1 each.
    struct SpacerPlan {
        double measure = 0.0;    ///< off the ordinary
        double underDown = 0.0;  ///< for a stem that points down
        double underSteep = 0.0; ///< for one that does so steeply
    };
    /// What is done before a size is given up for the toe.
    struct ToeCure {
        RemedyKind kind = {};
        SweptWheel wheel;
        ShoeOutline shoe;
        double measure = 0.0; ///< of having to do it
    };
    /// A posture that was solved, or as much of it as showed that it is not the best.
    struct Solved {
        double least = 0.0;
        bool exact = false;
    };
    struct CrankPlan {
        SaddlePlace saddle;
        Point hip = Point::Zero();
        double wantedSetbackMm = 0.0;
        double setbackMeasure = 0.0;
        double postMeasure = 0.0;
        double crankMm = 0.0;
        double crankMeasure = 0.0;
        std::optional<ToeOverlap> toe; ///< once asked for; a far one where it stays beside
        std::optional<RemedyKind> toeCure;
        double toeMeasure = 0.0;                        ///< as it is, among the size's own set-ups
        double toeCuredMeasure = 0.0;                   ///< against other sizes
        std::unordered_map<std::size_t, Solved> solved; ///< by row
    };
    class Pass;

    [[nodiscard]] ToeOverlap toeOf(const CrankPlan& plan, const SweptWheel& wheel,
                                   const ShoeOutline& shoe) const;
    [[nodiscard]] double toeMeasure(const ToeOverlap& toe) const;
    void planToeCures();
    /// Works the toe out for a crank, once.
    const CrankPlan& withToe(CrankPlan& plan);
    /// Parts that undo each other.
    [[nodiscard]] static double untidiness(const BarPlan& bar, const StemPlan& stem,
                                           const SpacerPlan& spacers)
    {
        return bar.notPlain + stem.down * (bar.riser + spacers.underDown)
               + stem.steep * spacers.underSteep;
    }
    void weighSize();
    void planStems();
    void planCrank(double crankMm, const LegTarget& target);
    [[nodiscard]] BarPlan planBar(const Bar& bar) const;
    /// Solves the holds one by one, and stops as soon as what is solved and the floors under the
    /// rest exceed `most`.
    [[nodiscard]] Solved solve(const BarPlan& bar, const Point& hip, const Point& clamp,
                               double most);

    Basis m_basis;
    const PreparedSize& m_size;
    std::stop_token m_stop;
    std::vector<BarPlan> m_bars;       ///< beside the size's
    std::vector<StemPlan> m_stems;     ///< beside the size's
    std::vector<SpacerPlan> m_spacers; ///< beside the size's totals
    double m_standoverMeasure = 0.0;
    double m_agilityMeasure = 0.0;
    double m_compactnessMeasure = 0.0;
    double m_riderHeightMeasure = 0.0;
    SweptWheel m_wheel;
    ShoeOutline m_shoe;
    std::vector<ToeCure> m_toeCures; ///< the easiest first
    std::vector<CrankPlan> m_cranks;
    double m_withinSize = 1.0;   ///< times posture's points, among set-ups of the size
    double m_againstSizes = 1.0; ///< the same, against other sizes
    std::size_t m_solved = 0;
};

/// How wide a bar of a kind is wanted for a use.
[[nodiscard]] Range wantedBarWidth(const Person& person, BarKind kind, Use use,
                                   const WeightTable& weights);

} // namespace tripoise
