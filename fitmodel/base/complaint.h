// SPDX-License-Identifier: MIT
//
// What a rider says of a bicycle that was ridden.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace tripoise {

enum class Complaint {
    Hands,
    Neck,
    LowerBack,
    Saddle,
    KneeFront,
    KneeBack,
    Feet,
    Stretched,
    Cramped,
    Nervous,   ///< it does not steer calmly
    ToeTouches ///< the front wheel
};

inline constexpr std::array allComplaints{
    Complaint::Hands,     Complaint::Neck,     Complaint::LowerBack, Complaint::Saddle,
    Complaint::KneeFront, Complaint::KneeBack, Complaint::Feet,      Complaint::Stretched,
    Complaint::Cramped,   Complaint::Nervous,  Complaint::ToeTouches};

template <typename Value> using PerComplaint = std::array<Value, allComplaints.size()>;

[[nodiscard]] constexpr std::size_t indexOf(Complaint complaint)
{
    return static_cast<std::size_t>(complaint);
}

inline constexpr PerComplaint<std::string_view> complaintKeys{
    "hands", "neck",      "lower_back", "saddle",  "knee_front", "knee_back",
    "feet",  "stretched", "cramped",    "nervous", "toe_touches"};

[[nodiscard]] constexpr std::string_view keyOf(Complaint complaint)
{
    return complaintKeys[indexOf(complaint)];
}

} // namespace tripoise
