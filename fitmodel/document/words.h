// SPDX-License-Identifier: MIT
//
// The words that documents use for choices.
#pragma once

#include "advice/riding.h"
#include "base/change.h"
#include "cockpit/parts.h"
#include "frame/geometry.h"
#include "rider/measurements.h"

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace tripoise {

template <typename Value, std::size_t size>
using Vocabulary = std::array<std::pair<std::string_view, Value>, size>;

inline constexpr Vocabulary<Sex, 2> sexWords{{{"female", Sex::Female}, {"male", Sex::Male}}};
inline constexpr Vocabulary<Flexibility, 3> flexibilityWords{{{"stiff", Flexibility::Stiff},
                                                              {"ordinary", Flexibility::Ordinary},
                                                              {"supple", Flexibility::Supple}}};
inline constexpr Vocabulary<HeelHabit, 3> heelHabitWords{
    {{"low", HeelHabit::Low}, {"level", HeelHabit::Level}, {"toe_down", HeelHabit::ToeDown}}};
inline constexpr Vocabulary<Standard, 5> standardWords{{{standardKeys[0], Standard::Cfr1512},
                                                        {standardKeys[1], Standard::IsoCity},
                                                        {standardKeys[2], Standard::IsoYoungAdult},
                                                        {standardKeys[3], Standard::IsoMountain},
                                                        {standardKeys[4], Standard::IsoRacing}}};
inline constexpr Vocabulary<SteererMaterial, 3> materialWords{
    {{"steel", SteererMaterial::Steel},
     {"aluminium", SteererMaterial::Aluminium},
     {"carbon", SteererMaterial::Carbon}}};
inline constexpr Vocabulary<BarKind, 3> barKindWords{
    {{"flat", BarKind::Flat}, {"swept", BarKind::Swept}, {"drop", BarKind::Drop}}};

inline constexpr Vocabulary<FeetDown, 3> feetDownWords{
    {{"one_toe", FeetDown::OneToe}, {"toes", FeetDown::Toes}, {"flat", FeetDown::Flat}}};
inline constexpr Vocabulary<Ridden, 3> riddenWords{
    {{"weeks", Ridden::Weeks}, {"season", Ridden::Season}, {"years", Ridden::Years}}};
inline constexpr Vocabulary<Position, 2> positionWords{
    {{"keep", Position::Keep}, {"advise", Position::Advise}}};

/// Uses by the words for them.
inline constexpr auto useWords = [] {
    Vocabulary<Use, allUses.size()> words{};
    for (const Use use : allUses)
        words[indexOf(use)] = {keyOf(use), use};
    return words;
}();

inline constexpr auto complaintWords = [] {
    Vocabulary<Complaint, allComplaints.size()> words{};
    for (const Complaint complaint : allComplaints)
        words[indexOf(complaint)] = {keyOf(complaint), complaint};
    return words;
}();

inline constexpr auto changeWords = [] {
    Vocabulary<Change, allChanges.size()> words{};
    for (const Change change : allChanges)
        words[static_cast<std::size_t>(change)] = {keyOf(change), change};
    return words;
}();

template <typename Value, std::size_t size>
[[nodiscard]] constexpr std::optional<Value> valueOf(const Vocabulary<Value, size>& words,
                                                     std::string_view word)
{
    for (const auto& [name, value] : words)
        if (name == word)
            return value;
    return std::nullopt;
}

template <typename Value, std::size_t size>
[[nodiscard]] constexpr std::string_view wordOf(const Vocabulary<Value, size>& words, Value value)
{
    for (const auto& [name, other] : words)
        if (other == value)
            return name;
    return {};
}

} // namespace tripoise
