// SPDX-License-Identifier: MIT
//
// What the tape says about a rider. The quantities are the base variables of the anthropometric
// survey (ANSUR II, see assets/anthropometry.json for each one's landmarks), and the sum of the arm
// that a tape takes at once. All barefoot; lengths mm, mass kg.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tripoise {

enum class Quantity {
    Stature,
    Inseam,
    SternalNotchHeight,
    AcromialHeight,
    TrochanterionHeight,
    KneeHeight,
    AnkleHeight,
    SittingHeight,
    KneeHeightSitting,
    ButtockKnee,
    UpperArm,
    Forearm,
    Hand,
    WristToGrip,
    ElbowRearToGrip,
    Foot,
    BallOfFoot,
    Biacromial,
    HipBreadth,
    Span,
    Mass,
    ArmToGrip, ///< upper arm + forearm + wrist to grip
};

inline constexpr int baseVariableCount = 21;
inline constexpr int quantityCount = 22;

inline constexpr std::array<std::string_view, quantityCount> quantityKeys{"stature_mm",
                                                                          "inseam_mm",
                                                                          "sternal_notch_height_mm",
                                                                          "acromial_height_mm",
                                                                          "trochanterion_height_mm",
                                                                          "knee_height_mm",
                                                                          "ankle_height_mm",
                                                                          "sitting_height_mm",
                                                                          "knee_height_sitting_mm",
                                                                          "buttock_knee_mm",
                                                                          "upper_arm_mm",
                                                                          "forearm_mm",
                                                                          "hand_mm",
                                                                          "wrist_to_grip_mm",
                                                                          "elbow_rear_to_grip_mm",
                                                                          "foot_mm",
                                                                          "ball_of_foot_mm",
                                                                          "biacromial_mm",
                                                                          "hip_breadth_mm",
                                                                          "span_mm",
                                                                          "mass_kg",
                                                                          "arm_to_grip_mm"};

[[nodiscard]] constexpr std::string_view keyOf(Quantity quantity)
{
    return quantityKeys[static_cast<std::size_t>(quantity)];
}

/// How well a quantity can be taken, and what can be believed of a grown rider.
struct TapeRow {
    double sd = 0.0;      ///< of one careful reading
    double guessSd = 0.0; ///< of a value that was not measured
    double low = 0.0;
    double high = 0.0;
};

struct TapeTable {
    std::array<TapeRow, quantityCount> rows;
    /// Repeated readings pool with the row's sd as if that came from this many earlier degrees of
    /// freedom, so that equal readings never give an sd of 0.
    double priorDegreesOfFreedom = 0.0;

    [[nodiscard]] const TapeRow& of(Quantity quantity) const
    {
        return rows[static_cast<std::size_t>(quantity)];
    }
};

struct Measurement {
    Quantity quantity = {};
    std::vector<double> readings; ///< at least one
    std::optional<double> sd;     ///< of the mean of the readings, when the fitter states it

    bool operator==(const Measurement&) const = default;
};

/// Mean of the readings and its variance; the order of the readings does not matter.
struct PooledReading {
    double mean = 0.0;
    double variance = 0.0;
};
[[nodiscard]] PooledReading pooled(const Measurement& measurement, const TapeTable& tape);

/// Whether the readings lie further apart than the tape explains (three standard deviations).
[[nodiscard]] bool readingsDisagree(const Measurement& measurement, const TapeTable& tape);

enum class Sex { Female, Male };
enum class Flexibility { Stiff, Ordinary, Supple };
enum class HeelHabit { Low, Level, ToeDown };

struct Shoe {
    std::optional<double> soleMm;
    std::optional<double> lengthMm;

    bool operator==(const Shoe&) const = default;
};

struct Rider {
    std::string label;
    std::optional<Sex> sex;
    std::optional<Flexibility> flexibility;
    std::optional<double> straightLegRaiseDeg; ///< used where flexibility is not stated
    bool bendsFreely = true;                   ///< neither belly nor thighs are in the way
    Shoe shoe;
    HeelHabit heelHabit = HeelHabit::Level;
    std::string notes;
    std::vector<Measurement> measurements;

    bool operator==(const Rider&) const = default;
};

} // namespace tripoise
