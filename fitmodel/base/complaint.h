// SPDX-License-Identifier: MIT
//
// What a rider says of the position ridden today.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace tripoise {

enum class Complaint { Hands, Neck, LowerBack, Saddle, KneeFront, KneeBack, Stretched, Cramped };

inline constexpr std::array allComplaints{
    Complaint::Hands,     Complaint::Neck,     Complaint::LowerBack, Complaint::Saddle,
    Complaint::KneeFront, Complaint::KneeBack, Complaint::Stretched, Complaint::Cramped};

template <typename Value> using PerComplaint = std::array<Value, allComplaints.size()>;

[[nodiscard]] constexpr std::size_t indexOf(Complaint complaint)
{
    return static_cast<std::size_t>(complaint);
}

inline constexpr PerComplaint<std::string_view> complaintKeys{
    "hands", "neck", "lower_back", "saddle", "knee_front", "knee_back", "stretched", "cramped"};

[[nodiscard]] constexpr std::string_view keyOf(Complaint complaint)
{
    return complaintKeys[indexOf(complaint)];
}

} // namespace tripoise
