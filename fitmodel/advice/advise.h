// SPDX-License-Identifier: MIT
//
// The decision: which size, which set-up, why, and what is given up.
//
//     Rider, measurements --infer--> Posterior --> Person --+
//     frames, stock --prepare--> Prepared ------------------+--nameSize--> Naming --explain-->
//     Advice
//
// A size has a class (advice/fit.h) and points, both worked out from it alone, so that no other
// candidate turns the order of two. It is named clearly only if it stays best when each unsourced
// weight is halved and doubled. The best set-up of a size is exactly the best of every combination
// that fits together (advice/search.h).
#pragma once

#include "advice/name_size.h"
#include "advice/ridden.h"
#include "advice/ride.h"

namespace tripoise {

/// One line of for and against.
struct LedgerEntry {
    Consideration consideration = {};
    double value = 0.0; ///< in the consideration's own unit
    double points = 0.0;
};

struct UsePosture {
    Use use = {};
    UpperPosture posture; ///< at the bar's main place
    UpperWindows windows;
};

struct LegPosture {
    Angle kneeBottom;
    Angle kneeBottomFootLevel;
    Window kneeBottomStill; ///< as a goniometer reads it on a rider held still, heel as it pedals
    Angle kneeTop;
    Angle hipTop; ///< closed angle between trunk and thigh, crank upright, lowest trunk of the uses
    double kneeOverSpindleMm = 0.0;
    Angle ankleLeast; ///< between shank and foot, over the whole turn
    Angle ankleMost;
};

/// A set-up that was advised, and what it does to the rider.
struct AdvisedSetup {
    Setup setup;
    double points = 0.0;
    std::vector<LedgerEntry> ledger;
    double leastPosturePoints = 0.0; ///< of the posture's entry, that no grip on this bar avoids
    std::vector<UsePosture> uses;    ///< with a share in the mix it was advised for
    LegPosture leg;
};

struct UseSetup {
    Use use = {};
    AdvisedSetup advised;
};

/// One consideration in which two sizes differ; `gain` in points, positive for the named size.
struct Reason {
    Consideration consideration = {};
    double named = 0.0; ///< value in its own unit
    double other = 0.0;
    double gain = 0.0;
    bool faultless = false; ///< the better of the two costs nothing in it
};

struct Candidate {
    std::size_t size = 0; ///< index into Prepared::sizes
    int rank = 0;         ///< 1-based; by class, then by points
    SizeFit fit;
    Findings limits;                    ///< broken
    std::optional<AdvisedSetup> best;   ///< empty where no cockpit fits
    std::optional<Ride> ride;           ///< of `best`
    std::optional<FirstStep> firstStep; ///< where the set-up is too far for one visit
    std::vector<ToeRemedy> toeRemedies; ///< where a shoe may touch
    std::vector<UseSetup> byUse;        ///< as if the bicycle were for that use alone
    Findings findings;
    std::vector<Reason> costs; ///< what a rider notices for the named size and against this one
};

enum class VerdictKind {
    Clear,
    Slight,
    Either,
    None, ///< no size fits
};

/// A weight whose change would name another size.
struct Tilt {
    Consideration consideration = {};
    double factor = 0.0;
    std::size_t towards = 0; ///< index into Advice::candidates
};

/// What brings the hands to the named size's place on the other one, with the same kind of stem.
struct SameSeat {
    double stemLongerMm = 0.0;
    double spacersMoreMm = 0.0;
    double lowerMm = 0.0; ///< what would still be missing with no spacer left
};

/// What the eye would see of two sizes with the same parts on them, named less other; mm.
struct Contrast {
    double barHigherMm = 0.0;  ///< from the ground
    double barFurtherMm = 0.0; ///< from the bottom bracket
    double wheelbaseMm = 0.0;
    std::optional<double> standoverMm;
    SameSeat same;
};

struct Verdict {
    std::optional<std::size_t> named; ///< index into Advice::candidates; empty where none fits
    std::optional<std::size_t> other; ///< the next, of whatever class
    VerdictKind kind = VerdictKind::Either;
    double lead = 0.0;           ///< points before the runner-up
    std::vector<Reason> reasons; ///< a rider notices, for the named size, strongest first
    std::vector<Reason> givenUp; ///< where the other would be better, strongest first
    std::vector<Tilt> tilts;
    Contrast contrast;
};

/// Contacts the rider would have if parts did not matter, on the bar the decision names.
struct ContactTarget {
    SaddlePlace saddle;
    Point grip = Point::Zero();
};

/// Frames that carry that grip with ordinary stems and spacers.
struct FrameAsked {
    Range stackMm;
    Range reachMm;
    double mostSpacersMm = 0.0; ///< of those it counts on
};

/// What a published rule makes of the same rider, bottom bracket to saddle.
struct PublishedHeight {
    std::string name;
    double heightMm = 0.0;
};

/// What other cranks would do to the leg and to the room before it, against the advised ones.
struct CrankChoice {
    double crankMm = 0.0;
    double leverage = 0.0;  ///< ratio of the lengths
    LegPosture leg;         ///< the saddle moved to suit, the trunk as it was
    double toeRoomMm = 0.0; ///< more room between shoe and wheel, crank level forward
};

struct PartToOrder {
    Stem stem;                      ///< as mounted
    std::optional<double> nearerMm; ///< than anything in stock, which may be nothing
};

struct Advice {
    bool solved =
        false; ///< false until decided, and where no candidate carries a cockpit or it was stopped
    Person person;
    Findings riderFindings;
    ContactTarget target;
    double saddleNoseAheadMm = 0.0; ///< of the saddle point, on the stock's saddle
    std::vector<PublishedHeight> publishedHeights;
    std::vector<Candidate> candidates; ///< in rank order
    Verdict verdict;
    FrameAsked asked;
    std::vector<CrankChoice> otherCranks; ///< in the box, on the named size
    std::optional<PartToOrder> part;

    /// The named size, or the first of the list where none is; there must be candidates.
    [[nodiscard]] const Candidate& leading() const { return candidates[verdict.named.value_or(0)]; }
    [[nodiscard]] bool anyFits() const
    {
        return !candidates.empty() && fitsAtAll(candidates.front().fit.state);
    }
};

/// The person of a posterior's mean, with the evidence of the bicycle ridden today.
[[nodiscard]] Person personOf(const Rider& rider, const Posterior& posterior,
                              const std::optional<CurrentBike>& current, const Riding& riding,
                              const Prepared& prepared, const Tables& tables, Findings& findings,
                              std::optional<Position> position = {});

/// Whatever is told of sizes that were put in order.
[[nodiscard]] Advice explain(Naming naming, const Basis& basis, const std::stop_token& stop = {});

/// The whole way, from what was measured.
[[nodiscard]] Advice advise(const Rider& rider, const Riding& riding,
                            const std::optional<CurrentBike>& current, const Prepared& prepared,
                            const Tables& tables, const std::stop_token& stop = {},
                            std::optional<Position> position = {});
/// The same from the body that was inferred of the rider's measurements.
[[nodiscard]] Advice advise(const Rider& rider, const Posterior& posterior, const Riding& riding,
                            const std::optional<CurrentBike>& current, const Prepared& prepared,
                            const Tables& tables, const std::stop_token& stop = {},
                            std::optional<Position> position = {});

} // namespace tripoise
