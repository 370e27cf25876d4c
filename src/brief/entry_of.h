// SPDX-License-Identifier: MIT
//
// A number that can be typed about something: how it is read off it and written to it, what can be
// believed of it, and what stands in for it until it is typed. A list of these describes a form.
// What can be believed, and how it is typed, comes from the documents' fields.
#pragma once

#include "advice/tables.h"
#include "base/estimate.h"
#include "document/field_facts.h"

#include <cmath>
#include <functional>
#include <optional>

namespace tripoise {

template <typename Whole> struct EntryOf {
    /// What is used while it is not typed, derived or assumed.
    using StandIn = std::optional<Estimate> (*)(const Whole&, const Tables&);

    const char* key = nullptr; ///< its name in words is asked for by this
    FieldFacts facts;          ///< a number that is needed cannot be taken away again
    std::function<std::optional<double>(const Whole&)> read;
    std::function<void(Whole&, std::optional<double>)> write;
    StandIn standIn = nullptr;
};

/// A needed number is 0 while it is not typed.
[[nodiscard]] inline std::optional<double> asTyped(double value)
{
    return value > 0.0 ? std::optional(value) : std::nullopt;
}
[[nodiscard]] inline std::optional<double> asTyped(const std::optional<double>& value)
{
    return value;
}
/// Angles are typed to a tenth; a value made from degrees reads back as it was typed.
[[nodiscard]] inline std::optional<double> asTyped(Angle angle)
{
    constexpr double fine = 1e6;
    return std::round(angle.deg() * fine) / fine;
}

inline void take(std::optional<double>& to, std::optional<double> typed)
{
    to = typed;
}
inline void take(double& to, std::optional<double> typed)
{
    to = typed.value_or(0.0);
}
inline void take(Angle& to, std::optional<double> typed)
{
    to = Angle::degrees(typed.value_or(0.0));
}

/// Of the thing itself.
template <typename Whole, typename Value>
[[nodiscard]] EntryOf<Whole> entryFor(const char* key, Value Whole::*member,
                                      typename EntryOf<Whole>::StandIn standIn = nullptr)
{
    return {key, factsOf(member), [member](const Whole& whole) { return asTyped(whole.*member); },
            [member](Whole& whole, std::optional<double> typed) { take(whole.*member, typed); },
            standIn};
}

/// Of a part of it.
template <typename Whole, typename Part, typename Value>
[[nodiscard]] EntryOf<Whole> entryFor(const char* key, Part Whole::*part, Value Part::*member,
                                      typename EntryOf<Whole>::StandIn standIn = nullptr)
{
    return {key, factsOf(member),
            [part, member](const Whole& whole) { return asTyped(whole.*part.*member); },
            [part, member](Whole& whole, std::optional<double> typed) {
                take(whole.*part.*member, typed);
            },
            standIn};
}

/// Of a part that may be absent, and is not made by typing.
template <typename Whole, typename Part, typename Value>
[[nodiscard]] EntryOf<Whole> entryFor(const char* key, std::optional<Part> Whole::*part,
                                      Value Part::*member,
                                      typename EntryOf<Whole>::StandIn standIn = nullptr)
{
    return {key, factsOf(member),
            [part, member](const Whole& whole) {
                return whole.*part ? asTyped((*(whole.*part)).*member) : std::nullopt;
            },
            [part, member](Whole& whole, std::optional<double> typed) {
                if (whole.*part)
                    take((*(whole.*part)).*member, typed);
            },
            standIn};
}

} // namespace tripoise
